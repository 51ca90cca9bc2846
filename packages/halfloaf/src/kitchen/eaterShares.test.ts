import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { datedSittings } from "./datedSittings.ts";
import { eaterShares, STANDARD_DAY_KJ } from "./eaterShares.ts";
import { makeEater, makeKitchen } from "./kitchen.testing.ts";

const evening = { kind: "evening" as const, minutes: 60, heat: true, packed: false };
const morning = { ...evening, kind: "morning" as const };

function sharesOf(over: Parameters<typeof makeKitchen>[0], days = 7) {
  const kitchen = makeKitchen(over);
  return eaterShares(kitchen, datedSittings(kitchen, kitchen.startsOn, days), days);
}

describe("an eater's share", () => {
  it("is so many standard portions as the need has standard days, and the floor is no more than the need", () => {
    const body = fc.record({ massKg: fc.integer({ min: 45, max: 110 }), heightCm: fc.integer({ min: 150, max: 195 }) });
    fc.assert(
      fc.property(body, fc.constantFrom("sedentary", "low-active", "active", "very-active"), (size, activity) => {
        const [share] = sharesOf({ eaters: [makeEater("ada", { ...size, activity })] });
        expect(share?.portions).toBeCloseTo((share?.needKj as number) / STANDARD_DAY_KJ, 12);
        expect(share?.portions).toBeGreaterThan(0.5);
        expect(share?.floorShare).toBeGreaterThan(0);
        expect(share?.floorShare).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("of a day is that of the sittings attended in the energy of all kinds", () => {
    const [ada, bea] = sharesOf({
      eaters: [makeEater("ada"), makeEater("bea")],
      sittings: [
        { ...morning, on: [1, 2], eaters: ["ada", "bea"] },
        { ...evening, on: [2], eaters: ["ada"] },
      ],
      energySharePct: { morning: 30, evening: 60, between: 30 },
    });
    expect(ada?.sittings).toEqual([0, 1, 2]);
    expect(bea?.sittings).toEqual([0, 1]);
    expect(ada?.dayShare).toEqual([0.25, 0.75, 0, 0, 0, 0, 0]);
    expect(bea?.dayShare).toEqual([0.25, 0.25, 0, 0, 0, 0, 0]);
  });

  it("of somebody whose needs are left to care is one portion, with the reason and no figure", () => {
    const [expecting, young] = sharesOf({
      eaters: [makeEater("ada", { stage: "pregnancy" }), makeEater("bea", { ageYears: 12 })],
    });
    expect(expecting).toMatchObject({ portions: 1, referred: "pregnancy" });
    expect(young).toMatchObject({ portions: 1, referred: "under-19" });
    for (const share of [expecting, young]) expect(share).not.toHaveProperty("needKj");
  });
});
