import { type Issue, UNIT_CODES } from "halfloaf/quantity";
import type { FaultWords, NamedList, Told } from "./FaultWords.ts";
import { quote, showValue, tellPath, valueAt } from "./valueWords.ts";

type Path = Issue["path"];

/** The keys by which a thing in one of the lists of a kitchen is told from the others. */
const KEYS: Readonly<Record<NamedList, readonly string[]>> = {
  eaters: ["id", "name"],
  shops: ["id", "name"],
  packs: ["id", "label"],
  stores: ["id", "food"],
  dishes: ["id", "title"],
  sittings: ["kind"],
  ratings: ["dish"],
  wishes: [],
  putBy: ["id", "dish"],
};

/** An issue in words: where it stands, its value, what is wrong, what to do about it. */
export interface ToldIssue {
  readonly code: string;
  readonly path: (string | number)[];
  /** The faulty value, shortened; absent where there is none. */
  readonly value?: string;
  readonly sentence: string;
  readonly remedy: string;
}

/** Names that could have been meant, by the code of an issue about a name that leads nowhere. */
export type KnownNames = Readonly<Partial<Record<string, readonly string[]>>>;

/**
 * A fault of the kitchen `raw`, as it was read, in the words of a language: a sentence that names the thing and its value,
 * and the remedy. An issue with a code of no words of its own is told by what it expected and received.
 */
export function tellIssue(issue: Issue, raw: unknown, words: FaultWords, known: KnownNames = {}): ToldIssue {
  const value = valueAt(raw, issue.path);
  const { subject, says, remedy } = toWords(issue, raw, value, words);
  const meant = known[issue.code]?.slice(0, 3) ?? [];
  return {
    code: issue.code,
    path: [...issue.path],
    ...(value !== undefined && { value: showValue(value, words.values) }),
    sentence: words.sentence(subject, says),
    remedy: meant.length === 0 ? remedy : `${words.near(meant.join(", "))} ${remedy}`,
  };
}

interface Said extends Told {
  readonly subject: string;
}

function toWords(issue: Issue, raw: unknown, value: unknown, words: FaultWords): Said {
  if (issue.code === "strict_object" || issue.code === "object") return tellKeys(issue, raw, value, words);
  const shown = showValue(value, words.values);
  const lastKey = issue.path.findLast((key) => typeof key === "string");
  const byKey = lastKey === undefined ? undefined : words.remedies[String(lastKey)];
  const subject = nameThing(raw, issue.path, words);
  const told = issue.code === "union" ? tellUnion(issue, value, words) : words.codes[issue.code]?.(issue, shown);
  if (told !== undefined) return { subject, says: told.says, remedy: byKey ?? told.remedy };
  return { subject, says: words.isThat(shown), remedy: byKey ?? words.asked(quote(issue.message ?? issue.expected)) };
}

/**
 * A value that fits none of several shapes: an amount, the content of a pack, minutes of one day or of seven. The schema can't
 * say which shape was meant, so the value itself is looked at. Undefined where nothing is known of it.
 */
function tellUnion(issue: Issue, value: unknown, { shapes, values }: FaultWords): Told | undefined {
  const key = issue.path.at(-1);
  const shown = showValue(value, values);
  if (key === "content") return shapes.content(shown);
  if (key === "handsOnMinutes") return shapes.handsOnMinutes(shown);
  if (key !== "amount") return undefined;
  const unit = valueAt(value, ["unit"]);
  const units: readonly unknown[] = [...UNIT_CODES, "piece"];
  return typeof unit === "string" && !units.includes(unit)
    ? shapes.unit(showValue(unit, values), units.join(", "))
    : shapes.amount(shown);
}

/** A key that is missing, one that is too many, or no object at all. */
function tellKeys(issue: Issue, raw: unknown, value: unknown, words: FaultWords): Said {
  const key = String(issue.path.at(-1) ?? "");
  const owner = issue.path.slice(0, -1);
  if (issue.expected === "never") return { subject: nameThing(raw, owner, words), ...words.strangeKey(quote(key)) };
  if (issue.received === "undefined" && value === undefined && issue.path.length > 0)
    return { subject: nameThing(raw, owner, words), ...words.missingKey(quote(key), words.hints[key]) };
  const shown = showValue(value, words.values);
  return { subject: nameThing(raw, issue.path, words), ...words.noObject(shown, words.hints[key]) };
}

/** The thing at a path, called by the name of the eater, shop, pack, lot, dish or sitting it belongs to. */
function nameThing(raw: unknown, path: Path, words: FaultWords): string {
  const [list, position, ...rest] = path;
  if (!isNamedList(list) || typeof position !== "number")
    return path.length === 0 ? words.kitchen : quote(tellPath(path));
  const record = valueAt(raw, path.slice(0, 2));
  const name = KEYS[list].map((key) => valueAt(record, [key])).find((each) => typeof each === "string");
  const noun = words.nouns[list];
  const thing = name === undefined ? words.thingAt(noun, position + 1, quote(list)) : words.thing(noun, quote(name));
  return rest.length === 0 ? thing : words.of(quote(tellPath(rest)), thing);
}

function isNamedList(list: string | number | undefined): list is NamedList {
  return typeof list === "string" && Object.hasOwn(KEYS, list);
}
