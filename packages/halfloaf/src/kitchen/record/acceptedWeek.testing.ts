import { MenuSearch } from "../../menu/index.ts";
import { readDemoKitchens, readStarterTables } from "../kitchen.testing.ts";
import type { Kitchen } from "../kitchen.ts";
import { toMenuProblem } from "../toMenuProblem.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { type EventBody, penOf } from "./Pen.ts";
import { fromKitchen } from "./parseRecord.ts";
import { RecordLedger } from "./RecordLedger.ts";
import type { RecordState } from "./recordState.ts";

/** The starter tables. */
export const tables = readStarterTables();

/** A demo kitchen with a week that was accepted on its first day. */
export interface Accepted {
  readonly kitchen: Kitchen;
  readonly week: WeekPlan;
  /** The record with what happened since. */
  readonly stateOf: (...bodies: readonly EventBody[]) => RecordState;
}

/** Plans the first week of a demo kitchen in a few moves and accepts it, as its file has it. */
export function planAccepted(): Accepted {
  const kitchen = readDemoKitchens().find(({ name }) => name === "port-ansel")?.kitchen as Kitchen;
  const stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 7);
  const search = new MenuSearch(stated.problem, 1, { expectedMoves: 6000 });
  while (search.advance().moves < 6000);
  const menu = search.best() ?? search.leastBroken();
  if (menu === undefined) throw new Error("no menu");
  const found = toWeekPlan(kitchen, tables, stated, menu, { seed: 1, moves: 6000, moneyMinor: 0 });
  const week: WeekPlan = JSON.parse(JSON.stringify(found));
  const stateOf = (...bodies: readonly EventBody[]): RecordState => {
    const ledger = new RecordLedger(tables.foods, fromKitchen(kitchen).events);
    const pen = penOf(ledger, { device: "phone", nowMs: 9 });
    ledger.add([pen.write({ kind: "menu-accepted", on: week.from, week }), ...bodies.map((body) => pen.write(body))]);
    return ledger.state;
  };
  return { kitchen, week, stateOf };
}
