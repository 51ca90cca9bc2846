import { SITTING_KINDS } from "../../dish/index.ts";
import type { FoodTable } from "../../food/index.ts";
import type { WeekPlan } from "../../kitchen/index.ts";
import { addDays, daysBetween } from "../../quantity/index.ts";
import { type FoodKind, foodKindOf } from "./foodKindOf.ts";

/** Sizes of the picture in units of its own; a day is as wide as all its stations. */
export interface RibbonSizes {
  readonly station: number;
  /** Height of one lane, its label within. */
  readonly lane: number;
  /** Thickness of a ribbon that is a whole pack. */
  readonly pack: number;
  /** Least length of a ribbon, so that its label can be read. */
  readonly label: number;
}

export const RIBBON_SIZES: RibbonSizes = { station: 64, lane: 44, pack: 20, label: 128 };

/** One sitting of the week in the picture. */
export interface Station {
  readonly x: number;
  readonly day: number;
  readonly kind: WeekPlan["sittings"][number]["kind"];
  /** Position in the week's sittings. */
  readonly sitting: number;
}

/** So much of a pack that goes into one cooking. */
export interface Bead {
  readonly x: number;
  /** Position in the week's batches. */
  readonly batch: number;
  readonly massG: number;
  readonly costMinor: number;
}

/** A stretch over which so much of the pack, as a share of all of it, is left. */
export interface Stretch {
  readonly fromX: number;
  readonly toX: number;
  readonly share: number;
}

/** One pack from the day it comes to the plate that finishes it, or to what becomes of its rest. */
export interface Ribbon {
  readonly lot: string;
  readonly food: string;
  readonly kind: FoodKind;
  readonly lane: number;
  readonly fromX: number;
  readonly toX: number;
  readonly stretches: readonly Stretch[];
  readonly beads: readonly Bead[];
  /** Where the pack is opened; absent where it never is. */
  readonly openedX?: number;
  /** Where its last day ends; absent where that is unknown or after the days of the picture. */
  readonly lastX?: number;
  readonly end: "finished" | "carried" | "wasted";
  readonly massG: number;
  /** What is left or wasted at the end. */
  readonly restG: number;
}

/** The pack ribbons of a week, laid out: days across, one lane below the other. */
export interface RibbonPicture {
  readonly width: number;
  readonly days: readonly { readonly date: string; readonly x: number; readonly width: number }[];
  readonly stations: readonly Station[];
  readonly ribbons: readonly Ribbon[];
  readonly lanes: number;
  /** Packs that last far beyond these days and of which little is used, such as spices: no ribbon, in the table alone. */
  readonly shelf: readonly Ribbon[];
}

/** A pack of which less than this share is used, and which is carried over, stands on the shelf. */
const SHELF_SHARE = 0.2;

/**
 * Lays out the packs of a week that feed a plate or go to waste; what lies in the stores all week untouched is left out.
 * Ribbons that do not meet share a lane, those that begin first stand first. A pack that is used in one batch several
 * times has one bead for it.
 */
export function layRibbons(week: WeekPlan, foods: FoodTable, sizes: RibbonSizes = RIBBON_SIZES): RibbonPicture {
  const places = placesOf(week);
  const dayWidth = Math.max(1, places.count) * sizes.station;
  const stations = week.sittings.map(({ date, kind }, sitting): Station => {
    const day = daysBetween(week.from, date);
    return { x: day * dayWidth + ((places.of[sitting] as number) + 0.5) * sizes.station, day, kind, sitting };
  });
  const batchXs = week.batches.map((_, batch) => {
    const first = week.sittings.findIndex((sitting) => sitting.batch === batch);
    return stations[first]?.x ?? 0;
  });
  const scale = { width: week.days * dayWidth, dayWidth, batchXs };
  const all = week.lots
    .filter(({ usedG, wastedG }) => usedG > 0 || wastedG > 0)
    .map((lot) => layLot(week, lot, foods, scale))
    .sort((a, b) => a.fromX - b.fromX || a.toX - b.toX || (a.lot < b.lot ? -1 : 1));
  const isShelf = ({ end, massG, restG, lastX }: Omit<Ribbon, "lane">) =>
    end === "carried" && lastX === undefined && 1 - restG / massG < SHELF_SHARE;
  const ribbons = giveLanes(
    all.filter((ribbon) => !isShelf(ribbon)),
    sizes.label,
  );
  return {
    width: scale.width,
    days: Array.from({ length: week.days }, (_, day) => ({
      date: addDays(week.from, day),
      x: day * dayWidth,
      width: dayWidth,
    })),
    stations,
    ribbons,
    lanes: ribbons.reduce((most, { lane }) => Math.max(most, lane + 1), 0),
    shelf: all.filter(isShelf).map((ribbon) => ({ ...ribbon, lane: 0 })),
  };
}

/** The place of each sitting within its day: kinds in their order, several of one kind side by side. */
function placesOf({ sittings }: WeekPlan): { readonly of: readonly number[]; readonly count: number } {
  const most = SITTING_KINDS.map((kind) => {
    const perDay = new Map<string, number>();
    for (const each of sittings) if (each.kind === kind) perDay.set(each.date, (perDay.get(each.date) ?? 0) + 1);
    return Math.max(0, ...perDay.values());
  });
  const starts = most.map((_, at) => most.slice(0, at).reduce((sum, count) => sum + count, 0));
  const seen = new Map<string, number>();
  const of = sittings.map(({ date, kind }) => {
    const before = seen.get(`${date} ${kind}`) ?? 0;
    seen.set(`${date} ${kind}`, before + 1);
    return (starts[SITTING_KINDS.indexOf(kind)] as number) + before;
  });
  return { of, count: most.reduce((sum, count) => sum + count, 0) };
}

interface Scale {
  readonly width: number;
  readonly dayWidth: number;
  /** Where each batch of the week is eaten first. */
  readonly batchXs: readonly number[];
}

type LotOfWeek = WeekPlan["lots"][number];

function layLot(week: WeekPlan, lot: LotOfWeek, foods: FoodTable, scale: Scale): Omit<Ribbon, "lane"> {
  const trip = lot.from === "bought" ? tripOf(week, lot) : undefined;
  const fromX = trip === undefined ? 0 : daysBetween(week.from, trip) * scale.dayWidth;
  const beads = beadsOf(week, lot, scale);
  const dayEndX = (date: string) => (daysBetween(week.from, date) + 1) * scale.dayWidth;
  const lastX = lot.keepsUntil === undefined ? undefined : dayEndX(lot.keepsUntil);
  const end = lot.wastedG > 0 ? "wasted" : lot.leftG > 0 ? "carried" : "finished";
  const toX =
    end === "finished"
      ? (beads.at(-1)?.x ?? fromX)
      : end === "wasted"
        ? Math.min(scale.width, Math.max(lastX ?? scale.width, beads.at(-1)?.x ?? fromX))
        : scale.width;
  const food = foods.get(lot.food);
  return {
    lot: lot.id,
    food: lot.food,
    kind: food === undefined ? "other" : foodKindOf(food),
    fromX,
    toX,
    stretches: stretchesOf(lot, beads, fromX, toX),
    beads,
    ...(lot.openedOn !== undefined && { openedX: openedXOf(beads, dayEndX(lot.openedOn), scale.dayWidth, fromX) }),
    ...(lastX !== undefined && lastX > fromX && lastX <= (end === "finished" ? toX : scale.width) && { lastX }),
    end,
    massG: lot.massG,
    restG: lot.wastedG + lot.leftG,
  };
}

/** A pack is opened at its first use of the day on which it is. */
function openedXOf(beads: readonly Bead[], dayEndX: number, dayWidth: number, fromX: number): number {
  return beads.find(({ x }) => x > dayEndX - dayWidth && x < dayEndX)?.x ?? Math.max(fromX, dayEndX - dayWidth);
}

/** The day of the trip that brought a lot, which the lot's name has in it. */
function tripOf({ trips, from }: WeekPlan, { id }: LotOfWeek): string | undefined {
  return trips.find(({ date, lines }) =>
    lines.some(({ pack }) => id.startsWith(`${pack}-day-${daysBetween(from, date) + 1}-`)),
  )?.date;
}

function beadsOf({ batches }: WeekPlan, { id }: LotOfWeek, { batchXs }: Scale): Bead[] {
  return batches
    .flatMap(({ uses }, batch): Bead[] => {
      const own = uses.filter(({ lot }) => lot === id);
      if (own.length === 0) return [];
      const massG = own.reduce((sum, use) => sum + use.massG, 0);
      return [
        { x: batchXs[batch] as number, batch, massG, costMinor: own.reduce((sum, use) => sum + use.costMinor, 0) },
      ];
    })
    .sort((a, b) => a.x - b.x || a.batch - b.batch);
}

function stretchesOf({ massG }: LotOfWeek, beads: readonly Bead[], fromX: number, toX: number): Stretch[] {
  const stretches: Stretch[] = [];
  let [x, leftG] = [fromX, massG];
  for (const bead of beads) {
    if (bead.x > x) stretches.push({ fromX: x, toX: bead.x, share: leftG / massG });
    x = bead.x;
    leftG = Math.max(0, leftG - bead.massG);
  }
  if (toX > x && leftG > 0) stretches.push({ fromX: x, toX, share: leftG / massG });
  return stretches;
}

/** Puts each ribbon into the first lane in which it meets no other and its label has room. */
function giveLanes(ribbons: readonly Omit<Ribbon, "lane">[], label: number): Ribbon[] {
  const ends: number[] = [];
  return ribbons.map((ribbon) => {
    const found = ends.findIndex((end) => end <= ribbon.fromX);
    const lane = found < 0 ? ends.length : found;
    ends[lane] = Math.max(ribbon.toX + 12, ribbon.fromX + label);
    return { ...ribbon, lane };
  });
}
