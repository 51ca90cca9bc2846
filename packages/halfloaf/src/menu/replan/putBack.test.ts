import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/index.ts";
import type { MenuProblem } from "../problem.ts";
import { WeekState } from "../search/WeekState.ts";
import { wishedWeek } from "../search/wishedWeek.testing.ts";
import { MenuBoard } from "./MenuBoard.ts";
import { putBack } from "./putBack.ts";
import { toRemainder } from "./Remainder.ts";
import { dishesOf } from "./SittingChange.ts";
import { withKeepCosts } from "./withKeepCosts.ts";

type Menu = readonly number[];

/** A pack of each food feeds the whole week, so that a menu costs one pack of each dish in it. */
function shareWeek(prices: readonly number[]): MenuProblem {
  const week = wishedWeek([], prices);
  return { ...week, packs: week.packs.map((pack) => ({ ...pack, massG: 400 })) };
}

const costOf = (prices: readonly number[], menu: Menu): number =>
  [...new Set(menu)].reduce((sum, dish) => sum + (prices[dish] as number), 0);

function boardOf(problem: MenuProblem, menu: Menu): MenuBoard {
  const state = new WeekState(problem);
  state.toggleTrips(0);
  state.change(menu.map((dish, sitting) => ({ sitting, dish })));
  return new MenuBoard(state);
}

function settle(problem: MenuProblem, { old, now }: { readonly old: Menu; readonly now: Menu }, changeMinor: number) {
  const week = { problem, plan: boardOf(problem, old).plan(), today: 0, losses: [] };
  const remainder = toRemainder(week);
  const board = boardOf(withKeepCosts(remainder, changeMinor), now);
  const { plan, changes } = putBack(board, { week, remainder, judge: checkPlan, changeMinor });
  return { menu: dishesOf(problem, plan), changes };
}

const prices = [100, 130, 170, 220];

describe("putting old dishes back", () => {
  it("puts one back that costs no more than its change is worth", () => {
    const { menu } = settle(shareWeek(prices), { old: [0, 1, 2, 2], now: [1, 1, 2, 2] }, 100);
    expect(menu).toEqual([0, 1, 2, 2]);
  });

  it("puts two back together that are dearer one by one", () => {
    const { menu, changes } = settle(shareWeek(prices), { old: [0, 0, 2, 2], now: [1, 1, 2, 2] }, 10);
    expect({ menu, changes }).toEqual({ menu: [0, 0, 2, 2], changes: [] });
  });

  it("leaves a change that saves more than its price, and says what the old dish would cost", () => {
    const { menu, changes } = settle(shareWeek(prices), { old: [3, 0, 0, 0], now: [0, 0, 0, 0] }, 50);
    expect(menu).toEqual([0, 0, 0, 0]);
    expect(changes).toEqual([{ sitting: 0, from: 3, to: 0, why: { kind: "dearer", byMinor: 220 } }]);
  });

  it("leaves no one or two changes that could be taken back for their price, and touches no kept sitting", () => {
    const menu = fc.array(fc.nat({ max: 3 }), { minLength: 4, maxLength: 4 });
    const drawn = fc.record({
      own: fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 4, maxLength: 4 }),
      old: menu,
      now: menu,
      changeMinor: fc.integer({ min: 0, max: 60 }),
    });
    fc.assert(
      fc.property(drawn, ({ own, old, now, changeMinor }) => {
        const { menu: settled, changes } = settle(shareWeek(own), { old, now }, changeMinor);
        for (const [k, dish] of settled.entries()) expect([old[k], now[k]]).toContain(dish);
        const costMinor = costOf(own, settled);
        for (const one of changes)
          for (const other of changes) {
            const back = settled.map((dish, k) =>
              k === one.sitting || k === other.sitting ? (old[k] as number) : dish,
            );
            const count = one === other ? 1 : 2;
            expect(costOf(own, back) - costMinor).toBeGreaterThan(count * changeMinor - 1e-6);
          }
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});
