import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeFood } from "../dish/dish.testing.ts";
import type { Food } from "../food/index.ts";
import { foodLife, litresPerG } from "./foodLife.ts";

const BOTH = { fridge: true, freezer: true };

function keeping(unopened: Food["keeping"]["unopened"], opened: Food["keeping"]["opened"] = {}) {
  return makeFood("food", { keeping: { unopened, opened, authority: "a table" } });
}

const days = fc.option(fc.nat(400), { nil: undefined });
const times = fc.record({ "dry-store": days, fridge: days, freezer: days });

describe("how long a food keeps", () => {
  it.each([
    [
      "in the dry store or the fridge, whichever is longer",
      { "dry-store": 5, fridge: 9 },
      { fridge: 4 },
      BOTH,
      ["fridge", 9, 4],
    ],
    [
      "in the dry store where both are the same",
      { "dry-store": 9, fridge: 9 },
      { "dry-store": 2 },
      BOTH,
      ["dry-store", 9, 2],
    ],
    [
      "never in the freezer, unless it is sold frozen",
      { fridge: 3, freezer: 90 },
      { fridge: 1 },
      BOTH,
      ["fridge", 3, 1],
    ],
    ["in the freezer what is sold frozen", { freezer: 90 }, { freezer: 60, fridge: 2 }, BOTH, ["freezer", 90, 60]],
    [
      "once opened in the fridge, where it is not kept open in the dry store",
      { "dry-store": 700 },
      { fridge: 3 },
      BOTH,
      ["dry-store", 700, 3],
    ],
    ["for its day only when opened, where no time is known", { fridge: 20 }, {}, BOTH, ["fridge", 20, 0]],
    ["never longer open than closed", { fridge: 2 }, { fridge: 5 }, BOTH, ["fridge", 2, 2]],
    [
      "for its day only what is sold frozen, without a freezer",
      { freezer: 90 },
      { freezer: 60 },
      { fridge: true, freezer: false },
      ["fridge", 0, 0],
    ],
    [
      "in the dry store, if at all, without a fridge",
      { "dry-store": 5, fridge: 30 },
      { fridge: 9 },
      { fridge: false, freezer: false },
      ["dry-store", 5, 0],
    ],
    [
      "for its day only what needs a fridge, without one",
      { fridge: 30, freezer: 90 },
      { fridge: 9 },
      { fridge: false, freezer: true },
      ["dry-store", 0, 0],
    ],
  ] as const)("%s", (_title, unopened, opened, places, [place, unopenedDays, openedDays]) => {
    expect(foodLife(keeping(unopened, opened), places)).toEqual({ place, unopenedDays, openedDays });
  });

  it("is never longer than its table says for any place the kitchen has, and never put where it has none", () => {
    fc.assert(
      fc.property(times, times, fc.boolean(), fc.boolean(), (unopened, opened, fridge, freezer) => {
        const life = foodLife(keeping(unopened, opened), { fridge, freezer });
        const known = Object.entries(unopened).flatMap(([place, time]) =>
          time === undefined || (place === "fridge" && !fridge) || (place === "freezer" && !freezer) ? [] : [time],
        );
        expect(life.unopenedDays).toBeLessThanOrEqual(Math.max(0, ...known));
        expect(life.openedDays).toBeLessThanOrEqual(life.unopenedDays);
        if (life.place === "fridge") expect(fridge).toBe(true);
        if (life.place === "freezer") expect(freezer).toBe(true);
      }),
    );
  });
});

describe("the room of a gram", () => {
  it("is its volume and a quarter more, within what packs are", () => {
    expect(litresPerG({ densityGPerMl: 1 })).toBeCloseTo(0.00125, 9);
    expect(litresPerG({})).toBeCloseTo(0.00125 / 0.8, 9);
    expect(litresPerG({ densityGPerMl: 0.01 })).toBeCloseTo(0.00125 / 0.3, 9);
    expect(litresPerG({ densityGPerMl: 9 })).toBeCloseTo(0.00125 / 1.1, 9);
  });
});
