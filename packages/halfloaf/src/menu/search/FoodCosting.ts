import type { MenuFood, MenuLot, MenuPack, MenuProblem } from "../problem.ts";
import { type CoverTable, findCover } from "./CoverTable.ts";
import { buildSources, type FoodSources, type Source } from "./Sources.ts";

/** One purchase of the cheapest way found: breakpoint `row` of a source's table, bought on a trip, opened in a period. */
export interface Opening {
  readonly source: Source;
  readonly row: number;
  readonly trip: number;
  readonly period: number;
}

interface Path {
  length: number;
  /** Needs that nothing could be had for. */
  missing: number;
  readonly source: Source[];
  readonly row: number[];
  readonly trip: number[];
  readonly period: number[];
}

function createPath(): Path {
  return { length: 0, missing: 0, source: [], row: [], trip: [], period: [] };
}

function offersIn(source: Source, problem: MenuProblem): boolean {
  return source.table.items.some((item) => problem.packs[item.pack]?.offer !== undefined);
}

function openingsOf({ length, source, row, trip, period }: Path): Opening[] {
  return source.slice(0, length).map((from, i) => ({
    source: from,
    row: row[i] as number,
    trip: trip[i] as number,
    period: period[i] as number,
  }));
}

/** Mass below which nothing is missing or left (g). */
const DUST_G = 1e-6;
const MOST_NEEDS = 64;
/** Keeps ways that leave a need unmet behind all that meet it. */
const SKIPPED_MINOR = 1e7;
/** Purchases of one food that count in the loads of trips; there are rarely more than three. */
export const MOST_LOADS = 12;

/**
 * The cheapest purchases of one food for given needs by period and given trips, exact but for mixing
 * shops within one opening. Costs include credit for what is left and the price of waste.
 *
 * Results of `evaluate` stand in `cost`, `till`, `missing` and `unused` until the next call.
 */
export class FoodCosting {
  cost = 0;
  till = 0;
  /** Times a making could not be had, and shares of lots that had to be used and were not (each with a step of 0.3). */
  missing = 0;
  unused = 0;
  /** Mass bought on each trip for the last food evaluated: `loadG[i]` g on trip `loadTrip[i]`. */
  loads = 0;
  readonly loadTrip = new Int16Array(MOST_LOADS);
  readonly loadG = new Float64Array(MOST_LOADS);
  readonly foods: readonly FoodSources[];

  readonly hasCarryLimit: boolean;

  private readonly lots: MenuLot[][];
  private readonly lotMass: number[];
  private readonly periods: number;
  private readonly lastDayOfPlan: number;
  /** Latest made trip to each shop up to each period, or -1; `[shop * periods + period]`. */
  private readonly latestTrip: Int16Array;
  private readonly shopMask: Int32Array;
  private readonly special: readonly Source[];
  private readonly specialTrips = new Map<Source, Int16Array>();

  private readonly needG = new Float64Array(MOST_NEEDS);
  private readonly needPeriod = new Int32Array(MOST_NEEDS);
  private readonly needDay = new Int32Array(MOST_NEEDS);
  private needs = 0;
  private best = 0;
  /** The openings being tried, and those of the best way found; parallel stacks, so that trying costs no memory. */
  private readonly tried = createPath();
  private readonly found = createPath();
  private sources: readonly Source[] = [];
  private hasOffers = false;
  private hasSpecial = false;
  private facts!: MenuFood;
  private leftCredit = 0;

  private readonly problem: MenuProblem;

  constructor(problem: MenuProblem) {
    this.problem = problem;
    this.hasCarryLimit = problem.trips.some((trip) => trip.carryG !== undefined);
    this.foods = buildSources(problem);
    this.special = this.foods.flatMap(({ sources }) => sources.filter((source) => !source.regular));
    this.lots = problem.foods.map((_, food) =>
      problem.lots
        .filter((lot) => lot.food === food)
        .sort((a, b) => a.lastDay - b.lastDay || Number(b.opened) - Number(a.opened)),
    );
    this.lotMass = this.lots.map((lots) => lots.reduce((sum, lot) => sum + lot.massG, 0));
    this.periods = problem.periodDay.length;
    this.lastDayOfPlan = problem.days - 1;
    this.latestTrip = new Int16Array(problem.shopCount * this.periods).fill(-1);
    this.shopMask = new Int32Array(this.periods);
  }

  /** Says which trips are made; every food must be evaluated again afterwards. */
  setTrips(made: Uint8Array): void {
    const { trips, shopCount } = this.problem;
    this.latestTrip.fill(-1);
    this.shopMask.fill(0);
    trips.forEach((trip, index) => {
      if (!made[index]) return;
      for (let period = trip.period; period < this.periods; period++) {
        const at = trip.shop * this.periods + period;
        const known = this.latestTrip[at] as number;
        if (known < 0 || (trips[known]?.period ?? 0) <= trip.period) this.latestTrip[at] = index;
      }
    });
    for (let period = 0; period < this.periods; period++) {
      let mask = 0;
      for (let shop = 0; shop < shopCount; shop++) {
        if ((this.latestTrip[shop * this.periods + period] as number) >= 0) mask |= 1 << shop;
      }
      this.shopMask[period] = mask;
    }
    for (const source of this.special) this.specialTrips.set(source, this.reckonSpecial(source, made));
  }

  /** The latest made trip from which a source can serve an opening in this period, or -1. */
  tripFor(source: Source, period: number): number {
    const trip = this.latestTrip[source.shop * this.periods + period] as number;
    if (source.regular || trip < 0) return trip;
    return (this.specialTrips.get(source) as Int16Array)[period] as number;
  }

  /** The latest made trip within the days of a source, for each period. */
  private reckonSpecial(source: Source, made: Uint8Array): Int16Array {
    const latest = this.specialTrips.get(source) ?? new Int16Array(this.periods);
    latest.fill(-1);
    this.problem.trips.forEach(({ shop, day, period }, index) => {
      if (!made[index] || shop !== source.shop || day < source.fromDay || day > source.toDay) return;
      for (let at = period; at < this.periods; at++) {
        const known = latest[at] as number;
        if (known < 0 || (this.problem.trips[known]?.period ?? 0) <= period) latest[at] = index;
      }
    });
    return latest;
  }

  /** Reckons the cheapest purchases of `food` for the needs `needG[offset .. offset + periods]`, in g. */
  evaluate(food: number, needG: Float64Array, offset: number): void {
    const sources = this.foods[food] as FoodSources;
    this.facts = this.problem.foods[food] as MenuFood;
    this.missing = 0;
    this.unused = 0;
    this.loads = 0;
    if (sources.lasting) this.evaluateLasting(food, sources, needG, offset);
    else this.evaluateDated(food, sources, needG, offset);
  }

  private evaluateLasting(food: number, sources: FoodSources, needG: Float64Array, offset: number): void {
    const stock = this.lotMass[food] as number;
    let total = 0;
    let first = -1;
    for (let period = 0; period < this.periods; period++) {
      total += needG[offset + period] as number;
      if (first < 0 && total > stock + DUST_G) first = period;
    }
    this.cost = this.facts.creditMinorPerG * total;
    this.till = 0;
    if (first < 0) return;
    if (sources.hasSpecial) {
      const bought = this.cheapestLasting(sources, first, total - stock);
      if (!bought) this.missing++;
      else {
        this.cost += bought.weighedMinor;
        this.till = bought.priceMinor;
        if (bought.table) this.loadRow(bought.table, bought.row, first);
        if (bought.special)
          this.load(bought.special.trip, bought.special.source.table.massG[bought.special.row] as number);
      }
      return;
    }
    const table = sources.byShops[sources.regularShops & (this.shopMask[first] as number)];
    const row = table ? findCover(table, total - stock) : -1;
    if (!table || row < 0) this.missing++;
    else {
      this.cost += table.weighedMinor[row] as number;
      this.till = table.priceMinor[row] as number;
      if (this.hasCarryLimit) this.loadRow(table, row, first);
    }
  }

  private load(trip: number, massG: number): void {
    if (trip < 0 || this.loads >= MOST_LOADS) return;
    this.loadTrip[this.loads] = trip;
    this.loadG[this.loads++] = massG;
  }

  /** Loads each item of a row on the latest trip to its shop. */
  private loadRow(table: CoverTable, row: number, period: number): void {
    const { items, counts } = table;
    for (let i = 0; i < items.length; i++) {
      const count = counts[row * items.length + i] as number;
      if (count === 0) continue;
      const item = items[i] as CoverTable["items"][number];
      const shop = this.problem.packs[item.pack]?.shop as number;
      this.load(this.latestTrip[shop * this.periods + period] as number, count * item.massG);
    }
  }

  /** The best cover of `needG` from the shops visited up to a period; undefined where there is none. */
  cheapestLasting(sources: FoodSources, period: number, needG: number): LastingCover | undefined {
    const table = sources.byShops[sources.regularShops & (this.shopMask[period] as number)];
    const row = table ? findCover(table, needG) : -1;
    let best: LastingCover | undefined;
    if (table && row >= 0) {
      best = {
        table,
        row,
        weighedMinor: table.weighedMinor[row] as number,
        priceMinor: table.priceMinor[row] as number,
      };
    }
    for (const source of sources.sources) {
      if (source.regular) continue;
      const trip = this.tripFor(source, period);
      if (trip < 0) continue;
      for (let i = 0; i < source.table.massG.length; i++) {
        const rest = needG - (source.table.massG[i] as number);
        const restRow = rest > DUST_G ? (table ? findCover(table, rest) : -1) : -1;
        if (rest > DUST_G && restRow < 0) continue;
        const more = restRow >= 0 && table ? table : undefined;
        const weighedMinor = (source.table.weighedMinor[i] as number) + (more?.weighedMinor[restRow] ?? 0);
        if (best && weighedMinor >= best.weighedMinor) continue;
        const priceMinor = (source.table.priceMinor[i] as number) + (more?.priceMinor[restRow] ?? 0);
        best = { table: more, row: restRow, weighedMinor, priceMinor, special: { source, row: i, trip } };
      }
    }
    return best;
  }

  private evaluateDated(food: number, sources: FoodSources, needG: Float64Array, offset: number): void {
    const { periodDay } = this.problem;
    this.needs = 0;
    for (let period = 0; period < this.periods; period++) {
      const need = needG[offset + period] as number;
      if (need <= DUST_G) continue;
      this.needG[this.needs] = need;
      this.needPeriod[this.needs] = period;
      this.needDay[this.needs++] = periodDay[period] as number;
    }
    this.leftCredit =
      this.facts.openedDays >= this.problem.days ? this.facts.creditMinorPerG : this.facts.creditOpenedMinorPerG;
    this.cost = 0;
    this.till = 0;
    this.found.length = 0;
    this.found.missing = 0;
    let open = 0;
    for (const lot of this.lots[food] as MenuLot[]) this.cost += this.useLot(lot);
    for (let i = 0; i < this.needs; i++) if ((this.needG[i] as number) > DUST_G) open++;
    if (open === 0) return;
    this.sources = sources.sources;
    this.hasOffers = sources.hasOffers;
    this.hasSpecial = sources.hasSpecial;
    this.best = Infinity;
    this.tried.length = 0;
    this.search(0, 0, -1, 0, 0);
    if (this.best === Infinity) this.missing++;
    else {
      const { found } = this;
      this.missing += found.missing;
      this.cost += this.best - SKIPPED_MINOR * found.missing;
      for (let i = 0; i < found.length; i++) {
        this.load(found.trip[i] as number, (found.source[i] as Source).table.massG[found.row[i] as number] as number);
      }
    }
  }

  /** Takes what it can from a lot of the start, earliest needs first, and gives the cost of doing so. */
  private useLot(lot: MenuLot): number {
    const { creditMinorPerG, openedDays } = this.facts;
    let left = lot.massG;
    let lastDay = lot.lastDay;
    let opened = lot.opened;
    for (let i = 0; i < this.needs && left > DUST_G; i++) {
      const need = this.needG[i] as number;
      const day = this.needDay[i] as number;
      if (need <= DUST_G || day > lastDay) continue;
      if (!opened) {
        opened = true;
        lastDay = Math.min(lastDay, day + openedDays);
      }
      const taken = Math.min(left, need);
      this.needG[i] = need - taken;
      left -= taken;
    }
    if (left < DUST_G) left = 0;
    if (lot.mustUse && left > 0) this.unused += 0.3 + left / lot.massG;
    // Whatever is not credited at the end was credit at the start, given up by opening or by going off.
    const before = lot.opened ? this.leftCredit : creditMinorPerG;
    const good = lastDay >= this.lastDayOfPlan;
    const after = !good ? 0 : opened ? this.leftCredit : creditMinorPerG;
    return before * lot.massG - after * left + (good ? 0 : this.facts.wasteMinorPerG * left);
  }

  /**
   * Depth-first over openings: from need `i` on, with `left` grams of an opening that keeps to `lastDay`,
   * `spent` so far weighed and `paid` at the till. Each opening covers the needs up to some later one.
   */
  private search(i: number, left: number, lastDay: number, spent: number, paid: number): void {
    while (i < this.needs) {
      const need = this.needG[i] as number;
      if (need > DUST_G) {
        if ((this.needDay[i] as number) > lastDay || left < need - DUST_G) break;
        left -= need;
      }
      i++;
    }
    if (i >= this.needs) {
      this.finish(left, lastDay, spent, paid);
      return;
    }
    let rest = this.needG[i] as number;
    if ((this.needDay[i] as number) <= lastDay) rest -= left;
    else if (left > DUST_G) spent += left * this.facts.wasteMinorPerG;
    if (spent >= this.best) return;
    let opened = false;
    for (const source of this.sources) if (this.openFrom(source, i, rest, spent, paid)) opened = true;
    if (!opened) {
      // Nothing can be had for this need: count it and go on with the next.
      this.tried.missing++;
      this.search(i + 1, 0, -1, spent + SKIPPED_MINOR, paid);
      this.tried.missing--;
    }
  }

  private openFrom(source: Source, i: number, rest: number, spent: number, paid: number): boolean {
    const period = this.needPeriod[i] as number;
    const day = this.needDay[i] as number;
    const trip = this.tripFor(source, period);
    if (trip < 0) return false;
    const tripDay = this.problem.trips[trip]?.day as number;
    const keeps = tripDay + source.unopenedDays;
    if (day > keeps) return false;
    const lastDay = Math.min(keeps, day + source.openedDays);
    const { table } = source;
    let cover = 0;
    let before = -1;
    let any = false;
    for (let j = i; j < this.needs; j++) {
      if ((this.needDay[j] as number) > lastDay) break;
      cover += j === i ? rest : (this.needG[j] as number);
      const row = findCover(table, cover);
      if (row < 0) break;
      if (row === before) continue;
      before = row;
      any = true;
      const price = table.priceMinor[row] as number;
      if (spent + price - this.leftCredit * (table.massG[row] as number) >= this.best) continue;
      const { tried } = this;
      tried.source[tried.length] = source;
      tried.row[tried.length] = row;
      tried.trip[tried.length] = trip;
      tried.period[tried.length++] = period;
      this.search(i + 1, (table.massG[row] as number) - rest, lastDay, spent + price, paid + price);
      tried.length--;
    }
    return any;
  }

  private finish(left: number, lastDay: number, spent: number, paid: number): void {
    const good = lastDay >= this.lastDayOfPlan;
    const end = left > DUST_G ? (good ? -this.leftCredit * left : this.facts.wasteMinorPerG * left) : 0;
    const saving = this.offerSaving();
    const total = spent + end - saving;
    if (total >= this.best) return;
    if (this.hasSpecial && this.exceedsLimit()) return;
    this.best = total;
    this.till = paid - saving;
    const { tried, found } = this;
    found.length = tried.length;
    found.missing = tried.missing;
    for (let i = 0; i < tried.length; i++) {
      found.source[i] = tried.source[i] as Source;
      found.row[i] = tried.row[i] as number;
      found.trip[i] = tried.trip[i] as number;
      found.period[i] = tried.period[i] as number;
    }
  }

  /** The openings of the last food evaluated that does not last. */
  openings(): Opening[] {
    return openingsOf(this.found);
  }

  /** What the offers take off when packs opened apart were bought together. */
  private offerSaving(): number {
    if (!this.hasOffers || this.tried.length === 0) return 0;
    if (this.tried.length === 1 && !offersIn(this.tried.source[0] as Source, this.problem)) return 0;
    const bought = new Map<string, { pack: number; count: number }>();
    for (const { source, row, trip } of openingsOf(this.tried)) {
      const { items, counts } = source.table;
      items.forEach((item, at) => {
        const count = counts[row * items.length + at] as number;
        if (count === 0) return;
        const key = `${trip} ${item.pack}`;
        bought.set(key, { pack: item.pack, count: (bought.get(key)?.count ?? 0) + count });
      });
    }
    let saving = 0;
    for (const { pack, count } of bought.values()) {
      const { offer, priceMinor } = this.problem.packs[pack] as MenuPack;
      if (offer) saving += Math.floor(count / offer.count) * (offer.count * priceMinor - offer.priceMinor);
    }
    return saving;
  }

  private exceedsLimit(): boolean {
    const path = openingsOf(this.tried);
    for (const { source } of path) {
      if (source.regular) continue;
      const pack = this.problem.packs[source.table.items[0]?.pack as number];
      let count = 0;
      for (const other of path) if (other.source === source) count += other.source.table.counts[other.row] as number;
      if (pack && count > pack.limit) return true;
    }
    return false;
  }
}

/** A way to buy a lasting food: a row of a table of regular packs, with or without packs of a special source. */
export interface LastingCover {
  readonly table: CoverTable | undefined;
  readonly row: number;
  readonly weighedMinor: number;
  readonly priceMinor: number;
  readonly special?: { readonly source: Source; readonly row: number; readonly trip: number };
}
