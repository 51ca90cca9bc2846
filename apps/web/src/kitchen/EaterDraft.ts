import type { Eater } from "halfloaf/kitchen";

type Measure = "ageYears" | "heightCm" | "massKg";

/** An eater while the form is filled in: a measure may be missing or no number yet. */
export interface EaterDraft extends Omit<Eater, Measure> {
  readonly ageYears: number | undefined;
  readonly heightCm: number | undefined;
  readonly massKg: number | undefined;
}

/** Somebody of whom nothing is known yet. */
export function newEater(id: string, name: string): EaterDraft {
  return {
    id,
    name,
    sex: "female",
    ageYears: undefined,
    heightCm: undefined,
    massKg: undefined,
    activity: "low-active",
    diet: "meat",
    avoids: { allergens: [], foods: [] },
  };
}
