import { describe, expect, it } from "vitest";
import type { MenuPlan } from "../plan.ts";
import type { MenuFood, MenuLot, MenuPack, MenuProblem, MenuWish } from "../problem.ts";
import { checkPlan } from "./checkPlan.ts";
import type { PlanMoney } from "./PlanMoney.ts";
import { alter, tinyPlan, tinyProblem } from "./tinyWeek.testing.ts";

const moneyOf = (problem: Partial<MenuProblem>, plan: Partial<MenuPlan> = {}): PlanMoney =>
  checkPlan({ ...tinyProblem, ...problem }, { ...tinyPlan, ...plan }).money;

describe("the money of a plan", () => {
  it("is what was reckoned by hand", () => {
    const money = moneyOf({});
    // Barley 120, milk 90, peas 2 x 130; trips 50 + 30.
    expect(money.tillMinor).toBe(470);
    expect(money.tripMinor).toBe(80);
    // Cooking 9 + 18 + 4 + 4, two leftovers at 2, trips 20 + 15; 3 a minute.
    expect(money.minutes).toBe(74);
    expect(money.minutesMinor).toBe(222);
    // The pot twice at 5, cold peas twice at 7.
    expect(money.dislikeMinor).toBe(24);
    // Fibre 38 of 40: 0.05 x 400. Salt 4.5 over 3.6: 0.1 x 400 + 0.15 x 1200, for two eaters.
    expect(money.shortfallMinor).toBeCloseTo(20 + 2 * 220, 9);
    // Milk opened on day 0 is good until day 1: 500 g. Peas of the start, opened on day 0: 10 g.
    expect(money.wasteG).toEqual([0, 500, 10]);
    expect(money.wastePenaltyMinor).toBeCloseTo(5 + 0.5, 9);
    // Closing: barley 80 x 0.2, opened peas 200 x 0.1. Opening: barley 100 x 0.2, opened milk 300 x 0.02, peas 250 x 0.3.
    expect(money.creditMinor).toBeCloseTo(16 + 20 - (20 + 6 + 75), 9);
    expect(money.totalMinor).toBeCloseTo(470 + 80 + 222 + 24 + 460 + 5.5 + 65, 9);
  });

  it("charges the minutes of washing up for each cooking, of leftovers none, and counts them in no limit", () => {
    const dishes = tinyProblem.dishes.map((dish, at) => ({ ...dish, vessels: [3, 2, 0][at] as number }));
    const worth = { ...tinyProblem.worth, vesselMinutes: 2 };
    const [before, after] = [moneyOf({}), moneyOf({ dishes, worth })];
    // The pot is cooked once and milk barley once; cold peas leave nothing to wash.
    expect(after.washUpMinutes).toBe(2 * (3 + 2));
    expect(after.minutesMinor - before.minutesMinor).toBe(3 * 10);
    expect(after.totalMinor - before.totalMinor).toBeCloseTo(30, 9);
    expect(after.minutes).toBe(before.minutes);
    expect(checkPlan({ ...tinyProblem, dishes, worth }, tinyPlan).faults).toEqual([]);
  });

  it("takes an offer as often as it fits over all purchases of the pack on one trip, and on no two trips together", () => {
    const till = (counts: readonly (readonly [trip: number, count: number])[]): number => {
      const purchases = counts.map(([trip, count]) => ({ trip, pack: 0, count }));
      return moneyOf({}, { trips: [0, 1, 2], purchases, uses: [] }).tillMinor;
    };
    expect(till([[0, 1]])).toBe(120);
    expect(till([[0, 2]])).toBe(200);
    expect(till([[0, 5]])).toBe(2 * 200 + 120);
    expect(
      till([
        [0, 1],
        [0, 3],
      ]),
    ).toBe(2 * 200);
    expect(
      till([
        [0, 1],
        [2, 1],
      ]),
    ).toBe(2 * 120);
    expect(
      till([
        [0, 3],
        [2, 2],
      ]),
    ).toBe(200 + 120 + 200);
  });

  it("charges each serving too few or too many of a wish that has a price, and none of one that must hold", () => {
    const price = (wish: Omit<MenuWish, "dishes" | "sittings">): number =>
      moneyOf({ wishes: [{ dishes: [0, 1], sittings: [1, 3, 5], ...wish }] }).wishesMinor;
    expect(price({ least: 3, missMinor: 70 })).toBe(70);
    expect(price({ most: 0, missMinor: 70 })).toBe(140);
    expect(price({ least: 1, most: 2, missMinor: 70 })).toBe(0);
    expect(price({ least: 3 })).toBe(0);
    const charged = moneyOf({ wishes: [{ dishes: [0], sittings: [0], least: 1, missMinor: 33 }] }).totalMinor;
    expect(charged).toBeCloseTo(moneyOf({}).totalMinor + 33, 9);
  });

  it("says what the tills come to where prices come out high, offers taken as they are expected to be", () => {
    const offer = { count: 2, priceMinor: 200 };
    const high = (changes: Partial<MenuPack>, count: number): number => {
      const packs = alter(tinyProblem.packs, 0, changes);
      return moneyOf({ packs }, { purchases: [{ trip: 0, pack: 0, count }], uses: [] }).highTillMinor;
    };
    expect(high({}, 3)).toBe(320);
    expect(high({ highMinor: 132 }, 1)).toBe(132);
    expect(high({ highMinor: 132 }, 3)).toBe(200 + 132);
    expect(high({ highMinor: 132, offer: { ...offer, highMinor: 220 } }, 3)).toBe(220 + 132);
    expect(high({ highMinor: 132, offer: { count: 2, priceMinor: 240, highMinor: 200 } }, 2)).toBe(264);
    expect(moneyOf({ packs: alter(tinyProblem.packs, 0, { highMinor: 999 }) }).totalMinor).toBe(moneyOf({}).totalMinor);
  });

  it("takes no offer that is dearer than its packs one by one", () => {
    const packs = alter(tinyProblem.packs, 0, { offer: { count: 2, priceMinor: 250 } });
    expect(moneyOf({ packs }, { purchases: [{ trip: 0, pack: 0, count: 3 }] }).tillMinor).toBe(360);
  });

  it("charges no shortfall for a hard bound, for a bound kept or for a bound of at least nothing", () => {
    const bounds = [
      { component: 0, kind: "at-least" as const, amount: 1000, hard: true },
      { component: 0, kind: "at-least" as const, amount: 22, hard: false },
      { component: 0, kind: "at-most" as const, amount: 22, hard: false },
      { component: 0, kind: "at-least" as const, amount: 0, hard: false },
    ];
    expect(moneyOf({ profiles: alter(tinyProblem.profiles, 1, { bounds }) }).shortfallMinor).toBeCloseTo(20, 9);
  });
});

describe("the credit of stock that the plan does not touch", () => {
  const food: MenuFood = { ...(tinyProblem.foods[1] as MenuFood), openedDays: 2, unopenedDays: 5 };
  const [unopenedMinor, openedMinor] = [food.creditMinorPerG * 100, food.creditOpenedMinorPerG * 100];
  /** What a lot of 100 g adds to credit and waste when the plan leaves it alone. */
  const effect = (lot: Partial<MenuLot>, facts: Partial<MenuFood> = {}): { creditMinor: number; wasteG: number } => {
    const foods = [...tinyProblem.foods, { ...food, ...facts }];
    const lots = [...tinyProblem.lots, { food: 3, massG: 100, opened: false, lastDay: 2, mustUse: false, ...lot }];
    const [having, lacking] = [moneyOf({ foods, lots }), moneyOf({ foods })];
    return { creditMinor: having.creditMinor - lacking.creditMinor, wasteG: having.wasteG[3] as number };
  };

  it("is nothing where the lot is as good at the end as at the start", () => {
    for (const opened of [false, true]) {
      expect(effect({ opened }).creditMinor).toBeCloseTo(0, 9);
      expect(effect({ opened }).wasteG).toBe(0);
    }
  });

  it("is lost where the lot goes off before the last day, at the worth it had when the plan began", () => {
    expect(effect({ lastDay: 1 }).creditMinor).toBeCloseTo(-unopenedMinor, 9);
    expect(effect({ lastDay: 1, opened: true }).creditMinor).toBeCloseTo(-openedMinor, 9);
    expect(effect({ lastDay: -3 }).creditMinor).toBeCloseTo(-unopenedMinor, 9);
    expect(effect({ lastDay: 1 }).wasteG).toBe(100);
  });

  it("counts opened stock as unopened only where the food lasts both opened and unopened", () => {
    const lost = (facts: Partial<MenuFood>): number => -effect({ lastDay: 1, opened: true }, facts).creditMinor;
    expect(lost({ openedDays: 3, unopenedDays: 3 })).toBeCloseTo(unopenedMinor, 9);
    expect(lost({ openedDays: 2, unopenedDays: 3 })).toBeCloseTo(openedMinor, 9);
    expect(lost({ openedDays: 3, unopenedDays: 2 })).toBeCloseTo(openedMinor, 9);
  });
});

describe("the credit of packs bought and never opened", () => {
  const bought = (unopenedDays: number, count: number): PlanMoney => {
    const packs = alter(tinyProblem.packs, 1, { unopenedDays });
    const [first, milk, peas] = tinyPlan.purchases as [never, MenuPlan["purchases"][number], never];
    return moneyOf({ packs }, { purchases: [first, { ...milk, count }, peas] });
  };

  it("is that of unopened stock where they are good on the last day", () => {
    expect(bought(2, 3).creditMinor - bought(2, 1).creditMinor).toBeCloseTo(2000 * 0.08, 9);
    expect(bought(2, 3).wasteG[1]).toBe(500);
  });

  it("is nothing where they have gone off by then, and all of it is waste", () => {
    expect(bought(1, 3).creditMinor - bought(1, 1).creditMinor).toBeCloseTo(0, 9);
    expect(bought(1, 3).wasteG[1]).toBe(2500);
  });
});
