import { isKindAdjective } from "./describe.ts";
import { KIND_NOUNS, REMARKS_AFTER_OR, SHARED_HEADS } from "./lineWords.ts";
import type { MakingsAmount, MakingsChoice } from "./makingsLine.ts";
import { parseAmount } from "./parseAmount.ts";
import { type NameRead, readName } from "./readName.ts";
import type { Token } from "./tokenise.ts";
import type { Told } from "./told.ts";
import { toTold } from "./toTold.ts";

/** One food of a line as the name's words say it, with the amount that stands before its name. */
export interface NamedChoice {
  readonly amount?: MakingsAmount;
  readonly read: NameRead;
}

/**
 * The foods that a run of words names, in its order: "chicken or vegetable stock" names two that share their last
 * word. Words after the last name are its tail. With "each" the first may have an amount before its name, too.
 */
export function readChoices(tokens: readonly Token[], amounts: "each" | "later" = "later"): NamedChoice[] {
  const choices: NamedChoice[] = [];
  for (const run of splitAtOr(tokens)) {
    const amount = choices.length > 0 || amounts === "each" ? parseAmount(run, 0) : undefined;
    const read = readName(amount ? run.slice(amount.next) : run);
    choices.push(amount ? { amount: amount.amount, read } : { read });
  }
  return shareHeads(choices);
}

/** Splits where "or" or a slash stands between two names; between two descriptions of one food it stays. */
function splitAtOr(tokens: readonly Token[]): Token[][] {
  const runs: Token[][] = [[]];
  for (const [at, token] of tokens.entries()) {
    const run = runs.at(-1) as Token[];
    const joins =
      (token.lower === "or" && !REMARKS_AFTER_OR.has(tokens[at + 1]?.lower ?? "")) ||
      (token.lower === "/" && tokens[at + 1]?.kind === "word");
    const named = joins && at + 1 < tokens.length && readName(run).name.length > 0;
    if (named && readName(run).tail.length === 0) runs.push([]);
    else run.push(token);
  }
  return runs;
}

/**
 * Gives a name that only tells a kind the head of the name after it: after adjectives any head ("red or green
 * grapes"), after nouns only a head that takes nouns ("chicken or vegetable stock", but not "chicken or smoked tofu").
 */
function shareHeads(choices: readonly NamedChoice[]): NamedChoice[] {
  return choices.map((choice, at) => {
    const { name } = choice.read;
    const after = choices[at + 1]?.read.name ?? [];
    if (choices[at + 1]?.amount || after.length < 2 || name.length === 0) return choice;
    const adjectives = name.every(({ lower }) => isKindAdjective(lower));
    const kinds = name.every(({ lower }) => isKind(lower)) && SHARED_HEADS.has(after.at(-1)?.lower ?? "");
    if (!adjectives && !kinds) return choice;
    const own = after.findIndex(({ lower }) => !isKind(lower));
    const head = own < 0 ? after.slice(-1) : after.slice(own);
    return { ...choice, read: { ...choice.read, name: [...name, ...head] } };
  });
}

const isKind = (lower: string) => isKindAdjective(lower) || KIND_NOUNS.has(lower);

/** A choice as the line's reading gives it. A choice without words of its own is named after the one before it. */
export function toChoice(named: NamedChoice, before: MakingsChoice | undefined): MakingsChoice | undefined {
  const { read } = named;
  const again = before && (read.states.length > 0 || named.amount !== undefined);
  const name = nameOf(read) ?? (again ? { ...before.name, ...LIKELY } : undefined);
  if (!name) return undefined;
  return {
    ...(named.amount ? { amount: named.amount } : {}),
    ...(read.size ? { size: read.size } : {}),
    name,
    ...togetherOf(read.name),
    states: read.states,
  };
}

/** "salt and pepper" may be one food or two; the names on either side are given for whoever knows the foods. */
function togetherOf(name: readonly Token[]): Pick<MakingsChoice, "together"> {
  const runs: Token[][] = [[]];
  for (const token of name) {
    if (token.lower === "and" || token.lower === "&") runs.push([]);
    else runs.at(-1)?.push(token);
  }
  const named = runs.filter((run) => run.length > 0);
  return named.length > 1 ? { together: named.map((run) => toTold(run)) } : {};
}

const LIKELY = { sure: "likely", reason: "named-before" } as const;

// More words than the name of a food has; something else was taken along.
const MOST_WORDS = 6;

function nameOf({ name }: NameRead): Told | undefined {
  if (!name.some(({ kind }) => kind === "word")) return undefined;
  if (name.some(({ kind }) => kind === "number" || kind === "fraction")) return toTold(name, "guess", "number-in-name");
  if (name.length > MOST_WORDS) return toTold(name, "guess", "long-name");
  if (name.some(({ lower }) => lower === "and" || lower === "&")) return toTold(name, "likely", "may-be-two-foods");
  return toTold(name);
}
