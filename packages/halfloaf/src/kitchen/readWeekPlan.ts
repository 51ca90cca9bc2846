import type { MenuPlan, PlannedBatch, Purchase, Use } from "../menu/index.ts";
import type { Issue, Parsed } from "../quantity/index.ts";
import { compareMisses, type KeptCooking, listTakenOtherwise, missOfWay } from "./keptWays.ts";
import { NOTHING_ID } from "./puttingBy.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** Collects issues; each is added where it stands in the file. */
type Report = (code: string, path: Issue["path"], expected: string, received: string) => void;

/**
 * The plan of a week's file in the indices of its kitchen's problem, stated for the same days. Where the file no
 * longer fits the kitchen (days, sittings, dishes, trips, packs, lots that are not there any more) every such place is
 * an issue with its path in the file. Whether the plan still keeps the limits is for `checkPlan` to say.
 */
export function readWeekPlan(week: WeekPlan, stated: KitchenProblem): Parsed<MenuPlan> {
  const issues: Issue[] = [];
  const report: Report = (code, path, expected, received) => issues.push({ code, path, expected, received });
  if (week.from !== stated.from) report("week-from", ["from"], stated.from, week.from);
  if (week.days !== stated.problem.days) report("week-days", ["days"], `${stated.problem.days}`, `${week.days}`);
  if (issues.length > 0) return { ok: false, issues };
  const sittings = findSittings(week, stated, report);
  const batches = readBatches(week, stated, sittings, findBoxes(week, stated, report), report);
  const trips = findTrips(week, stated, report);
  const purchases = readPurchases(week, stated, trips, report);
  const uses = readUses(week, stated, purchases, report);
  if (issues.length > 0) return { ok: false, issues };
  return { ok: true, value: { batches, trips: [...trips].sort((a, b) => a - b), purchases, uses } };
}

/** The problem's sitting of each sitting of the file; -1 where there is none. */
function findSittings(week: WeekPlan, stated: KitchenProblem, report: Report): number[] {
  const taken = new Set<number>();
  const found = week.sittings.map(({ date, kind, eaters }, at) => {
    const who = [...eaters].sort().join(" ");
    const index = stated.sittings.findIndex(
      (one, k) =>
        !one.putBy &&
        !taken.has(k) &&
        one.date === date &&
        one.kind === kind &&
        [...one.eaters].sort().join(" ") === who,
    );
    if (index < 0) report("sitting-unknown", ["sittings", at], "a sitting of the kitchen", `${date} ${kind}`);
    else taken.add(index);
    return index;
  });
  stated.sittings.forEach(({ date, kind, putBy }, k) => {
    if (!putBy && !taken.has(k)) report("sitting-missing", ["sittings"], `a dish for ${date} ${kind}`, "none");
  });
  return found;
}

function readBatches(
  week: WeekPlan,
  stated: KitchenProblem,
  sittings: readonly number[],
  boxes: readonly number[],
  report: Report,
): PlannedBatch[] {
  const { problem, dishes } = stated;
  const cooked = week.batches.flatMap((cooking, batch): PlannedBatch[] => {
    const { dish: id, putBy } = cooking;
    const members = week.sittings.flatMap((sitting, at) => (sitting.batch === batch ? [at] : []));
    const filled = (week.boxes ?? []).flatMap((box, at) => (box.batch === batch ? [boxes[at] as number] : []));
    const eaten = members.map((at) => sittings[at] as number);
    const known = [...eaten, ...filled].filter((k) => k >= 0);
    const [first] = known;
    if (first === undefined) {
      if (members.length + filled.length === 0)
        report("batch-unused", ["batches", batch], "a sitting that eats it", "none");
      return [];
    }
    const dishesOf = (k: number): readonly number[] => problem.sittings[k]?.dishes ?? [];
    const ways = dishesOf(first).filter((index) => problem.dishes[index]?.id === id && dishes[index]?.putBy === putBy);
    const dish = chooseWay(ways, stated, cooking);
    for (const at of members) {
      const misses = dish === undefined || !dishesOf(sittings[at] as number).includes(dish);
      if (sittings[at] !== -1 && misses)
        report("dish-unfit", ["sittings", at, "dish"], "a dish that fits the sitting", id);
      const named = week.sittings[at]?.dish as string;
      if (named !== id) report("batch-dish", ["sittings", at, "dish"], id, named);
    }
    if (dish === undefined) {
      if (members.length === 0) report("dish-unfit", ["batches", batch, "dish"], "a dish that may be put by", id);
      return [];
    }
    for (const { at, food, insteadOf } of listGone(cooking, stated, dish)) {
      const expected = `${id} to be had with ${food} instead of ${insteadOf}`;
      report("way-gone", ["batches", batch, "taken", at], expected, "not to be had so any more");
    }
    return [{ dish, sittings: known.sort((a, b) => a - b) }];
  });
  const nothing = problem.dishes.findIndex(({ id }) => id === NOTHING_ID);
  const empty = problem.sittings.flatMap(({ putBy }, k): PlannedBatch[] =>
    putBy && !boxes.includes(k) ? [{ dish: nothing, sittings: [k] }] : [],
  );
  return [...cooked, ...empty];
}

/** The problem's sitting of each box of the file; -1 where there is none. */
function findBoxes(week: WeekPlan, stated: KitchenProblem, report: Report): number[] {
  return (week.boxes ?? []).map(({ on }, at) => {
    const index = stated.sittings.findIndex(({ putBy, date }) => putBy && date === on);
    if (index < 0) report("box-unknown", ["boxes", at], "a kitchen that puts portions by on that day", on);
    return index;
  });
}

/**
 * Of the ways to have a dish the one that was had: of what is put by the one whose boxes were used, else the one whose
 * makings are nearest to what went in.
 */
function chooseWay(ways: readonly number[], stated: KitchenProblem, cooking: KeptCooking): number | undefined {
  if (cooking.putBy !== undefined) return ways.find((way) => holdsLots(stated, way, cooking)) ?? ways[0];
  const missed = ways.flatMap((way) => {
    const fitted = stated.dishes[way];
    return fitted === undefined ? [] : [{ way, miss: missOfWay(fitted, cooking) }];
  });
  return missed.sort((a, b) => compareMisses(a.miss, b.miss))[0]?.way;
}

type Taken = NonNullable<KeptCooking["taken"]>[number];

/** What a cooking took otherwise than its dish first states, where the nearest way to cook it does not. */
function listGone({ taken = [], putBy }: KeptCooking, { dishes }: KitchenProblem, way: number) {
  const fitted = dishes[way];
  if (fitted === undefined || putBy !== undefined) return [];
  const offered = listTakenOtherwise(fitted);
  const isOffered = ({ food, insteadOf }: Taken): boolean =>
    offered.some((one) => one.food === food && one.insteadOf === insteadOf);
  return taken.flatMap((one, at) => (isOffered(one) ? [] : [{ at, ...one }]));
}

/** True where all boxes that were used are of the food that the way is served from. */
function holdsLots({ problem, lots }: KitchenProblem, way: number, { uses }: KeptCooking): boolean {
  const foods = problem.dishes[way]?.makings.map(({ food }) => food) ?? [];
  const own = new Set(lots.flatMap(({ id }, at) => (foods.includes(problem.lots[at]?.food ?? -1) ? [id] : [])));
  return uses.every(({ lot }) => own.has(lot));
}

function findTrips(week: WeekPlan, stated: KitchenProblem, report: Report): number[] {
  return week.trips.map(({ shop, date }, at) => {
    const index = stated.trips.findIndex((trip) => trip.shop === shop && trip.date === date);
    if (index < 0) report("trip-unknown", ["trips", at], "a day on which the shop is open", `${shop} on ${date}`);
    return index;
  });
}

/** The purchases by trip and pack, ascending, as the planner writes them. */
function readPurchases(
  week: WeekPlan,
  { problem, packs }: KitchenProblem,
  trips: readonly number[],
  report: Report,
): Purchase[] {
  const purchases = week.trips.flatMap(({ shop, lines }, at) =>
    lines.flatMap(({ pack: id, count }, line): Purchase[] => {
      const trip = trips[at] as number;
      const day = problem.trips[trip]?.day ?? 0;
      const index = packs.findIndex((pack, p) => pack.id === id && pack.shop === shop && isSold(problem.packs[p], day));
      if (index < 0)
        report("pack-unknown", ["trips", at, "lines", line, "pack"], "a pack that is sold there and then", id);
      return trip < 0 || index < 0 ? [] : [{ trip, pack: index, count }];
    }),
  );
  return purchases.sort((a, b) => a.trip - b.trip || a.pack - b.pack);
}

function isSold(pack: KitchenProblem["problem"]["packs"][number] | undefined, day: number): boolean {
  return pack !== undefined && pack.fromDay <= day && day <= pack.toDay;
}

function readUses(week: WeekPlan, stated: KitchenProblem, purchases: readonly Purchase[], report: Report): Use[] {
  const lots = nameLots(stated, purchases);
  return week.batches.flatMap((cooking, batch) =>
    cooking.uses.flatMap(({ lot: id, food, massG }, at): Use[] => {
      const found = lots.filter((lot) => lot.id === id && lot.food === food);
      const [lot] = found;
      const path = ["batches", batch, "uses", at, "lot"];
      if (found.length > 1) report("lot-ambiguous", path, "a lot of its own name", id);
      if (lot === undefined) report("lot-unknown", path, "a lot of the stores or a bought pack", id);
      return lot === undefined || found.length > 1 ? [] : [{ lot: lot.key, batch, massG }];
    }),
  );
}

interface NamedLot {
  readonly id: string;
  readonly food: string;
  readonly key: Use["lot"];
}

/** Every lot that a batch may be fed from, by the names that `accountLots` gives. */
function nameLots({ problem, lots, packs }: KitchenProblem, purchases: readonly Purchase[]): NamedLot[] {
  const stock = lots.map(({ id, food }, at): NamedLot => ({ id, food, key: { stock: at } }));
  const bought = purchases.flatMap(({ trip, pack, count }, purchase) => {
    const facts = packs[pack] as KitchenProblem["packs"][number];
    const day = problem.trips[trip]?.day ?? 0;
    return Array.from({ length: count }, (_, copy): NamedLot => {
      return { id: `${facts.id}-day-${day + 1}-${copy + 1}`, food: facts.food, key: { purchase, copy } };
    });
  });
  return [...stock, ...bought];
}
