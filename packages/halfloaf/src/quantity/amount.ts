import * as v from "valibot";
import { UNIT_CODES } from "./unit.ts";

const positive = v.pipe(v.number(), v.gtValue(0));

/**
 * An amount as a dish states it. A range and "to taste" are values of their own: nothing is made of
 * them until somebody asks for a mass, and then "to taste" answers unknown.
 *
 * Units are UCUM codes (`g`, `mL`, `[tbs_m]`, ...) or `piece`, whose mass is the food's own by size.
 */
export const Amount = v.union([
  v.strictObject({ value: positive, unit: v.picklist(UNIT_CODES) }),
  v.strictObject({ value: positive, unit: v.literal("piece"), size: v.optional(v.string()) }),
  v.strictObject({ from: positive, to: positive, unit: v.picklist(UNIT_CODES) }),
  v.strictObject({ from: positive, to: positive, unit: v.literal("piece"), size: v.optional(v.string()) }),
  v.literal("to-taste"),
]);
export type Amount = v.InferOutput<typeof Amount>;
