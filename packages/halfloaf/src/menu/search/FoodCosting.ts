import type { MenuFood, MenuLot, MenuProblem } from "../problem.ts";
import { type CoverTable, findCover } from "./CoverTable.ts";
import { isColdLimited } from "./isColdLimited.ts";
import { MadeTrips } from "./MadeTrips.ts";
import { DUST_G, Needs } from "./Needs.ts";
import type { Opening } from "./Opening.ts";
import { OpeningSearch } from "./OpeningSearch.ts";
import { buildSources, coverFrom, creditOfOpened, type FoodSources, type Source } from "./Sources.ts";

/** Purchases of one food that count in the loads of trips; there are rarely more than three. */
export const MOST_LOADS = 12;

/**
 * The cheapest purchases of one food for given needs by period and given trips. Costs include credit for what is
 * left and the price of waste. Stock is used first, what goes off soonest before the rest. A food that lasts is
 * bought in one go when the stock runs short, exactly; one that goes off as `OpeningSearch` says.
 *
 * Results of `evaluate` stand in `cost`, `till`, `missing` and `unused` until the next call.
 */
export class FoodCosting {
  cost = 0;
  /** Paid where prices come out high: that is what the budget must stand. */
  till = 0;
  /** Times a making could not be had, and shares of lots that had to be used and were not (each with a step of 0.3). */
  missing = 0;
  unused = 0;
  /** Mass bought on each trip for the last food evaluated: `loadG[i]` g on trip `loadTrip[i]`. */
  loads = 0;
  readonly loadTrip = new Int16Array(MOST_LOADS);
  readonly loadG = new Float64Array(MOST_LOADS);
  readonly foods: readonly FoodSources[];
  readonly trips: MadeTrips;
  /** Whether it matters what is brought home on which trip. */
  readonly tracksLoads: boolean;

  private readonly lots: MenuLot[][];
  private readonly lotMass: number[];
  /** What a gram left is worth, by food: unopened, and of an opened lot or pack. */
  private readonly credit: Float64Array;
  private readonly openedCredit: Float64Array;
  private readonly periods: number;
  private readonly lastDayOfPlan: number;
  private readonly needs: Needs;
  private readonly opening: OpeningSearch;
  private readonly problem: MenuProblem;

  constructor(problem: MenuProblem) {
    this.problem = problem;
    this.tracksLoads = problem.trips.some((trip) => trip.carryG !== undefined) || isColdLimited(problem);
    this.foods = buildSources(problem);
    this.lots = problem.foods.map((_, food) =>
      problem.lots
        .filter((lot) => lot.food === food)
        .sort((a, b) => a.lastDay - b.lastDay || Number(b.opened) - Number(a.opened)),
    );
    this.lotMass = this.lots.map((lots) => lots.reduce((sum, lot) => sum + lot.massG, 0));
    this.credit = Float64Array.from(problem.foods, (food) => food.creditMinorPerG);
    this.openedCredit = Float64Array.from(problem.foods, (_, food) => creditOfOpened(problem, food));
    this.periods = problem.periodDay.length;
    this.lastDayOfPlan = problem.days - 1;
    this.trips = new MadeTrips(problem, this.foods);
    this.needs = new Needs(this.periods);
    this.opening = new OpeningSearch(problem, this.trips, this.needs);
  }

  /** Says which trips are made; every food must be evaluated again afterwards. */
  setTrips(made: Uint8Array): void {
    this.trips.set(made);
  }

  /** Reckons the cheapest purchases of `food` for the needs `needG[offset .. offset + periods]`, in g. */
  evaluate(food: number, needG: Float64Array, offset: number): void {
    const sources = this.foods[food] as FoodSources;
    this.missing = 0;
    this.unused = 0;
    this.loads = 0;
    this.till = 0;
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
    this.cost = (this.credit[food] as number) * total;
    if (first < 0) return;
    if (sources.hasSpecial) {
      this.buySpecial(sources, first, total - stock);
      return;
    }
    const table = coverFrom(sources, this.trips.shopMask[first] as number);
    const row = table ? findCover(table, total - stock) : -1;
    if (!table || row < 0) {
      this.missing++;
      return;
    }
    this.cost += table.weighedMinor[row] as number;
    this.till = table.highMinor[row] as number;
    if (this.tracksLoads) this.loadRow(table, row, first);
  }

  private buySpecial(sources: FoodSources, first: number, needG: number): void {
    const bought = this.cheapestLasting(sources, first, needG);
    if (!bought) {
      this.missing++;
      return;
    }
    this.cost += bought.weighedMinor;
    this.till = bought.highMinor;
    if (bought.table) this.loadRow(bought.table, bought.row, first);
    const { special } = bought;
    if (special) this.load(special.trip, special.source.table.massG[special.row] as number);
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
      this.load(this.trips.latest(shop, period), count * item.massG);
    }
  }

  /** The best cover of `needG` from the shops visited up to a period; undefined where there is none. */
  cheapestLasting(sources: FoodSources, period: number, needG: number): LastingCover | undefined {
    const table = coverFrom(sources, this.trips.shopMask[period] as number);
    let best = table && weigh(table, findCover(table, needG));
    for (const source of sources.sources) {
      const trip = source.regular ? -1 : this.trips.tripFor(source, period);
      if (trip < 0) continue;
      for (let i = 0; i < source.table.massG.length; i++) {
        const rest = needG - (source.table.massG[i] as number);
        const more = rest > DUST_G ? table && weigh(table, findCover(table, rest)) : NOTHING_MORE;
        if (!more) continue;
        const weighedMinor = (source.table.weighedMinor[i] as number) + more.weighedMinor;
        if (best && weighedMinor >= best.weighedMinor) continue;
        const highMinor = (source.table.highMinor[i] as number) + more.highMinor;
        best = { ...more, weighedMinor, highMinor, special: { source, row: i, trip } };
      }
    }
    return best;
  }

  private evaluateDated(food: number, sources: FoodSources, needG: Float64Array, offset: number): void {
    const facts = this.problem.foods[food] as MenuFood;
    const openedCredit = this.openedCredit[food] as number;
    this.gatherNeeds(needG, offset);
    this.cost = 0;
    for (const lot of this.lots[food] as MenuLot[]) this.cost += this.useLot(lot, facts, openedCredit);
    this.opening.clear();
    this.needs.close();
    if (this.needs.count === 0) return;
    this.opening.find(sources, facts, openedCredit);
    this.cost += this.opening.cost;
    this.till = this.opening.till;
    this.missing = this.opening.missing;
    if (!this.tracksLoads) return;
    for (let i = 0; i < this.opening.length; i++) this.load(this.opening.tripAt(i), this.opening.massAt(i));
  }

  private gatherNeeds(needG: Float64Array, offset: number): void {
    const { needs } = this;
    needs.count = 0;
    for (let period = 0; period < this.periods; period++) {
      const need = needG[offset + period] as number;
      if (need > DUST_G) needs.add(need, period, this.problem.periodDay[period] as number);
    }
  }

  /** Takes what it can from a lot of the start, earliest needs first, and gives the cost of doing so. */
  private useLot(lot: MenuLot, facts: MenuFood, openedCredit: number): number {
    const { needs } = this;
    let left = lot.massG;
    let lastDay = lot.lastDay;
    let opened = lot.opened;
    const { fromPeriod = 0 } = lot;
    for (let i = 0; i < needs.count && left > DUST_G; i++) {
      const need = needs.massG[i] as number;
      const day = needs.day[i] as number;
      if (need <= DUST_G || day > lastDay || (needs.period[i] as number) < fromPeriod) continue;
      if (!opened) {
        opened = true;
        lastDay = Math.min(lastDay, day + (lot.openedDays ?? facts.openedDays));
      }
      const taken = Math.min(left, need);
      needs.massG[i] = need - taken;
      left -= taken;
    }
    if (left < DUST_G) left = 0;
    if (lot.mustUse && left > 0) this.unused += 0.3 + left / lot.massG;
    // Whatever is not credited at the end was credit at the start, given up by opening or by going off.
    const before = lot.opened ? openedCredit : facts.creditMinorPerG;
    const good = lastDay >= this.lastDayOfPlan;
    const after = !good ? 0 : opened ? openedCredit : facts.creditMinorPerG;
    return before * lot.massG - after * left + (good ? 0 : facts.wasteMinorPerG * left);
  }

  /** The openings of the last food evaluated that does not last. */
  openings(): Opening[] {
    return this.opening.openings();
  }
}

/** A way to buy a lasting food: a row of a table of regular packs, with or without packs of a special source. */
export interface LastingCover {
  readonly table: CoverTable | undefined;
  readonly row: number;
  readonly weighedMinor: number;
  /** Paid where prices come out high. */
  readonly highMinor: number;
  readonly special?: { readonly source: Source; readonly row: number; readonly trip: number };
}

const NOTHING_MORE: LastingCover = { table: undefined, row: -1, weighedMinor: 0, highMinor: 0 };

function weigh(table: CoverTable, row: number): LastingCover | undefined {
  if (row < 0) return undefined;
  const [weighedMinor, highMinor] = [table.weighedMinor[row] as number, table.highMinor[row] as number];
  return { table, row, weighedMinor, highMinor };
}
