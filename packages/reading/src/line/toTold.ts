import type { Token } from "./tokenise.ts";
import type { Sureness, Told } from "./told.ts";

/** The words of some tokens as one piece of text; a space stands where one stood. Needs at least one token. */
export function toTold(tokens: readonly Token[], sure: Sureness = "sure", reason?: string): Told {
  const span = { start: (tokens[0] as Token).start, end: (tokens.at(-1) as Token).end };
  return { text: joinWords(tokens), span, sure, ...(reason === undefined ? {} : { reason }) };
}

/** The words of some tokens as text; tokens that did not follow each other are set apart by a space. */
function joinWords(tokens: readonly Token[]): string {
  let text = "";
  for (const [at, token] of tokens.entries()) {
    const adjoins = token.glued && tokens[at - 1]?.end === token.start;
    text += at === 0 || adjoins ? token.text : ` ${token.text}`;
  }
  return text;
}
