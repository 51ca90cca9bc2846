import * as v from "valibot";
import { type Parsed, parseWith } from "../quantity/issue.ts";
import { type AuthorityChoice, JURISDICTIONS, rowsOfChoice } from "./authority.ts";

/** Rules of keeping food, and which of two figures for each is the stricter. */
const STRICTER = {
  "room-minutes": "low",
  "hot-room-minutes": "low",
  "hot-room-c": "low",
  "danger-low-c": "low",
  "danger-high-c": "high",
  "fridge-c": "low",
  "freezer-c": "low",
  "cooling-start-c": "high",
  "cooling-middle-c": "low",
  "cooling-end-c": "low",
  "cooling-first-minutes": "low",
  "cooling-total-minutes": "low",
  "cooling-from-room-minutes": "low",
  "chill-within-minutes": "low",
  "chill-rice-within-minutes": "low",
  "leftover-days": "low",
  "rice-days": "low",
  "reheat-times": "low",
  "thawed-hours": "low",
  "hot-holding-c": "high",
  "kidney-bean-soak-hours": "high",
  "kidney-bean-boil-minutes": "high",
} as const satisfies Record<string, "low" | "high">;

/** The name of a rule; it ends with the unit of its figure (minutes, hours, days, times, c for degrees Celsius). */
export type KeepingRuleName = keyof typeof STRICTER;
const RULE_NAMES = Object.keys(STRICTER) as KeepingRuleName[];

const text = v.pipe(v.string(), v.nonEmpty());
const KeepingRule = v.strictObject({
  rule: v.picklist(RULE_NAMES),
  jurisdiction: v.picklist(JURISDICTIONS),
  authority: text,
  value: v.number(),
  source: text,
  note: v.optional(text),
});

/** One figure of one authority. */
export type KeepingRule = v.InferOutput<typeof KeepingRule>;

/** All figures; every rule has one of some authority. */
export type KeepingRules = readonly KeepingRule[];

/** Reads the rules as they come from JSON; on failure gives every fault at once, a rule without a figure among them. */
export function parseKeepingRules(input: unknown): Parsed<KeepingRules> {
  const parsed = parseWith(v.strictObject({ title: text, rows: v.array(KeepingRule) }), input);
  if (!parsed.ok) return parsed;
  const { rows } = parsed.value;
  const issues = RULE_NAMES.filter((name) => !rows.some(({ rule }) => rule === name)).map((name) => ({
    code: "missing",
    path: ["rows"],
    expected: `a figure for ${name}`,
    received: "none",
  }));
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: rows };
}

/**
 * The figure of a rule by the authority chosen: its own, or where it has none, or where the strictest is wanted, the
 * strictest of all. Throws for rules that did not come from `parseKeepingRules` and lack the rule.
 */
export function pickRule(rules: KeepingRules, name: KeepingRuleName, choice: AuthorityChoice): KeepingRule {
  const rows = rowsOfChoice(
    rules.filter(({ rule }) => rule === name),
    choice,
  );
  const sign = STRICTER[name] === "low" ? 1 : -1;
  const [first] = rows.toSorted((a, b) => sign * (a.value - b.value));
  if (first === undefined) throw new RangeError(`the rules have no figure for ${name}`);
  return first;
}

/** How long food may still stand out of the cold, or by how much it has stood too long. */
export type RoomTime =
  | { readonly kind: "within"; readonly leftMinutes: number; readonly rule: KeepingRule }
  | { readonly kind: "exceeded"; readonly byMinutes: number; readonly rule: KeepingRule };

/**
 * Judges the time food stood out of fridge and heat. All stays count together, since germs grown on one stay are not
 * gone on the next. With air above 32.2 C the shorter time holds; air of unknown temperature counts as a usual room.
 * Throws where a stay is negative or no number, since it would lengthen the time that is left.
 * **Source**: FSIS, danger zone; the minutes come from the rules.
 */
export function judgeRoomTime(
  staysMinutes: readonly number[],
  rules: KeepingRules,
  options: { readonly airC?: number; readonly choice?: AuthorityChoice } = {},
): RoomTime {
  const { airC, choice = "strictest" } = options;
  const fault = staysMinutes.find((minutes) => !(minutes >= 0));
  if (fault !== undefined) throw new RangeError(`a stay of ${fault} minutes`);
  const isHot = airC !== undefined && airC > pickRule(rules, "hot-room-c", choice).value;
  const rule = pickRule(rules, isHot ? "hot-room-minutes" : "room-minutes", choice);
  const leftMinutes = rule.value - staysMinutes.reduce((sum, minutes) => sum + minutes, 0);
  return leftMinutes >= 0 ? { kind: "within", leftMinutes, rule } : { kind: "exceeded", byMinutes: -leftMinutes, rule };
}

/** The last whole day a cooked dish may be eaten, counted from the day of cooking, and who says so. */
export interface LeftoverDays {
  readonly days: number;
  readonly authority: string;
}

/**
 * Days that leftovers may be kept in the fridge: the fewest of what the dish itself allows and what the authority says,
 * for cooked rice less. **Source**: UK Food Standards Agency, FoodSafety.gov; each rule carries its own.
 */
export function leftoverDays(
  keeps: { readonly fridgeDays: number; readonly authority: string },
  hasRice: boolean,
  rules: KeepingRules,
  choice: AuthorityChoice = "strictest",
): LeftoverDays {
  const names: KeepingRuleName[] = hasRice ? ["leftover-days", "rice-days"] : ["leftover-days"];
  const limits = names
    .map((name) => pickRule(rules, name, choice))
    .map(({ value: days, authority }) => ({ days, authority }));
  const own = { days: keeps.fridgeDays, authority: keeps.authority };
  return limits.reduce((least, limit) => (limit.days < least.days ? limit : least), own);
}
