import { kitchenChanges, type WeekChange, type WeekPlan } from "halfloaf/kitchen";
import { kitchenOfMenu, menuOn, weekChanges } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { OpenKitchen } from "../input/openKitchen.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoWeekThen } from "../words/keepFaultWords.ts";
import { openKeep } from "./openKeep.ts";
import { closeAfter } from "./runKeep.ts";

/** The week that rules a day, the kitchen as it was when the week was planned, and what came out otherwise since, its limits too. */
export interface AcceptedWeek {
  readonly week: WeekPlan;
  readonly opened: OpenKitchen;
  readonly changes: readonly WeekChange[];
}

/** Opens a kept kitchen and finds the accepted week of a day. */
export async function openAccepted(folder: string, today: CivilDate, terminal: Terminal): Promise<Found<AcceptedWeek>> {
  const opened = await openKeep({ kitchen: folder, on: today, json: false }, terminal);
  if (!opened.ok) return opened;
  return closeAfter(opened.value, ({ kept, state, tables, edited }) => {
    const menu = menuOn(state, today);
    if (menu === undefined) return refuse(tellNoWeekThen(today, "name a week's file"));
    const rows = { events: kept.events.events, edits: kept.edits.all() };
    const kitchen = kitchenOfMenu(menu, state.menus, rows, tables);
    const changes = [...weekChanges(state, menu.week, today), ...kitchenChanges(kitchen, edited)];
    return { ok: true, value: { week: menu.week, opened: { name: edited.name, kitchen, tables }, changes } };
  });
}
