import { describe, expect, it } from "vitest";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { changeWeek } from "./changeWeek/changeWeek.ts";
import { readDemoKitchens, readStarterTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { withStandRise } from "./standRise.ts";
import { toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const tables = readStarterTables();
const demo = readDemoKitchens()[0]?.kitchen as Kitchen;
/** Every second price is an estimate. */
const guessed: Kitchen = {
  ...demo,
  packs: demo.packs.map((pack, at) => {
    const { seen: _seen, estimate: _estimate, ...rest } = pack;
    return at % 2 === 0 ? { ...rest, estimate: true } : { ...rest, seen: { on: "2026-11-01", at: "the shelf" } };
  }),
};

function planFor(kitchen: Kitchen): { stated: ReturnType<typeof toMenuProblem>; plan: MenuPlan } {
  const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 4);
  const search = new MenuSearch(stated.problem, 1, { expectedMoves: 24_000 });
  while (search.advance().moves < 24_000);
  const plan = search.best();
  if (plan === undefined) throw new Error("no plan was found");
  return { stated, plan };
}

describe("a plan that must stand a rise of estimated prices", () => {
  it("is told what the tills would come to, from the packs of the kitchen", () => {
    const { stated, plan } = planFor(withStandRise(guessed, 10));
    expect(checkPlan(stated.problem, plan).faults).toEqual([]);
    const { accounts, trips } = toWeekPlan(guessed, tables, stated, plan, { seed: 1, moves: 0, moneyMinor: 0 });
    const lines = trips.flatMap((trip) => trip.lines);
    const byHand = lines.reduce((sum, { pack: id, count, estimate, priceMinor }) => {
      const pack = guessed.packs.find((one) => one.id === id);
      if (!estimate || pack === undefined) return sum + priceMinor;
      const up = (minor: number): number => Math.ceil((minor * 110) / 100);
      const full = pack.offer ? Math.floor(count / pack.offer.count) : 0;
      const single = count - full * (pack.offer?.count ?? 0);
      return sum + full * up(pack.offer?.priceMinor ?? 0) + single * up(pack.priceMinor);
    }, 0);
    expect(lines.some(({ estimate }) => estimate) && lines.some(({ estimate }) => !estimate)).toBe(true);
    expect(accounts.risen).toEqual({ pct: 10, tillMinor: byHand });
    expect(byHand).toBeGreaterThan(accounts.tillMinor);
    expect(checkPlan(stated.problem, plan).money.highTillMinor).toBe(byHand);
    const week = toWeekPlan(guessed, tables, stated, plan, { seed: 1, moves: 0, moneyMinor: 0 });
    const later = changeWeek(guessed, tables, week, []);
    // Packs that are bought get the prices of the file; what may rise still does.
    expect(later.ok && later.value.stated.standRisePct).toBe(10);
    expect(later.ok && checkPlan(later.value.stated.problem, later.value.week.plan).money.highTillMinor).toBe(byHand);
  });

  it("keeps its budget at the prices risen, where one that need not would not", () => {
    const free = planFor(guessed);
    const { tillMinor, tripMinor } = checkPlan(free.stated.problem, free.plan).money;
    const tight = {
      ...guessed,
      limits: { ...guessed.limits, budgetMinor: Math.ceil(((tillMinor + tripMinor) * 7) / 4) },
    };
    const { problem } = toMenuProblem(withStandRise(tight, 10), tables, guessed.startsOn, 4);
    expect(checkPlan(problem, free.plan).faults.map(({ code }) => code)).toEqual(["budget"]);
    const firm = planFor(withStandRise(tight, 10));
    const { money, faults } = checkPlan(firm.stated.problem, firm.plan);
    expect(faults).toEqual([]);
    expect(money.highTillMinor + money.tripMinor).toBeLessThanOrEqual(problem.limits.budgetMinor as number);
  });

  it("leaves a kitchen that does not ask for it as it was", () => {
    const [plain, none] = [guessed, withStandRise(guessed, 0)].map(
      (kitchen) => toMenuProblem(kitchen, tables, kitchen.startsOn, 4).problem,
    );
    expect(none).toEqual(plain);
    expect(plain?.packs.some((pack) => "highMinor" in pack)).toBe(false);
  });
});
