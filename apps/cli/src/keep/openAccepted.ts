import type { KeptKitchen } from "@halfloaf/keep";
import { changeWeek, type Kitchen, type Tables, type WeekChange, type WeekPlan } from "halfloaf/kitchen";
import {
  type AcceptedMenu,
  compareWritten,
  EditLog,
  menuOn,
  RecordLedger,
  toKitchen,
  weekChanges,
} from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { OpenKitchen } from "../input/openKitchen.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoWeekThen } from "../words/keepFaultWords.ts";
import { openKeep } from "./openKeep.ts";
import { closeAfter } from "./runKeep.ts";

/** The week that rules a day, the kitchen as it was when the week was planned, and what came out otherwise since. */
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
    if (menu === undefined) return refuse(tellNoWeekThen(today));
    const kitchen = kitchenOf(menu, state.menus, kept, tables);
    const changes = weekChanges(state, menu.week, today);
    return { ok: true, value: { week: menu.week, opened: { name: edited.name, kitchen, tables }, changes } };
  });
}

/**
 * The kitchen that a week was planned with. A mended week still holds all of its days, so it fits the kitchen as it was
 * when the first week of these days was accepted: the latest one that fits is taken, or the latest where none does.
 */
function kitchenOf(menu: AcceptedMenu, menus: readonly AcceptedMenu[], kept: KeptKitchen, tables: Tables): Kitchen {
  const { week } = menu;
  const same = menus.filter((one) => one.week.from === week.from && one.week.days === week.days).reverse();
  const kitchens = same.flatMap((one) => kitchenWhen(one, kept, tables) ?? []);
  const fitting = kitchens.find((kitchen) => changeWeek(kitchen, tables, week, []).ok);
  const taken = fitting ?? kitchens[0];
  if (taken === undefined) throw new Error(`a week was accepted in no kitchen: ${menu.event}`);
  return taken;
}

/** The kitchen as it stood for a week when it was accepted: what was written down before. */
function kitchenWhen(
  { event, week }: AcceptedMenu,
  { events, edits }: KeptKitchen,
  { foods }: Tables,
): Kitchen | undefined {
  const written = events.find(event);
  if (written === undefined) return undefined;
  const log = new EditLog();
  log.add(edits.all().filter((edit) => compareWritten(edit, written) < 0));
  const then = log.kitchen();
  const earlier = events.events.filter((each) => compareWritten(each, written) < 0);
  return then.ok ? toKitchen(then.value.kitchen, new RecordLedger(foods, earlier).state, foods, week.from) : undefined;
}
