import type { Observation } from "../../price/index.ts";
import type { CivilDate, Issue } from "../../quantity/index.ts";
import type { LotState } from "../../stores/index.ts";
import type { ObservedStep } from "../cooking/pace.ts";
import type { SittingKind } from "../datedSittings.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { EventId } from "./eventId.ts";

/** Everything that follows from the events of a kitchen: the same on every device that has the same events and foods. */
export interface RecordState {
  /** Every lot by its id, the empty ones too, in the order they came in. */
  readonly lots: ReadonlyMap<string, LotState>;
  /** Lots that somebody has to look at, by id: more was said to have left them than was there. Counting clears them. */
  readonly toCount: ReadonlyMap<string, LotToCount>;
  /** All that was eaten, in order. */
  readonly plates: readonly EatenPlate[];
  /** Cookings by the id of the lot of portions they brought. */
  readonly cookings: ReadonlyMap<string, DoneCooking>;
  /** What was done ahead for sittings, by `keyOfBegun`. */
  readonly begun: ReadonlyMap<string, BegunAhead>;
  /** What became known of sittings besides plates, by `keyOfSitting`. */
  readonly sittings: ReadonlyMap<string, SittingNews>;
  readonly trips: readonly MadeTrip[];
  /** Prices as seen, in order, ready for `latestPrices`. */
  readonly prices: readonly SeenPrice[];
  /** Packs that were not at the shelf on a trip and were not seen since, by `keyOfMissing`. */
  readonly missing: ReadonlyMap<string, MissingPack>;
  /** Points from 0 to 10 by dish, the latest of each. */
  readonly ratings: ReadonlyMap<string, number>;
  /** The lot that each lot of an accepted week became when it was bought, by `keyOfPlanned`. */
  readonly planned: ReadonlyMap<string, string>;
  /** The shop that each lot was bought at, by its id, where that was said. */
  readonly boughtAt: ReadonlyMap<string, string>;
  /** Accepted weeks, in order. */
  readonly menus: readonly AcceptedMenu[];
  /** Events that were withdrawn and stay so. */
  readonly withdrawn: ReadonlySet<EventId>;
  /** What of the events cannot have happened as told, in order. */
  readonly faults: readonly EventFault[];
}

/** By how much the record of a lot is known to be wrong, since when, and by which events. */
export interface LotToCount {
  readonly lot: string;
  /** So many g more were said to have left it than were booked. */
  readonly shortG: number;
  readonly since: CivilDate;
  readonly events: readonly EventId[];
}

/** So much of a lot that was eaten, at its share of the lot's cost. */
export interface EatenPlate {
  readonly event: EventId;
  readonly on: CivilDate;
  /** Absent where something was used up without saying at which sitting. */
  readonly sitting?: SittingKind;
  /** Absent for a guest, or where it was not said. */
  readonly eater?: string;
  readonly lot: string;
  /** What was on it: the dish of cooked portions, else the food. */
  readonly dish?: string;
  readonly food?: string;
  /** Portions of the dish; absent for a food. */
  readonly portions?: number;
  readonly massG: number;
  readonly costMinor: number;
  /** True where the cost is the least it was. */
  readonly atLeast: boolean;
}

/** A cooking as it was. */
export interface DoneCooking {
  readonly event: EventId;
  readonly on: CivilDate;
  readonly lot: string;
  readonly dish: string;
  readonly portions: number;
  readonly sitting?: SittingKind;
  /** Position in the accepted week; absent where it was not planned. */
  readonly batch?: number;
  readonly costMinor: number;
  readonly atLeast: boolean;
  /** How long steps took; absent where that is not known. */
  readonly pace?: SeenPace;
}

/** Something of a dish that was done ahead for a sitting on a day; without `step` it is to thaw what the stores had frozen. */
export interface BegunAhead {
  readonly event: EventId;
  readonly on: CivilDate;
  readonly dish: string;
  readonly servedOn: CivilDate;
  readonly sitting: SittingKind;
  readonly step?: string;
}

/** How long steps of one cooking took whom, and when that was written down (ms since 1970). */
interface SeenPace {
  readonly by?: string;
  readonly atMs: number;
  readonly steps: readonly ObservedStep[];
}

/** What became known of one sitting besides plates. */
export interface SittingNews {
  readonly on: CivilDate;
  readonly sitting: SittingKind;
  /** True where nobody ate here. */
  readonly allAway: boolean;
  /** Eaters who did not eat here. */
  readonly away: readonly string[];
  readonly guestPortions: number;
  /** Known costs of eating elsewhere. */
  readonly ateOutMinor: number;
}

export interface MadeTrip {
  readonly event: EventId;
  readonly on: CivilDate;
  readonly shop: string;
  readonly fareMinor: number;
}

/** A price as seen; `massG` is what the pack held, where that differed from what the kitchen has. */
export interface SeenPrice extends Observation {
  readonly event: EventId;
  readonly massG?: number;
}

/** A pack that was not at the shelf on the trip of that day to that shop. */
export interface MissingPack {
  readonly event: EventId;
  readonly trip: CivilDate;
  readonly shop: string;
  readonly pack: string;
}

export interface AcceptedMenu {
  readonly event: EventId;
  readonly on: CivilDate;
  readonly week: WeekPlan;
}

/** What of an event is in doubt; the path leads to the key of the event. The event stays in the record. */
export interface EventFault {
  readonly event: EventId;
  readonly issue: Issue;
}

/** The key in `RecordState.planned` of a lot of the week that begins on a day; weeks name their lots alike. */
export function keyOfPlanned(week: CivilDate, lot: string): string {
  return `${week} ${lot}`;
}

/** The key in `RecordState.missing` of a pack on a trip. */
export function keyOfMissing({ trip, shop, pack }: Omit<MissingPack, "event">): string {
  return `${trip} ${shop} ${pack}`;
}

/** The key in `RecordState.begun` of what is done ahead. */
export function keyOfBegun({ dish, servedOn, sitting, step = "" }: Omit<BegunAhead, "event" | "on">): string {
  return `${servedOn} ${sitting} ${dish} ${step}`;
}

/** The key of a sitting in `RecordState.sittings`. */
export function keyOfSitting(on: CivilDate, sitting: SittingKind): string {
  return `${on} ${sitting}`;
}
