import { isAdverb, isKindAdjective, isPreparation, type Role, roleOf } from "./describe.ts";
import { NAME_ENDS, REMARKS_AFTER_OR, SIZES, STATES } from "./lineWords.ts";
import type { Token } from "./tokenise.ts";
import type { Told } from "./told.ts";
import { toTold } from "./toTold.ts";

/** A name taken apart: what is said before it, its own words, and the words after it that are no part of it. */
export interface NameRead {
  readonly size?: Told;
  readonly states: readonly Told[];
  readonly preparation: readonly Told[];
  readonly name: readonly Token[];
  readonly tail: readonly Token[];
}

const JOINTS = new Set(["and", "or", "to", "&", ",", "-", "/"]);
const AFTER_PREPARATION = new Set(
  "into in to from on with off for as at until by through crosswise lengthwise lengthways".split(" "),
);

/**
 * Takes a name apart: "finely chopped fresh dill" is dill. The words before the name go by their role until one
 * names a food; the name ends where a phrase begins that names none ("for garnish", "cut into chunks").
 */
export function readName(tokens: readonly Token[]): NameRead {
  const sizes: Token[] = [];
  const states: Told[] = [];
  const preparation: Told[] = [];
  const note = (role: Role, run: readonly Token[]) => {
    if (role === "size") sizes.push(...run);
    else (role === "state" ? states : preparation).push(toTold(run));
  };
  let at = takeDescriptions(tokens, 0, note);
  // "homemade or low-sodium stock": what joins a description to one that belongs to the name is no part of it.
  if (at > 0 && at + 1 < tokens.length && JOINTS.has(tokens[at]?.lower ?? "")) at++;
  const name: Token[] = [];
  while (at < tokens.length && !(name.length > 0 && endsName(tokens, at))) {
    const token = tokens[at] as Token;
    const inner = name.length > 0 && (roleOf(tokens, at) === "adverb" || JOINTS.has(tokens[at - 1]?.lower ?? ""));
    const next = inner ? takeDescriptions(tokens, at, note) : at;
    if (next > at && next < tokens.length) {
      at = next;
      continue;
    }
    name.push(token);
    at++;
  }
  while (JOINTS.has(name.at(-1)?.lower ?? "") || name.at(-1)?.lower === ".") name.pop();
  const size = sizes.length > 0 ? { size: toTold(sizes) } : {};
  return { ...size, states, preparation, name: name.filter(({ lower }) => lower !== '"'), tail: tokens.slice(at) };
}

/** Takes the descriptions at `from`, with the words that join them, and gives the position of the first word that is none. */
function takeDescriptions(
  tokens: readonly Token[],
  from: number,
  note: (role: Role, run: readonly Token[]) => void,
): number {
  let at = from;
  for (;;) {
    const start = skipJoints(tokens, at, from);
    const role = start < tokens.length ? roleOf(tokens, start) : "name";
    if (role === "name") return at;
    let end = start + 1;
    if (role === "adverb") {
      while (end < tokens.length && roleOf(tokens, end) === "adverb") end++;
      end++;
    }
    note(role === "adverb" ? "preparation" : role, tokens.slice(start, Math.min(end, tokens.length)));
    at = Math.min(end, tokens.length);
  }
}

/** "medium to large", "peeled and diced": what joins two descriptions says nothing by itself. */
function skipJoints(tokens: readonly Token[], at: number, from: number): number {
  let next = at;
  while (at > from && JOINTS.has(tokens[next]?.lower ?? "")) next++;
  return next;
}

function endsName(tokens: readonly Token[], at: number): boolean {
  const word = (tokens[at] as Token).lower;
  const next = tokens[at + 1]?.lower ?? "";
  if (word === "to" && (isKindAdjective(next) || SIZES.has(next) || STATES.has(next))) return false;
  if (NAME_ENDS.has(word) || (word === "or" && REMARKS_AFTER_OR.has(next))) return true;
  return startsPreparation(tokens, at);
}

/** True where from `at` on only preparations stand, or preparations and then a phrase about them. */
function startsPreparation(tokens: readonly Token[], at: number): boolean {
  let prepared = false;
  for (let next = at; next < tokens.length; next++) {
    const word = (tokens[next] as Token).lower;
    if (isPreparation(word)) prepared = true;
    else if (prepared && AFTER_PREPARATION.has(word)) return true;
    else if (next === at ? !isAdverb(word) : !isAdverb(word) && !JOINTS.has(word)) return false;
  }
  return prepared;
}
