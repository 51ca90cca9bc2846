import type { Token } from "./tokenise.ts";

/** A line after its amount: clauses between commas, and what stands in brackets, each without its marks. */
export interface SplitLine {
  readonly clauses: readonly Token[][];
  readonly brackets: readonly Token[][];
}

/**
 * Splits the tokens from `from` at commas, semicolons, colons and dashes between spaces. Words on both sides of a
 * bracket stay one clause ("golden (whitefish) caviar"); brackets in brackets count as one; one left open lasts to the end.
 */
export function splitClauses(tokens: readonly Token[], from: number): SplitLine {
  const clauses: Token[][] = [[]];
  const brackets: Token[][] = [];
  let depth = 0;
  for (let at = from; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const mark = token.kind === "mark" ? token.lower : "";
    if (mark === "(") {
      if (depth++ === 0) brackets.push([]);
    } else if (mark === ")") depth = Math.max(0, depth - 1);
    else if (depth > 0) brackets.at(-1)?.push(token);
    else if (mark === "," || mark === ";" || mark === ":" || (mark === "-" && !token.glued && !tokens[at + 1]?.glued))
      clauses.push([]);
    else if (mark !== "." && mark !== "*") clauses.at(-1)?.push(token);
  }
  return { clauses: clauses.filter(isSaid), brackets: brackets.flatMap(splitAtComma).filter(isSaid) };
}

function isSaid(clause: readonly Token[]): boolean {
  return clause.some(({ kind }) => kind !== "mark");
}

function splitAtComma(bracket: Token[]): Token[][] {
  const runs: Token[][] = [[]];
  for (const token of bracket) {
    if (token.lower === "," || token.lower === ";") runs.push([]);
    else runs.at(-1)?.push(token);
  }
  return runs;
}
