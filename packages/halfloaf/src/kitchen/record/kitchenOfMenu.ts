import { changeWeek } from "../changeWeek/changeWeek.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
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
 * that fits is taken, or the latest where none does. Packs that came to the kitchen since are there too. Throws where the
 * menu is not of these rows.
 */
export function kitchenOfMenu(
  menu: AcceptedMenu,
  menus: readonly AcceptedMenu[],
  rows: RecordRows,
  tables: Tables,
): Kitchen {
  const { week } = menu;
  const same = menus.filter((one) => one.week.from === week.from && one.week.days === week.days).reverse();
  const kitchens = same.flatMap((one) => kitchenWhen(one, rows, tables) ?? []);
  const fitting = kitchens.find((kitchen) => changeWeek(kitchen, tables, week, []).ok);
  const taken = fitting ?? kitchens[0];
  if (taken === undefined) throw new RangeError(`a week was accepted in no kitchen: ${menu.event}`);
  return taken;
}

/** The kitchen as it stood for a week when it was accepted: what was written down before. */
function kitchenWhen(
  { event, week }: AcceptedMenu,
  { events, edits }: RecordRows,
  { foods }: Tables,
): Kitchen | undefined {
  const written = events.find(({ id }) => id === event);
  if (written === undefined) return undefined;
  const log = new EditLog();
  log.add(edits.filter((edit) => compareWritten(edit, written) < 0));
  const then = log.kitchen();
  if (!then.ok) return undefined;
  const earlier = events.filter((each) => compareWritten(each, written) < 0);
  const kitchen = toKitchen(then.value.kitchen, new RecordLedger(foods, earlier).state, foods, week.from);
  return { ...kitchen, packs: [...kitchen.packs, ...packsSince(kitchen, edits)] };
}

function packsSince({ packs }: Kitchen, edits: readonly Edit[]): Kitchen["packs"] {
  const log = new EditLog();
  log.add(edits);
  const now = log.kitchen();
  const known = new Set(packs.map(({ id }) => id));
  return now.ok ? now.value.kitchen.packs.filter(({ id }) => !known.has(id)) : [];
}
