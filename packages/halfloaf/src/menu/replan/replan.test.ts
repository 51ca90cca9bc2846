import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../check/checkPlan.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { changeProblem } from "./changeProblem.ts";
import { cookedBefore, sittingsOf } from "./cookedBefore.ts";
import { lotsAtHand } from "./lotsAtHand.ts";
import type { ChangedWeek, MenuChange } from "./MenuChange.ts";
import { priceKeeping } from "./priceKeeping.ts";
import { toRemainder } from "./Remainder.ts";
import { replan } from "./replan.ts";
import { dishesOf } from "./SittingChange.ts";

const RUNS = 60;
const MOVES = 2000;
/** So many cases show that a law was tried at all; about four times as many come up. */
const SOME = 3;
/** Where few of the drawn weeks are of the kind that a law is about, more are drawn, so many times at most. */
const MOST_TURNS = 5;
const asIs = (problem: MenuProblem, plan: MenuPlan): ChangedWeek => {
  const outcome = changeProblem(problem, plan, []);
  if (!outcome.ok) throw new Error("no change could not be made");
  return outcome.value;
};

function searchPlan(problem: MenuProblem, seed: number): MenuPlan | undefined {
  const search = new MenuSearch(problem, seed, { expectedMoves: MOVES });
  if (search.gaps.length > 0) return undefined;
  search.advance();
  return search.best();
}

const isSameFamily = (problem: MenuProblem, a = -1, b = -1): boolean => familyOf(problem, a) === familyOf(problem, b);

/** A change drawn for a plan; some can't be made, which is one of the outcomes. */
function arbitraryChange({ dishes, sittings, packs, trips, profiles }: MenuProblem, plan: MenuPlan) {
  const at = (list: readonly unknown[]) => fc.nat({ max: Math.max(0, list.length - 1) });
  const bought = plan.purchases.filter(({ trip }) => trips[trip]?.day === 0);
  return fc.oneof(
    fc.record({ kind: fc.constant("refuse" as const), dish: at(dishes) }),
    fc.nat({ max: 99 }).chain((draw) =>
      at(sittings).map((sitting) => {
        const own = sittings[sitting]?.dishes ?? [0];
        return { kind: "wish" as const, sitting, dish: own[draw % own.length] as number };
      }),
    ),
    fc.record({ kind: fc.constant("price" as const), pack: at(packs), priceMinor: fc.nat({ max: 400 }) }),
    fc.record({ kind: fc.constant("gone" as const), pack: at(packs) }),
    fc.record({ kind: fc.constant("skip" as const), sittings: at(sittings).map((sitting) => [sitting]) }),
    fc.record({
      kind: fc.constant("skip" as const),
      sittings: at(sittings).map((sitting) => [sitting]),
      absent: fc.record({
        portions: fc.constantFrom(0.75, 1),
        profile: fc.record({ index: at(profiles), eaters: fc.constant(1) }),
      }),
    }),
    fc.record({ kind: fc.constant("guest" as const), sitting: at(sittings), portions: fc.constantFrom(1, 2) }),
    fc.record({
      kind: fc.constant("off" as const),
      lot: bought.length > 0 ? fc.constantFrom({ stock: 0 }, { purchase: 0, copy: 0 }) : fc.constant({ stock: 0 }),
      massG: fc.option(fc.integer({ min: 1, max: 200 }), { nil: undefined }),
    }),
  ) as fc.Arbitrary<MenuChange>;
}

interface Case {
  readonly problem: MenuProblem;
  readonly plan: MenuPlan;
  readonly changes: readonly MenuChange[];
  readonly today: number;
  readonly changed: ChangedWeek;
}

/** Random weeks with a plan, and changes that can be made. */
function forChanges(check: (week: Case) => void, runs = RUNS): number {
  let cases = 0;
  fc.assert(
    fc.property(arbitraryWeek(), fc.nat({ max: 99 }), fc.nat({ max: 3 }), fc.gen(), (problem, seed, day, draw) => {
      const plan = searchPlan(problem, seed);
      if (plan === undefined) return;
      const today = Math.min(day, problem.days - 1);
      const changes = [draw(() => arbitraryChange(problem, plan)), draw(() => arbitraryChange(problem, plan))];
      const changed = changeProblem(problem, plan, changes, { today });
      if (!changed.ok) return;
      cases++;
      check({ problem, plan, changes, today, changed: changed.value });
    }),
    { numRuns: runs, endOnFailure: true },
  );
  return cases;
}

describe("planning again", () => {
  it("gives the same plan where nothing changed, whatever day it is", () => {
    let plans = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 99 }), fc.nat({ max: 4 }), (problem, seed, today) => {
        const plan = searchPlan(problem, seed);
        if (plan === undefined) return;
        plans++;
        const outcome = replan({ ...asIs(problem, plan), today }, { judge: checkPlan, wideMoves: 20_000 });
        expect(outcome).toMatchObject({ kind: "planned", kept: true, changes: [] });
        if (outcome.kind === "planned") expect(outcome.plan).toEqual(plan);
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(SOME);
  });

  it("joins what is over and what is left to the plan they were cut from", () => {
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 99 }), fc.nat({ max: 4 }), (problem, seed, today) => {
        const plan = searchPlan(problem, seed);
        if (plan === undefined) return;
        const remainder = toRemainder({ problem, plan, today, losses: [] });
        expect(checkPlan(remainder.problem, remainder.plan).faults).toEqual([]);
        const joined = remainder.join(remainder.plan);
        const verdict = checkPlan(problem, joined);
        expect(verdict.faults).toEqual([]);
        expect(verdict.money.totalMinor).toBeCloseTo(checkPlan(problem, plan).money.totalMinor, 6);
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
  });

  it("shows only plans that the judge passes, what is over left as it was, and each change worth its price", () => {
    let planned = 0;
    const cases = forChanges(({ changed }) => {
      const outcome = replan(changed, { judge: checkPlan, moves: MOVES, wideMoves: 2 * MOVES });
      if (outcome.kind !== "planned") return;
      planned++;
      const { problem, plan, today } = changed;
      expect(checkPlan(problem, outcome.plan).faults).toEqual([]);
      expect(outcome.moneyMinor).toBeCloseTo(checkPlan(problem, outcome.plan).money.totalMinor, 6);
      const [before, after] = [plan, outcome.plan].map((each) => dishesOf(problem, each)) as [number[], number[]];
      expect(outcome.changes.map(({ sitting }) => sitting)).toEqual(
        after.flatMap((dish, k) => (before[k] === -1 || isSameFamily(problem, before[k], dish) ? [] : [k])),
      );
      for (const { why } of outcome.changes)
        if (why.kind === "dearer") expect(why.byMinor).toBeGreaterThan(outcome.changeMinor - 1e-6);
      for (const at of cookedBefore(problem, plan, today))
        expect(outcome.plan.batches).toContainEqual(plan.batches[at]);
      const isPaid = ({ trip }: MenuPlan["purchases"][number]) => (problem.trips[trip]?.day ?? 0) < today;
      expect(outcome.plan.purchases.filter(isPaid)).toEqual(plan.purchases.filter(isPaid));
    });
    expect(cases).toBeGreaterThan(SOME);
    expect(planned).toBeGreaterThan(SOME);
  });

  it("gives a plan up that still stands only where that saves more than its changes count for, of which five do", () => {
    let givenUp = 0;
    const tryWeek = ({ problem, plan, today }: Case): void => {
      const bought = new Set(plan.purchases.map(({ pack }) => pack));
      const others = problem.packs.flatMap((_, pack) => (bought.has(pack) ? [] : [pack]));
      const cheaper = others.map((pack) => ({ kind: "price" as const, pack, priceMinor: 1 }));
      const changed = changeProblem(problem, plan, cheaper, { today });
      if (!changed.ok) throw new Error("a price could not be changed");
      const { faults, money } = checkPlan(changed.value.problem, changed.value.plan);
      if (faults.length > 0) return;
      const outcome = replan(changed.value, { judge: checkPlan, moves: MOVES, wideMoves: 2 * MOVES, changeMinor: 5 });
      if (outcome.kind !== "planned" || outcome.kept) return;
      givenUp++;
      const counted = Math.min(5, outcome.changes.length);
      expect(money.totalMinor - outcome.moneyMinor).toBeGreaterThan(5 * counted - 1e-6);
    };
    for (let turn = 0; turn < MOST_TURNS && givenUp <= SOME; turn++) forChanges(tryWeek);
    expect(givenUp).toBeGreaterThan(SOME);
  });

  it("says what share of the portions is skipped: none of what is cooked already, and only those who stay away; and what share guests eat besides", () => {
    forChanges(({ problem, plan, today }) => {
      const fixed = sittingsOf(plan, cookedBefore(problem, plan, today));
      const total = problem.sittings.reduce((sum, { portions }) => sum + portions, 0);
      for (const [k, { portions }] of problem.sittings.entries()) {
        const whole = changeProblem(problem, plan, [{ kind: "skip", sittings: [k] }], { today });
        if (whole.ok) expect(whole.value.skippedShare).toBeCloseTo(fixed.has(k) ? 0 : portions / total, 9);
        const absent = { portions: portions / 2 };
        const half = changeProblem(problem, plan, [{ kind: "skip", sittings: [k], absent }], { today });
        if (half.ok) expect(half.value.skippedShare).toBeCloseTo(fixed.has(k) ? 0 : portions / 2 / total, 9);
        const guest = changeProblem(problem, plan, [{ kind: "guest", sitting: k, portions: 2 }], { today });
        if (guest.ok) expect(guest.value).toMatchObject({ skippedShare: 0, guestShare: 2 / total });
      }
    }, 30);
  });

  it("never takes more of a lot than is at hand after a loss", () => {
    forChanges(({ changed, changes }) => {
      if (!changes.some(({ kind }) => kind === "off")) return;
      const outcome = replan(changed, { judge: checkPlan, moves: MOVES, wideMoves: 2 * MOVES });
      if (outcome.kind !== "planned") return;
      const { problem, plan, today, losses } = changed;
      const hand = lotsAtHand(problem, plan, today, losses);
      for (const { lot: lost } of losses) {
        if (!("stock" in lost)) continue;
        const left = hand.find(({ name }) => "stock" in name && name.stock === lost.stock)?.lot.massG ?? 0;
        const isLater = (batch: number): boolean => {
          const first = outcome.plan.batches[batch]?.sittings[0] as number;
          return (problem.sittings[first]?.day as number) >= today;
        };
        const usedG = outcome.plan.uses
          .filter(({ lot, batch }) => "stock" in lot && lot.stock === lost.stock && isLater(batch))
          .reduce((sum, { massG }) => sum + massG, 0);
        expect(usedG).toBeLessThanOrEqual(left + 1e-3);
      }
    });
  });

  it("names a price of keeping that is never negative and is what the cheaper plan saves", () => {
    forChanges(({ changed }) => {
      const outcome = replan(changed, { judge: checkPlan, moves: MOVES, wideMoves: 2 * MOVES });
      if (outcome.kind !== "planned") return;
      const { priceMinor, cheaper } = priceKeeping(changed, outcome.plan, {
        judge: checkPlan,
        moves: MOVES,
      });
      expect(priceMinor).toBeGreaterThanOrEqual(0);
      if (cheaper === undefined) return expect(priceMinor).toBe(0);
      const verdict = checkPlan(changed.problem, cheaper);
      expect(verdict.faults).toEqual([]);
      expect(outcome.moneyMinor - verdict.money.totalMinor).toBeCloseTo(priceMinor, 6);
    }, 30);
  });

  it("keeps a plan that a change only takes something from, where the plan does not need it", () => {
    forChanges(({ problem, plan, changes, today }) => {
      const used = new Set(plan.batches.map(({ dish }) => dish));
      const dish = problem.dishes.findIndex((_, at) => !used.has(at));
      if (dish < 0 || changes.length === 0) return;
      const changed = changeProblem(problem, plan, [{ kind: "refuse", dish }], { today });
      if (!changed.ok) throw new Error("a dish could not be refused");
      const outcome = replan(changed.value, { judge: checkPlan, wideMoves: 20_000 });
      expect(outcome).toMatchObject({ kind: "planned", kept: true, plan });
    }, 30);
  });
});
