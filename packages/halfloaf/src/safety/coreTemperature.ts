import * as v from "valibot";
import type { FoodFacts } from "../food/food.ts";
import { type Parsed, parseWith } from "../quantity/issue.ts";
import { type AuthorityChoice, JURISDICTIONS, rowsOfChoice } from "./authority.ts";
import { isNamed } from "./isNamed.ts";
import { equivalentMinutes } from "./lethality.ts";

/** Kinds of food that core temperatures are given for. */
export const CORE_KINDS = ["poultry", "minced-meat", "whole-meat", "fish", "egg", "leftover", "cooked-ham"] as const;
export type CoreKind = (typeof CORE_KINDS)[number];

const text = v.pipe(v.string(), v.nonEmpty());
const positive = v.pipe(v.number(), v.gtValue(0));

const Table = v.strictObject({
  title: text,
  rows: v.pipe(
    v.array(
      v.strictObject({
        /** "any" stands for every kind that the authority gives no row of its own. */
        kind: v.picklist([...CORE_KINDS, "any"]),
        jurisdiction: v.picklist(JURISDICTIONS),
        authority: text,
        tempC: v.pipe(v.number(), v.minValue(50), v.maxValue(100)),
        holdMinutes: v.optional(positive),
        restMinutes: v.optional(positive),
        source: text,
        note: v.optional(text),
      }),
    ),
    v.minLength(1),
  ),
});
type Row = v.InferOutput<typeof Table>["rows"][number];

/** Core temperatures by kind of food and authority. */
export type CoreTemperatures = readonly Row[];

/** How hot the middle of a food must get, how long it is held so, how long it then rests off the heat. */
export interface CoreRule {
  readonly kind: CoreKind;
  readonly tempC: number;
  /** 0 where reaching the temperature is enough. */
  readonly holdMinutes: number;
  /** 0 where no rest is asked for. */
  readonly restMinutes: number;
  /** The authorities whose rules this one meets, joined by "and". */
  readonly authority: string;
  readonly sources: readonly string[];
  readonly notes: readonly string[];
}

/** Reads the table of core temperatures as it comes from JSON; on failure gives every fault at once. */
export function parseCoreTemperatures(input: unknown): Parsed<CoreTemperatures> {
  const parsed = parseWith(Table, input);
  return parsed.ok ? { ok: true, value: parsed.value.rows } : parsed;
}

/**
 * The core rule for a kind of food by the authority chosen; undefined where no authority has one.
 *
 * "strictest" gives one rule that meets all authorities: their highest temperature, held as long as makes it equal to
 * each rule that asks for a time at a lower temperature, and their longest rest.
 * **Source**: each row carries its own; equal times by `equivalentMinutes`.
 */
export function coreRule(table: CoreTemperatures, kind: CoreKind, choice: AuthorityChoice): CoreRule | undefined {
  const rows = rowsOfChoice(rowsOfKind(table, kind), choice);
  if (rows.length === 0) return undefined;
  const tempC = Math.max(...rows.map((row) => row.tempC));
  const holds = rows.map((row) =>
    row.holdMinutes === undefined ? 0 : equivalentMinutes(tempC, { referenceC: row.tempC, minutes: row.holdMinutes }),
  );
  return {
    kind,
    tempC,
    holdMinutes: Math.max(...holds),
    restMinutes: Math.max(...rows.map(({ restMinutes }) => restMinutes ?? 0)),
    authority: [...new Set(rows.map(({ authority }) => authority))].join(" and "),
    sources: rows.map(({ source }) => source),
    notes: rows.flatMap(({ note }) => note ?? []),
  };
}

/** Cuts that are one piece of muscle, so that germs sit on the outside; taken from their names. */
const WHOLE_CUT =
  /\b(chops?|steaks?|joint|shoulder|belly|ribs?|stewing|gammon|bacon|loin|brisket|shank|leg|topside)\b/i;
const NOT_WHOLE = /mince|ground|sausage|burger|liver|kidney|heart|stuff/i;

/**
 * The kind of a raw food for its core temperature; undefined for what is not raw meat, fish or egg. Meat that its
 * names do not show to be a whole cut counts as minced, for which more heat is asked.
 */
export function coreKindOf(food: Pick<FoodFacts, "group" | "hygiene" | "names">): CoreKind | undefined {
  if (food.hygiene === "raw-egg") return "egg";
  if (food.hygiene === "raw-fish") return "fish";
  if (food.hygiene !== "raw-meat") return undefined;
  if (food.group === "poultry") return "poultry";
  return isNamed(food, WHOLE_CUT) && !isNamed(food, NOT_WHOLE) ? "whole-meat" : "minced-meat";
}

function rowsOfKind(table: CoreTemperatures, kind: CoreKind): readonly Row[] {
  return JURISDICTIONS.flatMap((jurisdiction) => {
    const rows = table.filter((row) => row.jurisdiction === jurisdiction);
    const own = rows.filter((row) => row.kind === kind);
    return own.length > 0 ? own : rows.filter((row) => row.kind === "any");
  });
}
