import { type Activity, type EnergyNeed, energyNeed } from "halfloaf/intake";
import { expect, test } from "vitest";

/**
 * Printed energy requirements in kcal a day at the age of 30, men and women, each at 18.5 and at 24.99 kg per m2.
 * The table prints body masses rounded to 0.1 kg; here they are BMI x height^2. Its footnote gives the activity factors
 * of women alone; men have factors of their own.
 * **Source**: IOM 2005, Dietary Reference Intakes for Energy, table of estimated energy requirements by height and BMI.
 */
const CELLS: readonly [
  heightM: number,
  Activity,
  men185: number,
  men2499: number,
  women185: number,
  women2499: number,
][] = [
  [1.5, "sedentary", 1848, 2080, 1625, 1762],
  [1.5, "low-active", 2009, 2267, 1803, 1956],
  [1.5, "active", 2215, 2506, 2025, 2198],
  [1.5, "very-active", 2554, 2898, 2291, 2489],
  [1.65, "sedentary", 2068, 2349, 1816, 1982],
  [1.65, "low-active", 2254, 2566, 2016, 2202],
  [1.65, "active", 2490, 2842, 2267, 2477],
  [1.65, "very-active", 2880, 3296, 2567, 2807],
  [1.8, "sedentary", 2301, 2635, 2015, 2211],
  [1.8, "low-active", 2513, 2884, 2239, 2459],
  [1.8, "active", 2782, 3200, 2519, 2769],
  [1.8, "very-active", 3225, 3720, 2855, 3141],
];

function needAt30(sex: "male" | "female", heightM: number, bmi: number, activity: Activity): EnergyNeed {
  return energyNeed({ sex, ageYears: 30, heightCm: heightM * 100, massKg: bmi * heightM ** 2, activity });
}

test.each(
  CELLS.flatMap(([heightM, activity, men185, men2499, women185, women2499]) => [
    { sex: "male" as const, heightM, activity, bmi: 18.5, printedKcal: men185 },
    { sex: "male" as const, heightM, activity, bmi: 24.99, printedKcal: men2499 },
    { sex: "female" as const, heightM, activity, bmi: 18.5, printedKcal: women185 },
    { sex: "female" as const, heightM, activity, bmi: 24.99, printedKcal: women2499 },
  ]),
)(
  "$sex, $heightM m, BMI $bmi, $activity: $printedKcal kcal within 1",
  ({ sex, heightM, activity, bmi, printedKcal }) => {
    const need = needAt30(sex, heightM, bmi, activity);
    expect(need.kind).toBe("need");
    if (need.kind !== "need") return;
    expect(Math.abs(need.energyKcal - printedKcal)).toBeLessThanOrEqual(1);
    expect(need.energyKj / 4.184).toBeCloseTo(need.energyKcal, 9);
    expect(need.withinFittedRange).toBe(true);
  },
);

test("the table has 48 cells", () => {
  expect(CELLS.length * 4).toBe(48);
});

test("men with the activity factors of women would miss the cells, so the factors are told apart", () => {
  const man = needAt30("male", 1.65, 18.5, "low-active");
  const withWomensFactorKcal = 662 - 9.53 * 30 + 1.12 * (15.91 * 18.5 * 1.65 ** 2 + 539.6 * 1.65);
  expect(Math.abs(withWomensFactorKcal - 2254)).toBeGreaterThan(10);
  expect(man.kind === "need" ? Math.round(man.energyKcal) : 0).toBe(2254);
});
