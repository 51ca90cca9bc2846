import type { FoodFacts } from "../food/index.ts";
import { addDays, type CivilDate } from "../quantity/index.ts";
import type { Lot } from "./lot.ts";

/** The last day a lot may be eaten and what sets it, or that the food is not known to keep where the lot is. */
export type KeepsUntil =
  | { readonly ok: true; readonly on: CivilDate; readonly because: KeepingLimit }
  | { readonly ok: false; readonly reason: "not-kept-there" };

/** What may set the last day of a lot. */
export type KeepingLimit = "unopened-life" | "opened-life" | "use-by" | "best-before" | "thawed";

/** Whole days after thawing. **Source**: UK Food Standards Agency, within 24 hours of defrosting (from memory). */
export const THAWED_DAYS = 1;

/** What of a lot decides how long it keeps. */
type LotDays = Pick<
  Lot,
  "place" | "boughtOn" | "placedOn" | "openedOn" | "thawedOn" | "unopenedUntil" | "useBy" | "bestBefore"
>;

/**
 * The last day a lot may be eaten: the earliest of its unopened life from the day it came to its place, what was left of
 * that life where it was before, the dates on its label and, once opened, its opened life.
 *
 * For what was frozen at home neither the label nor its life before counts while it is frozen. What was thawed is eaten
 * within a day, whatever it was before. A place the food table does not know for the food, opened or not as the lot is, is
 * no place to keep it. The label, when it says less, and the kitchen's nose come before any figure here.
 */
export function keepsUntil(lot: LotDays, food: Pick<FoodFacts, "keeping">): KeepsUntil {
  const unopened = unopenedLife(lot, food);
  const opened = openedLife(lot, food);
  const ruling = lot.openedOn === undefined ? unopened : opened;
  if (ruling === undefined) return { ok: false, reason: "not-kept-there" };
  if (lot.thawedOn !== undefined && lot.place !== "freezer") {
    return { ok: true, on: addDays(lot.thawedOn, THAWED_DAYS), because: "thawed" };
  }
  const frozenAtHome = lot.place === "freezer" && lot.placedOn !== undefined;
  const before: Limit[] = [
    { on: lot.useBy, because: "use-by" },
    { on: lot.bestBefore, because: "best-before" },
    { on: lot.unopenedUntil, because: "unopened-life" },
  ];
  const lives: Limit[] = [
    { on: unopened, because: "unopened-life" },
    { on: opened, because: "opened-life" },
  ];
  const limits = [...(frozenAtHome ? [] : before), ...lives].filter((limit): limit is Known => limit.on !== undefined);
  const earliest = limits.reduce((first, limit) => (limit.on < first.on ? limit : first));
  return { ok: true, ...earliest };
}

interface Limit {
  readonly on: CivilDate | undefined;
  readonly because: KeepingLimit;
}
type Known = Limit & { readonly on: CivilDate };

/** The last day of the unopened life in the place where the lot is; undefined where the table knows none. */
export function unopenedLife(
  { place, boughtOn, placedOn }: LotDays,
  { keeping }: Pick<FoodFacts, "keeping">,
): CivilDate | undefined {
  const days = keeping.unopened[place];
  return days === undefined ? undefined : addDays(placedOn ?? boughtOn, days);
}

/** In the freezer an opened lot starts anew on the day it came there. */
function openedLife(
  { place, placedOn, openedOn }: LotDays,
  { keeping }: Pick<FoodFacts, "keeping">,
): CivilDate | undefined {
  const days = keeping.opened[place];
  if (days === undefined || openedOn === undefined) return undefined;
  const isFrozenSince = place === "freezer" && placedOn !== undefined && placedOn > openedOn;
  return addDays(isFrozenSince ? placedOn : openedOn, days);
}

/** True where a lot is known to have gone off before a day; a lot of which that is not known is not said to. */
export function isGoneOff(keeps: KeepsUntil, on: CivilDate): boolean {
  return keeps.ok && keeps.on < on;
}
