import { MASS_TOLERANCE_G } from "../../stores/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { compareWritten } from "./compareEvents.ts";
import { EditLog } from "./EditLog.ts";
import type { Edit } from "./edit.ts";
import type { RecordEvent } from "./event.ts";
import { RecordLedger } from "./RecordLedger.ts";
import type { AcceptedMenu } from "./recordState.ts";
import { toKitchen } from "./toKitchen.ts";

/** All rows of a kitchen's record, in any order. */
export interface RecordRows {
  readonly events: readonly RecordEvent[];
  readonly edits: readonly Edit[];
}

/**
 * The kitchen that an accepted week was planned with. A week that was planned again still holds all of its days, so it fits
 * the kitchen as it was when the first week of these days was accepted: of the accepted `menus` of the same days the latest
 * that fits is taken, of two that do one that has as much in the stores as the week begins with, or the latest where none does. Packs that came to the kitchen since are there too. Throws where the
 * menu is not of these rows.
 */
export function kitchenOfMenu(
  menu: AcceptedMenu,
  menus: readonly AcceptedMenu[],
  rows: RecordRows,
  tables: Tables,
): Kitchen {
  return kitchensOfMenus([menu], menus, rows, tables).get(menu) as Kitchen;
}

/** The same for several weeks at once: what was written down is gone through once for all of them. */
export function kitchensOfMenus(
  wanted: readonly AcceptedMenu[],
  menus: readonly AcceptedMenu[],
  rows: RecordRows,
  tables: Tables,
): ReadonlyMap<AcceptedMenu, Kitchen> {
  const isOfSameDays = (a: AcceptedMenu, b: AcceptedMenu): boolean =>
    a.week.from === b.week.from && a.week.days === b.week.days;
  const asked = menus.filter((one) => wanted.some((each) => isOfSameDays(each, one)));
  const kitchens = kitchensWhen(asked, rows, tables);
  return new Map(
    wanted.map((menu) => {
      const same = menus.filter((one) => isOfSameDays(one, menu)).reverse();
      const known = same.flatMap((one) => kitchens.get(one) ?? []);
      const isFitting = (kitchen: Kitchen): boolean => changeWeek(kitchen, tables, menu.week, []).ok;
      const whole = known.filter((kitchen) => hasStoresOf(menu.week, kitchen));
      // Where there is but one, it is taken whether or not it fits, and that need not be found out.
      const taken = known.length > 1 ? (whole.find(isFitting) ?? known.find(isFitting)) : undefined;
      const kitchen = taken ?? known[0];
      if (kitchen === undefined) throw new RangeError(`a week was accepted in no kitchen: ${menu.event}`);
      return [menu, kitchen];
    }),
  );
}

/** True where of each lot that a week begins with there is all that it begins with: nothing of its days was cooked of it yet. */
function hasStoresOf({ lots, besides = [] }: WeekPlan, { stores }: Kitchen): boolean {
  const came = new Set(besides.map(({ stock }) => stock.id));
  const there = new Map(stores.map(({ id, massG }) => [id, massG]));
  return lots.every(({ id, from, massG }) => {
    const hereG = there.get(id);
    return from !== "stores" || came.has(id) || hereG === undefined || hereG >= massG - MASS_TOLERANCE_G;
  });
}

/** The kitchen as it stood for each week when it was accepted: what was written down before. */
function kitchensWhen(
  menus: readonly AcceptedMenu[],
  { events, edits }: RecordRows,
  { foods }: Tables,
): Map<AcceptedMenu, Kitchen> {
  const inOrder = [...events].sort(compareWritten);
  const places = new Map(inOrder.map(({ id }, at) => [id, at]));
  const placed = menus.flatMap((menu) => {
    const at = places.get(menu.event);
    return at === undefined ? [] : [{ menu, at }];
  });
  const kitchens = new Map<AcceptedMenu, Kitchen>();
  const ledger = new RecordLedger(foods);
  let taken = 0;
  for (const { menu, at } of placed.sort((a, b) => a.at - b.at)) {
    ledger.add(inOrder.slice(taken, at));
    taken = at;
    const written = inOrder[at] as RecordEvent;
    const log = new EditLog();
    log.add(edits.filter((edit) => compareWritten(edit, written) < 0));
    const then = log.kitchen();
    if (!then.ok) continue;
    const kitchen = toKitchen(then.value.kitchen, ledger.state, foods, menu.week.from);
    kitchens.set(menu, { ...kitchen, packs: [...kitchen.packs, ...packsSince(kitchen, edits)] });
  }
  return kitchens;
}

function packsSince({ packs }: Kitchen, edits: readonly Edit[]): Kitchen["packs"] {
  const log = new EditLog();
  log.add(edits);
  const now = log.kitchen();
  const known = new Set(packs.map(({ id }) => id));
  return now.ok ? now.value.kitchen.packs.filter(({ id }) => !known.has(id)) : [];
}
