import { toKj } from "../quantity/energy.ts";
import { type Issue, parseWith } from "../quantity/issue.ts";
import { type Activity, Eater, type ReferReason, reasonToRefer } from "./eater.ts";

/** Constants of the equation for one sex; the activity factor multiplies the terms of mass and height. */
interface Equation {
  readonly interceptKcal: number;
  readonly kcalPerYear: number;
  readonly kcalPerKg: number;
  readonly kcalPerM: number;
  readonly activityFactor: Readonly<Record<Activity, number>>;
}

/**
 * Estimated energy requirement of adults, kcal a day. The two sexes have activity factors of their own.
 * **Source**: IOM 2005, Dietary Reference Intakes for Energy and macronutrients, chapter 5; men's factors above
 * sedentary from memory, confirmed by the printed table for the age of 30.
 */
const EQUATIONS: Readonly<Record<Eater["sex"], Equation>> = {
  male: {
    interceptKcal: 662,
    kcalPerYear: -9.53,
    kcalPerKg: 15.91,
    kcalPerM: 539.6,
    activityFactor: { sedentary: 1, "low-active": 1.11, active: 1.25, "very-active": 1.48 },
  },
  female: {
    interceptKcal: 354,
    kcalPerYear: -6.91,
    kcalPerKg: 9.36,
    kcalPerM: 726,
    activityFactor: { sedentary: 1, "low-active": 1.12, active: 1.27, "very-active": 1.45 },
  },
};

/** Range of kg per m2 of the bodies that the equations were fitted to. **Source**: IOM 2005, chapter 5. */
const FITTED_BMI = { low: 18.5, high: 25 } as const;

const SOURCE = "IOM 2005, Dietary Reference Intakes for Energy, estimated energy requirement of adults";

/** The energy an adult needs a day to stay as they are. */
export interface KnownEnergyNeed {
  readonly kind: "need";
  readonly energyKcal: number;
  readonly energyKj: number;
  /** The least energy a day that may be planned for this person. */
  readonly floorKcal: number;
  readonly floorKj: number;
  /** False where the equation was not fitted to bodies like this one, and the figure is rougher. */
  readonly withinFittedRange: boolean;
  readonly source: string;
}

/** The need; or no figure and the reason why care decides; or all that is wrong with what was given. */
export type EnergyNeed =
  | KnownEnergyNeed
  | { readonly kind: "refer"; readonly reason: ReferReason }
  | { readonly kind: "faulty"; readonly issues: readonly Issue[] };

/**
 * The energy need of an adult of 19 years or more, in kcal and kJ a day.
 *
 * The floor is the need at the least activity of the same reference, reckoned with a body mass of at least
 * 18.5 kg per m2: the least the reference gives to anybody of this sex, age and height, so a slip in the mass or a
 * body below the fitted range never lowers it further. The need itself is never below the floor. Pregnancy,
 * lactation and ages under 19 are referred to care without a number.
 * **Source**: IOM 2005 for the equation and the range of bodies; the floor is a rule of this library.
 */
export function energyNeed(eater: unknown): EnergyNeed {
  const parsed = parseWith(Eater, eater);
  if (!parsed.ok) return { kind: "faulty", issues: parsed.issues };
  const reason = reasonToRefer(parsed.value);
  if (reason !== undefined) return { kind: "refer", reason };
  return adultNeed(parsed.value);
}

/** The energy to plan for in kJ a day: what is wanted, raised to the floor where it lies below. */
export function raiseToFloor(wantedKj: number, need: Pick<KnownEnergyNeed, "floorKj">): number {
  return Math.max(wantedKj, need.floorKj);
}

function adultNeed(eater: Eater): KnownEnergyNeed {
  const squareM = (eater.heightCm / 100) ** 2;
  const floorMassKg = Math.max(eater.massKg, FITTED_BMI.low * squareM);
  const floorKcal = solve({ ...eater, massKg: floorMassKg, activity: "sedentary" });
  const energyKcal = Math.max(solve(eater), floorKcal);
  const bmi = eater.massKg / squareM;
  return {
    kind: "need",
    energyKcal,
    energyKj: toKj(energyKcal),
    floorKcal,
    floorKj: toKj(floorKcal),
    withinFittedRange: bmi >= FITTED_BMI.low - 1e-9 && bmi <= FITTED_BMI.high + 1e-9,
    source: SOURCE,
  };
}

function solve({ sex, ageYears, heightCm, massKg, activity }: Eater): number {
  const { interceptKcal, kcalPerYear, kcalPerKg, kcalPerM, activityFactor } = EQUATIONS[sex];
  const bodyKcal = kcalPerKg * massKg + (kcalPerM * heightCm) / 100;
  return interceptKcal + kcalPerYear * ageYears + activityFactor[activity] * bodyKcal;
}
