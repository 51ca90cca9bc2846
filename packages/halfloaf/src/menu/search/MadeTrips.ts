import type { MenuProblem } from "../problem.ts";
import type { FoodSources, Source } from "./Sources.ts";

/** Sets of trips of which things are kept. */
export const MOST_SETS = 64;

/** From which of the trips made a shop, or one of its packs, can serve what is cooked in a period. */
export class MadeTrips {
  /** Shops visited up to each period (bit = shop). */
  readonly shopMask: Int32Array;
  /** Names the set of trips made; the same set has the same number for as long as it is among the last few dozen. */
  version = 0;
  private readonly versions = new Map<string, number>();
  private nextVersion = 0;
  private readonly latestTrip: Int16Array;
  private readonly specialTrips = new Map<Source, Int16Array>();
  private readonly periods: number;
  private readonly problem: MenuProblem;

  constructor(problem: MenuProblem, foods: readonly FoodSources[]) {
    this.problem = problem;
    this.periods = problem.periodDay.length;
    this.latestTrip = new Int16Array(problem.shopCount * this.periods).fill(-1);
    this.shopMask = new Int32Array(this.periods);
    for (const { sources } of foods) {
      for (const source of sources) if (!source.regular) this.specialTrips.set(source, new Int16Array(this.periods));
    }
    for (const latest of this.specialTrips.values()) latest.fill(-1);
  }

  set(made: Uint8Array): void {
    const { trips, shopCount } = this.problem;
    this.version = this.nameSet(made);
    this.latestTrip.fill(-1);
    this.shopMask.fill(0);
    for (const latest of this.specialTrips.values()) latest.fill(-1);
    trips.forEach((trip, index) => {
      if (!made[index]) return;
      this.note(this.latestTrip, trip.shop * this.periods, index);
      for (const [{ shop, fromDay, toDay }, latest] of this.specialTrips) {
        if (shop === trip.shop && trip.day >= fromDay && trip.day <= toDay) this.note(latest, 0, index);
      }
    });
    for (let period = 0; period < this.periods; period++) {
      let mask = 0;
      for (let shop = 0; shop < shopCount; shop++) if (this.latest(shop, period) >= 0) mask |= 1 << shop;
      this.shopMask[period] = mask;
    }
  }

  private nameSet(made: Uint8Array): number {
    const key = made.join("");
    const known = this.versions.get(key);
    if (known !== undefined) return known;
    if (this.versions.size >= MOST_SETS) this.versions.clear();
    this.versions.set(key, ++this.nextVersion);
    return this.nextVersion;
  }

  /** A later trip takes the place of an earlier one for the periods it can serve. */
  private note(latest: Int16Array, offset: number, index: number): void {
    const { trips } = this.problem;
    const from = trips[index]?.period as number;
    for (let period = from; period < this.periods; period++) {
      const known = latest[offset + period] as number;
      if (known < 0 || (trips[known]?.period as number) <= from) latest[offset + period] = index;
    }
  }

  /** The latest trip made to a shop up to a period, or -1. */
  latest(shop: number, period: number): number {
    return this.latestTrip[shop * this.periods + period] as number;
  }

  /** The latest trip made from which a source can serve an opening in this period, or -1. */
  tripFor(source: Source, period: number): number {
    const trip = this.latest(source.shop, period);
    if (source.regular || trip < 0) return trip;
    return (this.specialTrips.get(source) as Int16Array)[period] as number;
  }
}
