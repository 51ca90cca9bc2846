import * as v from "valibot";
import { DIETS } from "../food/food.ts";

export const SEXES = ["female", "male"] as const;

/** How much a day moves the body, from least to most; the names of the four levels of IOM 2005. */
export const ACTIVITIES = ["sedentary", "low-active", "active", "very-active"] as const;
export type Activity = (typeof ACTIVITIES)[number];

/** Stages of life whose needs this library leaves to a midwife, doctor or dietitian. */
export const STAGES = ["pregnancy", "lactation"] as const;

/** Levels of phytate in mg a day for which EFSA prints a reference intake of zinc. **Source**: EFSA 2014, zinc. */
export const PHYTATE_LEVELS_MG = [300, 600, 900, 1200] as const;

/** Youngest age in years for which figures for adults are given. */
export const ADULT_FROM_YEARS = 19;

/** Least height in cm of an adult; it also keeps the energy equations far from zero at any age. */
const ADULT_HEIGHT_FROM_CM = 70;

const between = (low: number, high: number) => v.pipe(v.number(), v.minValue(low), v.maxValue(high));

/**
 * What the reference intakes ask about a person: age in years, height in cm, body mass in kg, activity.
 *
 * Bounds keep out slips of the pen, they judge nobody (common practice, no source). Absent keys: `stage` none of the
 * two; `diet` all foods; `phytateMg` and `menopause` not stated, and then what is assumed is said with the figure.
 * Further keys are left aside, so that a richer record of an eater can be handed in as it is.
 */
export const Eater = v.pipe(
  v.object({
    sex: v.picklist(SEXES),
    ageYears: between(0, 120),
    heightCm: between(40, 260),
    massKg: between(2, 400),
    activity: v.picklist(ACTIVITIES),
    stage: v.optional(v.picklist(STAGES)),
    diet: v.optional(v.picklist(DIETS)),
    phytateMg: v.optional(v.picklist(PHYTATE_LEVELS_MG)),
    menopause: v.optional(v.picklist(["before", "after"])),
  }),
  v.forward(
    v.partialCheck(
      [["ageYears"], ["heightCm"]],
      ({ ageYears, heightCm }) => ageYears < ADULT_FROM_YEARS || heightCm >= ADULT_HEIGHT_FROM_CM,
      `an adult's height of ${ADULT_HEIGHT_FROM_CM} cm or more`,
    ),
    ["heightCm"],
  ),
);
export type Eater = v.InferOutput<typeof Eater>;

/** Why no figure is given and the person is referred to care. */
export type ReferReason = "under-19" | (typeof STAGES)[number];

/** The reason to give no figure, or undefined where figures for adults apply. Pregnancy comes before age. */
export function reasonToRefer(eater: Pick<Eater, "ageYears" | "stage">): ReferReason | undefined {
  if (eater.stage !== undefined) return eater.stage;
  return eater.ageYears < ADULT_FROM_YEARS ? "under-19" : undefined;
}
