import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ACTIVITIES, type Eater } from "./eater.ts";
import { energyNeed, type KnownEnergyNeed, raiseToFloor } from "./energyNeed.ts";

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const adult: fc.Arbitrary<Eater> = fc.record({
  sex: fc.constantFrom("female" as const, "male" as const),
  ageYears: double(19, 120),
  heightCm: double(70, 260),
  massKg: double(2, 400),
  activity: fc.constantFrom(...ACTIVITIES),
});
const woman: Eater = { sex: "female", ageYears: 30, heightCm: 165, massKg: 60, activity: "active" };

function need(eater: unknown): KnownEnergyNeed {
  const result = energyNeed(eater);
  if (result.kind !== "need") throw new Error(`no need but ${result.kind}`);
  return result;
}

describe("laws", () => {
  test("every adult has a need and a floor above zero, the need not below the floor", () => {
    fc.assert(
      fc.property(adult, (eater) => {
        const { energyKcal, floorKcal } = need(eater);
        expect(floorKcal).toBeGreaterThan(0);
        expect(energyKcal).toBeGreaterThanOrEqual(floorKcal);
      }),
    );
  });

  test("kJ are 4.184 times kcal", () => {
    fc.assert(
      fc.property(adult, (eater) => {
        const { energyKcal, energyKj, floorKcal, floorKj } = need(eater);
        expect(energyKj).toBeCloseTo(energyKcal * 4.184, 8);
        expect(floorKj).toBeCloseTo(floorKcal * 4.184, 8);
      }),
    );
  });

  test("more activity, mass or height never lowers the need, more years never raise it", () => {
    fc.assert(
      fc.property(adult, double(0, 5), (eater, more) => {
        const { energyKcal } = need(eater);
        const next = ACTIVITIES[ACTIVITIES.indexOf(eater.activity) + 1] ?? eater.activity;
        expect(need({ ...eater, activity: next }).energyKcal).toBeGreaterThanOrEqual(energyKcal);
        const massKg = Math.min(eater.massKg + more, 400);
        expect(need({ ...eater, massKg }).energyKcal).toBeGreaterThanOrEqual(energyKcal);
        const heightCm = Math.min(eater.heightCm + more, 260);
        expect(need({ ...eater, heightCm }).energyKcal).toBeGreaterThanOrEqual(energyKcal - 1e-9);
        const ageYears = Math.min(eater.ageYears + more, 120);
        expect(need({ ...eater, ageYears }).energyKcal).toBeLessThanOrEqual(energyKcal);
      }),
    );
  });

  test("the floor does not fall with the mass below 18.5 kg per m2", () => {
    fc.assert(
      fc.property(adult, double(0.1, 1), (eater, share) => {
        const least = 18.5 * (eater.heightCm / 100) ** 2;
        fc.pre(least * share >= 2 && least <= 400);
        const { floorKcal } = need({ ...eater, massKg: least });
        expect(need({ ...eater, massKg: least * share }).floorKcal).toBeCloseTo(floorKcal, 6);
      }),
    );
  });

  test("what is planned is never below the floor, and is as wanted where that lies above", () => {
    fc.assert(
      fc.property(adult, double(0, 30_000), (eater, wantedKj) => {
        const known = need(eater);
        const planned = raiseToFloor(wantedKj, known);
        expect(planned).toBeGreaterThanOrEqual(known.floorKj);
        if (wantedKj >= known.floorKj) expect(planned).toBe(wantedKj);
      }),
    );
  });
});

describe("no number", () => {
  test.each([
    [{ ...woman, ageYears: 18.9 }, "under-19"],
    [{ ...woman, ageYears: 0.5, heightCm: 65, massKg: 7 }, "under-19"],
    [{ ...woman, stage: "pregnancy" }, "pregnancy"],
    [{ ...woman, stage: "lactation" }, "lactation"],
    [{ ...woman, ageYears: 17, stage: "pregnancy" }, "pregnancy"],
  ])("%j is referred to care: %s", (eater, reason) => {
    expect(energyNeed(eater)).toEqual({ kind: "refer", reason });
  });

  test("all faults come at once, each with its path", () => {
    const result = energyNeed({ sex: "f", ageYears: -1, heightCm: "165", massKg: Number.NaN, stage: "other" });
    expect(result.kind).toBe("faulty");
    const paths = result.kind === "faulty" ? result.issues.map(({ path }) => path.join(".")) : [];
    expect(paths.sort()).toEqual(["activity", "ageYears", "heightCm", "massKg", "sex", "stage"]);
  });

  test("an adult's height below 70 cm is a fault, a child's is not", () => {
    expect(energyNeed({ ...woman, heightCm: 69 })).toMatchObject({
      kind: "faulty",
      issues: [{ path: ["heightCm"], message: "an adult's height of 70 cm or more" }],
    });
    expect(energyNeed({ ...woman, ageYears: 1, heightCm: 69 }).kind).toBe("refer");
  });

  test.each([null, undefined, 3, "woman", []])("%j is no eater", (input) => {
    expect(energyNeed(input).kind).toBe("faulty");
  });
});

describe("cases", () => {
  test("a woman of 30, 165 cm, 60 kg, active: 354 - 6.91 x 30 + 1.27 x (9.36 x 60 + 726 x 1.65)", () => {
    expect(need(woman).energyKcal).toBeCloseTo(2381.265, 6);
    expect(need(woman).floorKcal).toBeCloseTo(354 - 207.3 + 561.6 + 1197.9, 6);
  });

  test("a body outside 18.5 to 25 kg per m2 gets a figure that says it is rougher", () => {
    expect(need(woman).withinFittedRange).toBe(true);
    expect(need({ ...woman, massKg: 90 }).withinFittedRange).toBe(false);
    expect(need({ ...woman, massKg: 45 }).withinFittedRange).toBe(false);
  });

  test("a mass with a digit lost plans no hunger", () => {
    expect(need({ ...woman, massKg: 6, activity: "sedentary" }).energyKcal).toBeGreaterThan(1800);
  });
});
