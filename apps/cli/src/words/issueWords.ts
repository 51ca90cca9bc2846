import type { Issue } from "halfloaf/quantity";
import { CODE_WORDS, type CodeWords } from "./codeWords.ts";
import type { Fault } from "./Fault.ts";
import { HINTS, REMEDIES } from "./keyWords.ts";
import { tellUnion } from "./unionWords.ts";
import { quote, tellPath, tellValue, valueAt } from "./valueWords.ts";

type Path = Issue["path"];

/** What a thing in one of the lists of a kitchen is called, and the keys by which it is told from the others. */
const OWNERS: Readonly<Record<string, readonly [noun: string, ...keys: string[]]>> = {
  eaters: ["eater", "id", "name"],
  shops: ["shop", "id", "name"],
  packs: ["pack", "id", "label"],
  stores: ["lot", "id", "food"],
  dishes: ["dish", "id", "title"],
  sittings: ["sitting", "kind"],
  ratings: ["rating", "dish"],
  wishes: ["wish"],
  putBy: ["lot put by", "id", "dish"],
};

/** Names that could have been meant, by the code of an issue about a name that leads nowhere. */
export type KnownNames = Readonly<Partial<Record<string, readonly string[]>>>;

/**
 * A fault of the kitchen `raw`, as it was read, in words: a sentence that names the thing and its value, and the remedy.
 * An issue with a code of no words of its own is told by what it expected and received.
 */
export function tellIssue(issue: Issue, raw: unknown, known: KnownNames = {}): Fault {
  const value = valueAt(raw, issue.path);
  const { sentence, remedy } = toWords(issue, raw, value);
  const meant = suggest(issue, known);
  return {
    code: issue.code,
    path: [...issue.path],
    ...(value !== undefined && { value: tellValue(value) }),
    sentence,
    remedy: meant === undefined ? remedy : `${meant} ${remedy}`,
  };
}

function toWords(issue: Issue, raw: unknown, value: unknown): { sentence: string; remedy: string } {
  const words: CodeWords | undefined = issue.code === "union" ? tellUnion(issue, value) : CODE_WORDS[issue.code];
  const lastKey = issue.path.findLast((key) => typeof key === "string");
  const byKey = lastKey === undefined ? undefined : REMEDIES[String(lastKey)];
  if (issue.code === "strict_object" || issue.code === "object") return tellKeys(issue, raw, value);
  const subject = nameThing(raw, issue.path);
  const told = words?.(issue, tellValue(value ?? undefined));
  if (told === undefined) {
    const expected = issue.message ?? issue.expected;
    return { sentence: `${subject} is ${tellValue(value)}.`, remedy: byKey ?? `Asked for is ${quote(expected)}.` };
  }
  return { sentence: `${subject} ${told.says}.`, remedy: byKey ?? told.remedy };
}

/** A key that is missing, one that is too many, or no object at all. */
function tellKeys(issue: Issue, raw: unknown, value: unknown): { sentence: string; remedy: string } {
  const key = String(issue.path.at(-1) ?? "");
  if (issue.expected === "never") {
    const owner = nameThing(raw, issue.path.slice(0, -1));
    return {
      sentence: `${owner} has a key ${quote(key)} that is not known.`,
      remedy: "Correct its spelling or remove it.",
    };
  }
  if (issue.received === "undefined" && value === undefined && issue.path.length > 0) {
    const owner = nameThing(raw, issue.path.slice(0, -1));
    const hint = HINTS[key];
    return { sentence: `${owner} has no ${quote(key)}.`, remedy: `Add it${hint === undefined ? "" : `: ${hint}`}.` };
  }
  const subject = nameThing(raw, issue.path);
  const hint = HINTS[key];
  return {
    sentence: `${subject} is ${tellValue(value)}, not an object in braces.`,
    remedy: hint === undefined ? "Write its keys and values in braces." : `Write ${hint}.`,
  };
}

/** The thing at a path, called by the name of the eater, shop, pack, lot, dish or sitting it belongs to. */
function nameThing(raw: unknown, path: Path): string {
  const [list, position, ...rest] = path;
  const owner = typeof list === "string" && typeof position === "number" ? OWNERS[list] : undefined;
  if (owner === undefined) return path.length === 0 ? "The kitchen" : quote(tellPath(path));
  const [noun, ...keys] = owner;
  const [record, where] = [valueAt(raw, path.slice(0, 2)), `number ${(position as number) + 1} in "${list}"`];
  const name = keys.map((key) => valueAt(record, [key])).find((each) => typeof each === "string");
  const called = name === undefined ? `${noun} ${where}` : `${noun} ${quote(name as string)}`;
  return rest.length === 0 ? `The ${called}` : `${quote(tellPath(rest))} of the ${called}`;
}

function suggest(issue: Issue, known: KnownNames): string | undefined {
  const names = known[issue.code]?.slice(0, 3) ?? [];
  return names.length === 0 ? undefined : `Near to it: ${names.join(", ")}.`;
}
