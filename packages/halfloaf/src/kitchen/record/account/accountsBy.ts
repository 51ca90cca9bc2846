import { addDays, type CivilDate } from "../../../quantity/index.ts";
import type { LotState } from "../../../stores/index.ts";
import type { RecordState } from "../recordState.ts";
import { nameStretch, type Stretch, startOf, startOfNext } from "./calendar.ts";
import { type PlannedSums, plannedOn } from "./plannedOn.ts";

/**
 * The sums of some days as they were, in whole minor units at lot cost:
 * opening + entered + till = plates + waste + carry-over.
 */
export interface RealSums {
  /** What was in the stores when the days began, cooked portions among it. */
  readonly openingMinor: number;
  /** What came in without being bought: at hand when the record began, a gift, a find. */
  readonly enteredMinor: number;
  readonly tillMinor: number;
  /** What was eaten, and what was used up without saying for what. */
  readonly platesMinor: number;
  /** What was thrown away, and what was found missing when counting. */
  readonly wasteMinor: number;
  /** The part of the waste that was found missing. */
  readonly missingMinor: number;
  readonly carryOverMinor: number;
}

/** One line of the accounts. */
export interface AccountLine extends RealSums {
  readonly name: string;
  readonly from: CivilDate;
  readonly to: CivilDate;
  /** Apart from the till: ways to the shops, and eating elsewhere as far as its cost is known. */
  readonly faresMinor: number;
  readonly ateOutMinor: number;
  /** What the accepted weeks said of these days; absent where none held any of them. */
  readonly planned?: PlannedSums;
}

/**
 * The accounts from one day to another, one line a day, a week or a month, without gaps; the first and the last stretch
 * are cut to the days asked for. Each line opens with what the one before carried over.
 */
export function accountsBy(state: RecordState, stretch: Stretch, from: CivilDate, to: CivilDate): AccountLine[] {
  const starts = listStarts(stretch, from, to);
  const flows = starts.map(newFlow);
  const before = newFlow();
  const flowOf = (day: CivilDate): Flow | undefined => {
    if (day < from) return before;
    return day > to ? undefined : flows[lastAtMost(starts, day)];
  };
  for (const lot of state.lots.values()) addLot(lot, flowOf);
  for (const { on, fareMinor } of state.trips) add(flowOf(on), "faresMinor", fareMinor);
  for (const { on, ateOutMinor } of state.sittings.values()) add(flowOf(on), "ateOutMinor", ateOutMinor);
  let openingMinor = restOf(0, before);
  return flows.map((flow, at): AccountLine => {
    const first = starts[at] as CivilDate;
    const end = starts[at + 1];
    const last = end === undefined ? to : addDays(end, -1);
    const carryOverMinor = restOf(openingMinor, flow);
    const planned = plannedOn(state, first, last);
    const name = nameStretch(first, stretch);
    const line = { name, from: first, to: last, openingMinor, ...flow, carryOverMinor };
    openingMinor = carryOverMinor;
    return planned === undefined ? line : { ...line, planned };
  });
}

type Flow = Record<
  "enteredMinor" | "tillMinor" | "platesMinor" | "wasteMinor" | "missingMinor" | "faresMinor" | "ateOutMinor",
  number
>;

function newFlow(): Flow {
  return {
    enteredMinor: 0,
    tillMinor: 0,
    platesMinor: 0,
    wasteMinor: 0,
    missingMinor: 0,
    faresMinor: 0,
    ateOutMinor: 0,
  };
}

function add(flow: Flow | undefined, key: keyof Flow, minor: number): void {
  if (flow !== undefined) flow[key] += minor;
}

function restOf(openingMinor: number, { enteredMinor, tillMinor, platesMinor, wasteMinor }: Flow): number {
  return openingMinor + enteredMinor + tillMinor - platesMinor - wasteMinor;
}

/** What was moved or cooked into another lot is still there, and so on no line. */
function addLot(lot: LotState, flowOf: (day: CivilDate) => Flow | undefined): void {
  if (lot.origin === "opening") add(flowOf(lot.since), "enteredMinor", lot.broughtMinor);
  if (lot.origin === "bought") add(flowOf(lot.since), "tillMinor", lot.broughtMinor);
  for (const { kind, on, costMinor } of lot.outflows) {
    if (kind === "used") add(flowOf(on), "platesMinor", costMinor);
    if (kind === "wasted" || kind === "missing") add(flowOf(on), "wasteMinor", costMinor);
    if (kind === "missing") add(flowOf(on), "missingMinor", costMinor);
  }
}

/** First days of the stretches, the first of them cut to the day asked for. */
function listStarts(stretch: Stretch, from: CivilDate, to: CivilDate): CivilDate[] {
  const starts: CivilDate[] = [];
  for (let day = from; day <= to; day = startOfNext(startOf(day, stretch), stretch)) starts.push(day);
  return starts;
}

function lastAtMost(starts: readonly CivilDate[], day: CivilDate): number {
  let [low, high] = [0, starts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((starts[middle] as CivilDate) <= day) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
