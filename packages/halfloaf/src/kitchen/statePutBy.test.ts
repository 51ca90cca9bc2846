import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep } from "../dish/dish.testing.ts";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { faultsOf, makeEater, makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { readWeekPlan } from "./readWeekPlan.ts";
import { toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const starter = readStarterTables();
const oats = makeFood("oats-rolled", { composition: { energyKj: 1500 } });
const nuts = makeFood("walnut", { allergens: { eu: ["nuts"], us: ["tree-nuts"] } });
const pot = makeDish({
  id: "oat-pot",
  title: "Oat pot",
  manner: "stew",
  main: "oats-rolled",
  portions: 1,
  portionMassG: 400,
  makings: [makeMaking("oats-rolled", 120), makeMaking("walnut", 10, { optional: true })],
  method: [makeStep("stir", 30)],
  keeps: { fridgeDays: 2, freezerDays: 60, authority: "a table" },
  served: ["hot"],
});
const cold = makeDish({ ...pot, id: "oat-cake", title: "Oat cake", served: ["cold"], travels: true });
const tables = withTables(starter, [oats, nuts], [pot, cold]);
const packs = [makePack({ content: { massG: 500 }, priceMinor: 100 })];
const kit = { ...makeKitchen().kit, freezerLitres: 20 };
const portions: Kitchen["putBy"][number] = {
  id: "box",
  dish: "oat-pot",
  portions: 3,
  place: "freezer",
  cookedOn: "2026-02-20",
  costMinor: 151,
  foods: [],
};

function state(over: Partial<Kitchen>, days = 3) {
  const kitchen = makeKitchen({ packs, kit, ...over });
  return { kitchen, stated: toMenuProblem(kitchen, tables, kitchen.startsOn, days) };
}

/** The plan of the days where energy plays no part. */
function planFor(stated: ReturnType<typeof toMenuProblem>): { problem: typeof stated.problem; plan: MenuPlan } {
  const problem = { ...stated.problem, profiles: [], limits: { ...stated.problem.limits, distinct: 0 } };
  const search = new MenuSearch(problem, 1, { expectedMoves: 4000 });
  while (search.advance().moves < 4000);
  const plan = search.best();
  if (plan === undefined) throw new Error("no plan was found");
  return { problem, plan };
}

function offered({ stated }: ReturnType<typeof state>): string[] {
  return stated.problem.sittings.map(({ dishes }) =>
    dishes.flatMap((at) => (stated.dishes[at]?.putBy ? [stated.dishes[at]?.dish.id] : [])).join(),
  );
}

describe("portions put by", () => {
  it("serve a sitting that has no time to cook, at what they cost, and the accounts add up", () => {
    const [sitting] = makeKitchen().sittings;
    const table = sitting as Kitchen["sittings"][number];
    const sittings = [
      { ...table, on: [1, 3] },
      { ...table, on: [2], minutes: 20 },
    ];
    // The pot is too small for two evenings.
    const { kitchen, stated } = state({ putBy: [portions], sittings, kit: { ...kit, potPortions: 1 } });
    const { problem, plan } = planFor(stated);
    expect(checkPlan(problem, plan).faults).toEqual([]);
    const week = toWeekPlan(kitchen, tables, stated, plan, { seed: 1, moves: 0, moneyMinor: 0 });
    const tuesday = week.sittings[1];
    expect(week.batches[tuesday?.batch as number]).toMatchObject({ dish: "oat-pot", putBy: "freezer" });
    const box = week.lots.find(({ id }) => id === "box");
    expect(box).toMatchObject({ from: "stores", food: "oat-pot", costMinor: 151 });
    const share = (tuesday?.portions as number) / 3;
    const used = week.batches.filter(({ putBy }) => putBy).length;
    expect(box?.usedMinor).toBe(Math.round(151 * share * used));
    expect(tuesday?.plateMinor[0]).toBeGreaterThan(0);
    const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
    expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
    expect(week.cautions.some(({ code }) => code === "put-by")).toBe(true);
    expect(week.intake[0]?.energyKj).toBeGreaterThan(0);
    const read = readWeekPlan(week, stated);
    expect(read.ok && read.value.batches).toEqual(plan.batches);
    expect(read.ok && checkPlan(problem, read.value)).toEqual(checkPlan(problem, plan));
  });

  it("are left where they are while there is time to cook for less", () => {
    const dear = state({ putBy: [{ ...portions, costMinor: 3000 }] });
    const { plan, problem } = planFor(dear.stated);
    expect(plan.batches.every(({ dish }) => dear.stated.dishes[dish]?.putBy === undefined)).toBe(true);
    expect(checkPlan(problem, plan).money.creditMinor).toBeGreaterThan(-1e-6);
  });

  it("keep as long as the dish says, and are gone after that", () => {
    const lots = (over: Partial<Kitchen["putBy"][number]>) => {
      const { stated } = state({ putBy: [{ ...portions, ...over }] });
      return [stated.problem.lots.map(({ lastDay }) => lastDay), stated.goneOff.map(({ id }) => id)];
    };
    expect(lots({})).toEqual([[50], []]);
    expect(lots({ place: "fridge", cookedOn: "2026-03-01" })).toEqual([[1], []]);
    expect(lots({ place: "fridge" })).toEqual([[], ["box"]]);
  });

  it("thaw overnight where they are not warmed, so that the first day can't have them", () => {
    expect(offered(state({ putBy: [portions] }))).toEqual(["oat-pot", "oat-pot", "oat-pot"]);
    expect(offered(state({ putBy: [{ ...portions, dish: "oat-cake" }] }))).toEqual(["", "oat-cake", "oat-cake"]);
    const fridge = { ...portions, dish: "oat-cake", place: "fridge" as const, cookedOn: "2026-03-01" };
    expect(offered(state({ putBy: [fridge] }))).toEqual(["oat-cake", "oat-cake", "oat-cake"]);
  });

  it("never come to who avoids what may be in them, optional or not", () => {
    const eaters = [makeEater("ada", { avoids: { allergens: ["nuts"], foods: [] } })];
    expect(offered(state({ eaters, putBy: [portions] }))).toEqual(["", "", ""]);
  });

  it("take their room in the freezer", () => {
    const small = state({ putBy: [{ ...portions, portions: 30 }], kit: { ...kit, freezerLitres: 10 } });
    const { problem } = small.stated;
    const nothing: MenuPlan = { batches: [], trips: [], purchases: [], uses: [] };
    const full = checkPlan(problem, nothing).faults.filter(({ code }) => code === "freezer");
    expect(full.map(({ received }) => received)).toEqual(["15 litres", "15 litres", "15 litres"]);
  });

  it("are refused where their dish is not known, does not keep, or has no room", () => {
    const faults = (over: Partial<Kitchen["putBy"][number]>, more: Partial<Kitchen> = {}) =>
      faultsOf(makeKitchen({ packs, kit, putBy: [{ ...portions, ...over }], ...more }), tables);
    expect(faults({})).toEqual([]);
    expect(faults({ dish: "rice-pot", foods: ["rice"] })).toEqual([
      "food-unknown putBy.0.foods.0",
      "dish-unknown putBy.0.dish",
    ]);
    expect(faults({}, { kit: { ...kit, freezerLitres: 0 } })).toEqual(["not-kept-there putBy.0.place"]);
    expect(faultsOf(makeKitchen({ packs, kit, putBy: [portions, portions] }), tables)).toEqual([
      "name-twice putBy.1.id",
    ]);
  });
});
