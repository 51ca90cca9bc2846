import { expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import { kitchenChanges } from "../changeWeek/kitchenChanges.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import type { Kitchen } from "../kitchen.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { editsBetween, toThings } from "./edit.ts";
import { kitchenOfMenu } from "./kitchenOfMenu.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { menuOn } from "./menuOn.ts";
import { Pen, penOf } from "./Pen.ts";
import { fromKitchen } from "./parseRecord.ts";
import { RecordLedger } from "./RecordLedger.ts";
import type { AcceptedMenu } from "./recordState.ts";

const { kitchen, week } = planAccepted();
const { kitchen: first, events: before } = fromKitchen(kitchen);
const today = addDays(week.from, 2);
const LATER_MS = Date.UTC(2100, 0, 1);
/** Money, ways and minutes enough for any menu. */
const roomy: EditedKitchen = {
  ...first,
  limits: { ...first.limits, budgetMinor: 50_000, tripsPerWeek: 14, handsOnMinutes: 300, energyTolerancePct: 20 },
};
const [one] = first.eaters as [Kitchen["eaters"][number]];

const write = (atMs: number): Pen => new Pen({ device: "phone", nowMs: atMs }, atMs, undefined);

/** What is left of a week, planned again in another kitchen than it is read in. */
function follow(taken: WeekPlan, then: Kitchen, now: EditedKitchen): WeekPlan {
  const changed = changeWeek(then, tables, taken, kitchenChanges(then, now), today);
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
  const outcome = replan(changed.value.week, { judge: checkPlan, moves: 1500, wideMoves: 0, farMoves: 30_000 });
  if (outcome.kind !== "planned") throw new Error("no menu was found");
  const { plan, moves, moneyMinor } = outcome;
  const written = writeWeek(then, tables, changed.value, plan, { seed: 1, moves, moneyMinor });
  return JSON.parse(JSON.stringify(written));
}

test.each<[string, EditedKitchen]>([
  ["a sitting", { ...roomy, sittings: roomy.sittings.filter(({ kind }) => kind !== "evening") }],
  ["what is eaten", { ...roomy, eaters: roomy.eaters.map((eater) => ({ ...eater, diet: "vegetarian" as const })) }],
  [
    "an eater",
    {
      ...roomy,
      eaters: [one],
      sittings: roomy.sittings.flatMap((sitting) =>
        sitting.eaters.includes(one.id) ? [{ ...sitting, eaters: [one.id] }] : [],
      ),
    },
  ],
  [
    "appliances",
    {
      ...roomy,
      kit: { ...roomy.kit, oven: false, microwave: false, blender: false },
    },
  ],
])("a week that followed a kitchen without %s is read again, stays as it is, and follows the way back", (_, now) => {
  const settled = [...toThings(first)].map(([thing, set], at) =>
    write(at + 1).write({ kind: "edited", thing, ...set }),
  );
  const edits = [...settled, ...editsBetween(first, now).map((body, at) => write(LATER_MS + 10 + at).write(body))];
  const accepted = write(LATER_MS).write({ kind: "menu-accepted", on: week.from, week });
  const menus: AcceptedMenu[] = [{ event: accepted.id, on: week.from, week }];
  const events = [...before, accepted];
  const then = kitchenOfMenu(menus[0] as AcceptedMenu, menus, { events, edits }, tables);
  const followed = follow(week, then, now);
  const again = write(LATER_MS + 1000).write({ kind: "menu-accepted", on: today, week: followed });
  const menu: AcceptedMenu = { event: again.id, on: today, week: followed };
  const read = kitchenOfMenu(menu, [...menus, menu], { events: [...events, again], edits }, tables);
  const dishes = ({ sittings }: WeekPlan): string[] => sittings.map(({ dish }) => dish);
  expect(dishes(follow(followed, read, now))).toEqual(dishes(followed));
  expect(follow(followed, read, roomy).sittings.length).toBe(followed.sittings.length);
});

test("a week accepted again after some of its first day was cooked fits the kitchen that had all it begins with", () => {
  const salt = kitchen.stores.find(({ food }) => food === "salt");
  if (salt === undefined) throw new Error("no salt");
  const ledger = new RecordLedger(tables.foods, before);
  const pen = penOf(ledger, { device: "phone", nowMs: 9 });
  const on = week.from;
  ledger.add([pen.write({ kind: "menu-accepted", on, week })]);
  ledger.add([pen.write({ kind: "used", on, lot: salt.id, massG: salt.massG / 2 })]);
  ledger.add([pen.write({ kind: "menu-accepted", on, week })]);
  const menu = menuOn(ledger.state, on);
  if (menu === undefined || menu === ledger.state.menus[0]) throw new Error("the later week does not rule");
  const edits = editsBetween(undefined, first).map((edit, at) => ({
    id: `setter-${at + 1}`,
    atMs: 0,
    tick: at,
    ...edit,
  }));
  const then = kitchenOfMenu(menu, ledger.state.menus, { events: ledger.events, edits }, tables);
  expect(then.stores.find(({ id }) => id === salt.id)?.massG).toBe(salt.massG);
});
