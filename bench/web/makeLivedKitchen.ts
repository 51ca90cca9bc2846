import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { startNodePlanner } from "@halfloaf/engine/node";
import { BACKUP_VERSION, parseBackup } from "@halfloaf/keep";
import {
  type Kitchen,
  parseKitchen,
  parseTables,
  type Tables,
  toMenuProblem,
  toWeekPlan,
  type WeekPlan,
} from "halfloaf/kitchen";
import { type EventBody, Pen, type RecordEvent } from "halfloaf/kitchen/record";
import { massOfPack } from "halfloaf/price";
import {
  addDays,
  type CivilDate,
  createRandomSource,
  daysBetween,
  moveDates,
  type RandomSource,
} from "halfloaf/quantity";

/** What the device of the lived kitchen is called. */
export const LIVED_DEVICE = "bench";

const DEMO = "one-ring";
const SITTINGS = ["morning", "midday", "evening"] as const;
const FOODS_AT_HAND = 24;
const WEEKS_PLANNED = 52;
const MOVES = 40_000;

/** A food of the kitchen, with the pack it is bought in and the lot of it that is in use. */
interface Shelf {
  readonly food: string;
  readonly pack: string;
  readonly massG: number;
  readonly priceMinor: number;
  lot?: string;
  leftG: number;
}

/**
 * A backup of a demo kitchen that has been lived in up to the day before: so many events of shopping, cooking, eating and
 * throwing away, three cookings a day, the last 52 weeks planned. The same for the same day.
 */
export async function makeLivedKitchen(count: number, day: CivilDate): Promise<string> {
  const content = loadDemoKitchens().find(({ name }) => name === DEMO)?.content as { startsOn: CivilDate };
  const moved = moveDates(content, daysBetween(content.startsOn, day));
  const [kitchen, tables] = [parseKitchen(moved), parseTables(loadStarterTables())];
  const rows = parseBackup(moved);
  if (!kitchen.ok || !tables.ok || !rows.ok) throw new Error("the demo kitchen is none");
  const week = await planWeek(kitchen.value, tables.value, day);
  const events = liveOn(kitchen.value, tables.value, week, count, day);
  const backup = {
    format: "halfloaf-backup",
    version: BACKUP_VERSION,
    writtenAtMs: 0,
    rows: [...rows.value, ...events],
  };
  return JSON.stringify(backup);
}

async function planWeek(kitchen: Kitchen, tables: Tables, day: CivilDate): Promise<WeekPlan> {
  const stated = toMenuProblem(kitchen, tables, day, 7);
  const planner = startNodePlanner();
  try {
    const outcome = await planner.plan({ problem: stated.problem, seed: 1, moves: MOVES }).outcome;
    if (!("plan" in outcome) || outcome.plan === undefined) throw new Error(`no plan: ${outcome.status}`);
    return toWeekPlan(kitchen, tables, stated, outcome.plan, { seed: 1, moves: MOVES, moneyMinor: 0 });
  } finally {
    planner.dispose();
  }
}

function liveOn(kitchen: Kitchen, tables: Tables, week: WeekPlan, count: number, day: CivilDate): RecordEvent[] {
  const random = createRandomSource(1);
  const days: EventBody[][][] = [];
  const shelves = stockShelves(kitchen, tables);
  // Days are lived first to last, so that how many there must be is found by living them.
  let events = 0;
  for (; events < count; ) {
    const acts = liveDay(kitchen, tables, shelves, random, days.length);
    events += acts.flat().length;
    days.push(acts);
  }
  const first = addDays(day, -days.length);
  const writer = { device: `${LIVED_DEVICE}-lived`, nowMs: 1, by: kitchen.eaters[0]?.id ?? "" };
  const rows: RecordEvent[] = [];
  for (const [at, acts] of days.entries()) {
    const on = addDays(first, at);
    const left = daysBetween(on, day);
    const isPlanned = left % 7 === 0 && left <= WEEKS_PLANNED * 7;
    const planned: EventBody = { kind: "menu-accepted", on, week: moveDates(week, -left) as WeekPlan };
    for (const bodies of isPlanned ? [[planned], ...acts] : acts) {
      const pen = new Pen(writer, rows.length, rows.at(-1));
      rows.push(...bodies.map((body) => pen.write({ ...body, on })));
    }
  }
  return rows;
}

function stockShelves(kitchen: Kitchen, tables: Tables): Shelf[] {
  const shelves = new Map<string, Shelf>();
  for (const { id, food, content, priceMinor } of kitchen.packs) {
    const facts = tables.foods.get(food);
    const mass = facts && massOfPack({ content }, facts);
    if (mass?.ok && !shelves.has(food)) shelves.set(food, { food, pack: id, massG: mass.massG, priceMinor, leftG: 0 });
  }
  return [...shelves.values()].slice(0, FOODS_AT_HAND);
}

/** The acts of one day; its date is written when it is known. */
function liveDay(
  { shops, eaters }: Kitchen,
  { dishes }: Tables,
  shelves: Shelf[],
  random: RandomSource,
  number: number,
): EventBody[][] {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const on = "";
  const acts: EventBody[][] = [];
  const [shop, eater] = [shops[0], eaters[0]];
  if (shop === undefined || eater === undefined) throw new Error("a kitchen has shops and eaters");
  for (const [at, sitting] of SITTINGS.entries()) {
    const used = [pick(shelves), pick(shelves), pick(shelves)].filter(
      (shelf, place, all) => all.indexOf(shelf) === place,
    );
    for (const shelf of used.filter(({ leftG }) => leftG < 1)) {
      const { food, pack, massG, priceMinor } = shelf;
      const lot = `${food}-${number}-${at}`;
      const costMinor = priceMinor + Math.floor(random() * 20);
      acts.push([
        { kind: "bought", on, lot, food, place: "dry-store", massG, costMinor, pack, shop: shop.id },
        { kind: "price-seen", on, pack, priceMinor: costMinor, at: shop.name },
      ]);
      Object.assign(shelf, { lot, leftG: massG });
    }
    const uses = used.map((shelf) => {
      const massG = Math.min(shelf.leftG, 30 + Math.floor(random() * 150));
      shelf.leftG -= massG;
      return { lot: shelf.lot as string, massG };
    });
    const lot = `plate-${number}-${at}`;
    const portionG = uses.reduce((sum, { massG }) => sum + massG, 0);
    const dish = pick(dishes).id;
    acts.push([
      { kind: "cooked", on, lot, dish, portions: 1, portionG, keeps: { fridgeDays: 2 }, uses, sitting },
      { kind: "eaten", on, sitting, plates: [{ eater: eater.id, lot, massG: portionG }] },
    ]);
    if (random() < 0.1) acts.push([{ kind: "rated", on, dish, points: Math.floor(random() * 11) }]);
  }
  const spoilt = pick(shelves);
  if (spoilt.lot !== undefined && spoilt.leftG >= 1 && random() < 0.3) {
    acts.push([{ kind: "wasted", on, lot: spoilt.lot, massG: spoilt.leftG }]);
    spoilt.leftG = 0;
  }
  if (random() < 0.3) acts.push([{ kind: "trip", on, shop: shop.id, fareMinor: 120 }]);
  if (random() < 0.05) acts.push([{ kind: "skipped", on, sitting: "midday" }]);
  return acts;
}
