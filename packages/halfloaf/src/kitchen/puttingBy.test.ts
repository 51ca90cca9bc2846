import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep } from "../dish/dish.testing.ts";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { changeWeek } from "./changeWeek/changeWeek.ts";
import { makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { withoutEmptyBoxes } from "./puttingBy.ts";
import { readWeekPlan } from "./readWeekPlan.ts";
import { type KitchenProblem, toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const oats = makeFood("oats-rolled", {
  keeping: { unopened: { "dry-store": 9 }, opened: { "dry-store": 0 }, authority: "a table" },
  composition: { energyKj: 1500 },
});
const pot = (id: string, freezerDays?: number) =>
  makeDish({
    id,
    main: "oats-rolled",
    portions: 1,
    portionMassG: 400,
    makings: [makeMaking("oats-rolled", 100)],
    method: [makeStep("stir", 5)],
    keeps: { fridgeDays: 0, ...(freezerDays !== undefined && { freezerDays }), authority: "a table" },
    served: ["hot"],
  });
const tables = withTables(readStarterTables(), [oats], [pot("oat-pot", 60), pot("oat-bake")]);
/** What an opened pack leaves goes off the same day. */
const packs = [makePack({ content: { massG: 500 }, priceMinor: 300 })];
const kit = { ...makeKitchen().kit, freezerLitres: 20, potPortions: 5 };

function plan(over: Partial<Kitchen>, days = 2) {
  const kitchen = makeKitchen({ packs, kit, ...over });
  const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, days);
  const easy: KitchenProblem = {
    ...stated,
    problem: { ...stated.problem, profiles: [], limits: { ...stated.problem.limits, distinct: 0 } },
  };
  const search = new MenuSearch(easy.problem, 1, { expectedMoves: 6000 });
  while (search.advance().moves < 6000);
  const found = search.best();
  if (found === undefined) throw new Error("no plan was found");
  const sound: MenuPlan = found;
  expect(checkPlan(easy.problem, sound).faults).toEqual([]);
  return {
    kitchen,
    stated: easy,
    found: sound,
    week: toWeekPlan(kitchen, tables, easy, sound, { seed: 1, moves: 0, moneyMinor: 0 }),
  };
}

describe("portions cooked for later weeks", () => {
  it("fill boxes with what would else go off, at their share of the batch, and the accounts add up", () => {
    const without = plan({});
    expect(without.week.accounts.wasteMinor).toBeGreaterThan(0);
    const { week } = plan({ puttingBy: { portions: 3, least: 0, most: 2 } });
    expect(week.boxes?.length).toBe(2);
    const [box] = week.boxes as [NonNullable<typeof week.boxes>[number]];
    const batch = week.batches[box.batch];
    expect(box).toMatchObject({
      dish: "oat-pot",
      portions: 3,
      place: "freezer",
      cookedOn: "2026-03-02",
      keepsUntil: "2026-05-01",
    });
    expect(box.costMinor).toBe(Math.round(((batch?.costMinor as number) * 3) / (batch?.portions as number)));
    const plates = week.sittings
      .filter((sitting) => sitting.batch === box.batch)
      .flatMap(({ plateMinor }) => plateMinor);
    expect(plates.reduce((sum, minor) => sum + minor, box.costMinor)).toBe(batch?.costMinor);
    const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
    expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
    expect(carryOverMinor).toBeGreaterThanOrEqual(
      (week.boxes ?? []).reduce((sum, { costMinor }) => sum + costMinor, 0),
    );
    expect(week.sittings).toHaveLength(2);
  });

  it("are no more than is asked for, and no fewer", () => {
    expect(plan({ puttingBy: { portions: 3, least: 0, most: 1 } }, 7).week.boxes).toHaveLength(1);
    const dear = { worth: { ...makeKitchen().worth, minuteMinor: 500 } };
    expect(plan({ puttingBy: { portions: 1, least: 0, most: 3 }, ...dear }, 7).week.boxes).toBeUndefined();
    expect(plan({ puttingBy: { portions: 1, least: 2, most: 3 }, ...dear }, 7).week.boxes).toHaveLength(2);
  });

  it("are no more than are missing where so many are enough: whole boxes that are good, and fewer are asked for", () => {
    const asked = (there: readonly Partial<Kitchen["putBy"][number]>[], days = 7) => {
      const box = { dish: "oat-pot", portions: 2, place: "freezer", cookedOn: "2026-02-20", costMinor: 90, foods: [] };
      const putBy = there.map((one, at) => ({ id: `box-${at}`, ...box, ...one }) as Kitchen["putBy"][number]);
      const kitchen = makeKitchen({ packs, kit, putBy, puttingBy: { portions: 2, least: 2, most: 3, enough: 3 } });
      const { wishes = [] } = toMenuProblem(kitchen, tables, kitchen.startsOn, days).problem;
      return wishes.map(({ least, most, sittings }) => [least, most, sittings.length]);
    };
    expect(asked([])).toEqual([[2, 3, 7]]);
    expect(asked([{}])).toEqual([[2, 2, 7]]);
    expect(asked([{}, { portions: 3 }])).toEqual([[1, 1, 7]]);
    expect(asked([{}, {}, {}, {}])).toEqual([[0, 0, 7]]);
    // What lies there for longer than it keeps is none any more, and what is in the fridge is no box.
    expect(asked([{}, {}, { cookedOn: "2025-12-01" }])).toEqual([[1, 1, 7]]);
    expect(asked([{}, {}, { place: "fridge", keepsUntil: "2026-03-02" }])).toEqual([[1, 1, 7]]);
    // Two weeks fill no more together.
    expect(asked([], 14)).toEqual([
      [2, 3, 7],
      [1, 3, 7],
      [0, 3, 14],
    ]);
  });

  it("are only of dishes that freeze, and only where there is a freezer with room", () => {
    const refusedDishes = ["oat-pot"];
    expect(plan({ puttingBy: { portions: 3, least: 0, most: 2 }, refusedDishes }).week.boxes).toBeUndefined();
    const none = { ...kit, freezerLitres: 0 };
    expect(plan({ puttingBy: { portions: 3, least: 0, most: 2 }, kit: none }).stated.sittings).toHaveLength(2);
    const tight = { ...kit, freezerLitres: 2 };
    expect(plan({ puttingBy: { portions: 3, least: 0, most: 2 }, kit: tight }).week.boxes).toHaveLength(1);
  });

  it("read back from the file, and stay when the week changes", () => {
    const { kitchen, stated, found, week } = plan({ puttingBy: { portions: 3, least: 0, most: 1 } });
    const read = readWeekPlan(week, stated);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(withoutEmptyBoxes(stated.problem, read.value).batches).toEqual(
      withoutEmptyBoxes(stated.problem, found).batches,
    );
    expect(checkPlan(stated.problem, read.value)).toEqual(checkPlan(stated.problem, found));
    const changed = changeWeek(kitchen, tables, week, []);
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    expect(changed.value.stated.problem.sittings.map(({ portions }) => portions)).toEqual(
      stated.problem.sittings.map(({ portions }) => portions),
    );
    expect(changed.value.week.plan.batches).toEqual(read.value.batches);
  });
});
