import type { MenuFood, MenuProblem, MenuTrip } from "../problem.ts";
import { Arrivals } from "./Arrivals.ts";
import { type CoverTable, findCover } from "./CoverTable.ts";
import type { MadeTrips } from "./MadeTrips.ts";
import { DUST_G, type Needs } from "./Needs.ts";
import { copyPath, createPath, type Opening, openingsOf, push } from "./Opening.ts";
import { offerSaving } from "./offerSaving.ts";
import type { FoodSources, Source } from "./Sources.ts";
import { valueLeft } from "./valueLeft.ts";

/** Keeps ways that leave a need unmet behind all that meet it. */
const SKIPPED_MINOR = 1e7;
/** Steps of one search after which ways that seem bettered are given up: those of a week are rarely more. */
const PATIENCE = 300;

/** What is open and spent at each depth of the search; figures handed down as arguments would cost an object each. */
interface Columns {
  readonly left: Float64Array;
  readonly lastDay: Int32Array;
  readonly rest: Float64Array;
  readonly spent: Float64Array;
  readonly paid: Float64Array;
  readonly slack: Float64Array;
}

function createColumns(depths: number): Columns {
  const column = (): Float64Array => new Float64Array(depths);
  const lastDay = new Int32Array(depths).fill(-1);
  return { left: column(), lastDay, rest: column(), spent: column(), paid: column(), slack: column() };
}

/**
 * The cheapest purchases of a food that goes off, as a row of openings: packs of one source that are bought on the
 * latest trip that can bring them, when what is open no longer suffices. An opening takes the cheapest packs for the
 * needs up to some later one: by price and waste or, where it feeds all needs there are and is still good after the
 * last day, by price less what is left. An offer counts wherever its packs come together on one trip, but nothing is
 * bought for its sake. Exact within that, as long as no gram kept is worth more than a gram costs; a search that takes
 * many steps, as over many days, gives up ways that come to a need no better than an earlier one.
 *
 * Results of `find` stand in `cost`, `till` and `missing` until the next call.
 */
export class OpeningSearch {
  cost = 0;
  /** Paid where prices come out high. */
  till = 0;
  /** Needs for which nothing could be had. */
  missing = 0;

  private readonly problem: MenuProblem;
  private readonly trips: MadeTrips;
  private readonly needs: Needs;
  private readonly lastDayOfPlan: number;
  private sources: readonly Source[] = [];
  private facts: MenuFood;
  private leftCredit = 0;
  private hasOffers = false;
  private readonly hasHigh: boolean;
  private best = Infinity;
  private leastMinorPerG = 0;
  private readonly columns: Columns;
  private readonly arrivals: Arrivals;
  private steps = 0;
  private readonly tried = createPath();
  private readonly found = createPath();

  constructor(problem: MenuProblem, trips: MadeTrips, needs: Needs) {
    this.problem = problem;
    this.trips = trips;
    this.needs = needs;
    this.lastDayOfPlan = problem.days - 1;
    this.facts = problem.foods[0] as MenuFood;
    this.columns = createColumns(problem.periodDay.length + 1);
    this.arrivals = new Arrivals(problem.periodDay.length);
    this.hasHigh = problem.packs.some((pack) => (pack.highMinor ?? pack.offer?.highMinor) !== undefined);
  }

  /** Finds openings for the needs; `leftCredit` is what a gram left, open and still good is worth. */
  find({ sources, leastMinorPerG, hasOffers }: FoodSources, facts: MenuFood, leftCredit: number): void {
    this.sources = sources;
    this.facts = facts;
    this.leftCredit = leftCredit;
    this.hasOffers = hasOffers;
    this.best = Infinity;
    this.leastMinorPerG = leastMinorPerG;
    this.tried.length = 0;
    this.columns.left[0] = 0;
    if (this.steps > PATIENCE) this.arrivals.clear();
    this.steps = 0;
    this.search(0, 0);
    this.missing = this.found.missing;
    if (this.hasHigh) this.till = this.highTill();
    this.cost = this.best - SKIPPED_MINOR * this.missing;
  }

  private highTill(): number {
    const { found } = this;
    let high = this.hasOffers ? -offerSaving(this.problem.packs, found, true) : 0;
    for (let k = 0; k < found.length; k++)
      high += (found.table[k] as CoverTable).highMinor[found.row[k] as number] as number;
    return high;
  }

  /** Forgets what was found: nothing is bought. */
  clear(): void {
    this.found.length = 0;
    this.cost = 0;
    this.till = 0;
    this.missing = 0;
  }

  get length(): number {
    return this.found.length;
  }

  tripAt(opening: number): number {
    return this.found.trip[opening] as number;
  }

  massAt(opening: number): number {
    return (this.found.table[opening] as CoverTable).massG[this.found.row[opening] as number] as number;
  }

  openings(): Opening[] {
    return openingsOf(this.found);
  }

  /**
   * Depth-first over openings, from need `i` on. What is open at a depth stands in the columns: grams left and the day
   * they keep to, what was spent so far weighed and paid at the till, and what offers take off that at most.
   */
  private search(depth: number, i: number): void {
    const { needs, columns } = this;
    const lastDay = columns.lastDay[depth] as number;
    let left = columns.left[depth] as number;
    for (; i < needs.count; i++) {
      const need = needs.massG[i] as number;
      if ((needs.day[i] as number) > lastDay || left < need - DUST_G) break;
      left -= need;
    }
    columns.left[depth] = left;
    if (i >= needs.count) {
      this.finish(depth);
      return;
    }
    columns.rest[depth] = needs.massG[i] as number;
    if ((needs.day[i] as number) <= lastDay) columns.rest[depth] = (needs.massG[i] as number) - left;
    else if (left > DUST_G) {
      columns.spent[depth] = (columns.spent[depth] as number) + left * this.facts.wasteMinorPerG;
    }
    if (++this.steps > PATIENCE && this.isBettered(depth, i)) return;
    let opened = false;
    for (const source of this.sources) if (this.openFrom(source, depth, i)) opened = true;
    if (opened) return;
    // Nothing can be had for this need: count it and go on with the next.
    this.tried.missing++;
    const below = depth + 1;
    columns.left[below] = 0;
    columns.lastDay[below] = -1;
    columns.spent[below] = (columns.spent[depth] as number) + SKIPPED_MINOR;
    columns.paid[below] = columns.paid[depth] as number;
    columns.slack[below] = columns.slack[depth] as number;
    this.search(below, i + 1);
    this.tried.missing--;
  }

  private isBettered(depth: number, i: number): boolean {
    const { rest, spent } = this.columns;
    return this.arrivals.isBettered(i, rest[depth] as number, spent[depth] as number);
  }

  /** Tries the covers of a source for the needs from `i` on; false where it has none. */
  private openFrom(source: Source, depth: number, i: number): boolean {
    const { needs, tried, columns } = this;
    const period = needs.period[i] as number;
    const day = needs.day[i] as number;
    const trip = this.trips.tripFor(source, period);
    if (trip < 0) return false;
    const keeps = (this.problem.trips[trip] as MenuTrip).day + source.unopenedDays;
    if (day > keeps) return false;
    const lastDay = Math.min(keeps, day + source.openedDays);
    const had = source.regular ? Infinity : source.limit - this.taken(source);
    const good = lastDay >= this.lastDayOfPlan;
    const rest = columns.rest[depth] as number;
    const spent = columns.spent[depth] as number;
    const below = depth + 1;
    let cover = 0;
    let before = 0;
    for (let j = i; j < needs.count && (needs.day[j] as number) <= lastDay; j++) {
      cover += j === i ? rest : (needs.massG[j] as number);
      const table = good && j === needs.count - 1 ? source.endTable : source.table;
      const row = findCover(table, cover);
      if (row < 0 || (table.itemCount[row] as number) > had) break;
      const mass = table.massG[row] as number;
      if (mass === before) continue;
      before = mass;
      const price = table.priceMinor[row] as number;
      let slack = columns.slack[depth] as number;
      if (source.slackMinor) slack += slackOf(source.slackMinor, table, row);
      if (spent + price - slack + this.leastToCome(i + 1, mass - rest) >= this.best) continue;
      push(tried, source, table, row, trip, period, j > i && (table.itemCount[row] as number) > 1);
      columns.left[below] = mass - rest;
      columns.lastDay[below] = lastDay;
      columns.spent[below] = spent + price;
      columns.paid[below] = (columns.paid[depth] as number) + price;
      columns.slack[below] = slack;
      this.search(below, i + 1);
      tried.length--;
    }
    return before > 0;
  }

  /** The least that the needs from `i` on cost with `left` grams at hand, less the most that is left then. */
  private leastToCome(i: number, left: number): number {
    const missing = (this.needs.fromG[i] as number) - left;
    return missing * (missing > 0 ? this.leastMinorPerG : this.leftCredit);
  }

  /** Packs of a source of one pack that the openings tried so far take. */
  private taken(source: Source): number {
    const { tried } = this;
    let count = 0;
    for (let k = 0; k < tried.length; k++) {
      if (tried.source[k] === source) count += source.table.counts[tried.row[k] as number] as number;
    }
    return count;
  }

  private finish(depth: number): void {
    const paid = this.columns.paid[depth] as number;
    const saving = this.hasOffers ? offerSaving(this.problem.packs, this.tried, false) : 0;
    const lazy = this.isLazy();
    // A pack that is never opened would be worth more, but packs that are not needed are hardly ever bought.
    if (lazy && paid - saving - this.leftCredit * this.massLeft() >= this.best) return;
    const total = lazy
      ? paid - saving + SKIPPED_MINOR * this.tried.missing + this.settle()
      : (this.columns.spent[depth] as number) - saving + this.costOfLeft(depth);
    if (total >= this.best) return;
    this.best = total;
    this.till = paid - saving;
    copyPath(this.tried, this.found);
  }

  /** True where some packs may be opened later than the search reckons. */
  private isLazy(): boolean {
    const { tried } = this;
    for (let k = 0; k < tried.length; k++) if (tried.lazy[k]) return true;
    return false;
  }

  private massLeft(): number {
    const { tried } = this;
    let massG = -(this.needs.fromG[0] as number);
    for (let k = 0; k < tried.length; k++)
      massG += (tried.table[k] as CoverTable).massG[tried.row[k] as number] as number;
    return massG;
  }

  private costOfLeft(depth: number): number {
    const left = this.columns.left[depth] as number;
    if (left <= DUST_G) return 0;
    const good = (this.columns.lastDay[depth] as number) >= this.lastDayOfPlan;
    return left * (good ? -this.leftCredit : this.facts.wasteMinorPerG);
  }

  /** What is left of the openings tried costs, where each pack is opened only when those before are used up. */
  private settle(): number {
    const { creditMinorPerG, wasteMinorPerG } = this.facts;
    const worth = { unopened: creditMinorPerG, opened: this.leftCredit, wasted: -wasteMinorPerG };
    return -valueLeft(this.problem, this.tried, this.needs, worth);
  }
}

function slackOf(slackMinor: readonly number[], { counts }: CoverTable, row: number): number {
  let slack = 0;
  for (let i = 0; i < slackMinor.length; i++) {
    slack += (slackMinor[i] as number) * (counts[row * slackMinor.length + i] as number);
  }
  return slack;
}
