import type { Dish, KitPart, Step } from "./dish.ts";
import { type Vessel, vesselsOf } from "./kitNeeded.ts";
import { type FixedOrder, fixOrder, type Job, jobMinutes, orderMinutes, type Workload } from "./listSchedule.ts";
import { markAhead, orderSteps, type StepOrder } from "./stepOrder.ts";

/** Rings to cook on and pairs of hands, 1 or more of each. */
export interface KitchenHands {
  readonly rings: number;
  readonly cooks: number;
}

/** One person with one ring. */
const ALONE: KitchenHands = { rings: 1, cooks: 1 };

/** Kit of which a kitchen has one. */
const SINGLE_PARTS = ["oven", "microwave", "kettle", "blender"] as const satisfies readonly KitPart[];

/** Halves of a pair of hands that a step keeps busy. */
const HANDS = { full: 2, eye: 1, none: 0 } as const satisfies Record<Step["hands"], number>;

/** Portions for which an order of the steps is looked for; any order serves any number of portions. */
const TRIED_PORTIONS = [1, 2, 4, 8, 16];

/** Most portions that the linear minutes hold for. */
const LINEAR_PORTIONS = 8;

/** How long a dish takes and what it leaves to wash up. */
export interface DishMinutes {
  /** Minutes of both hands, ahead ones included; a minute of keeping an eye on something counts half. */
  readonly handsOn: number;
  /** From the first step to the plate, without what is done ahead. */
  readonly elapsed: number;
  /** From the first to the last of what is done ahead, 0 where nothing is. */
  readonly ahead: number;
  readonly vessels: readonly { readonly vessel: Vessel; readonly count: number }[];
}

/**
 * How long so many portions of a dish take with so many rings and cooks, one of each by default. A simple list schedule:
 * no proof that it can't be done sooner, and no heed of how long a step may wait. More portions never take less time, more
 * rings or cooks never more. What must be finished before a step done ahead is done ahead too.
 *
 * The dish must pass `checkDish`. Throws where `portions` is not positive or `kit` has less than one ring or cook.
 */
export function minutesOf(dish: Pick<Dish, "method">, portions: number, kit: KitchenHands = ALONE): DishMinutes {
  if (!(portions > 0)) throw new RangeError(`${portions} is no number of portions`);
  const { now, ahead } = findOrders(dish.method, kit);
  const shortest = (orders: readonly FixedOrder[]) => Math.min(...orders.map((order) => orderMinutes(order, portions)));
  const busy = dish.method.map((step) => (jobMinutes(toJob(step), portions) * HANDS[step.hands]) / 2);
  return {
    handsOn: busy.reduce((sum, each) => sum + each, 0),
    elapsed: shortest(now),
    ahead: shortest(ahead),
    vessels: vesselsOf(dish),
  };
}

/** Minutes as a linear function of the portions cooked at once. */
export interface LinearMinutes {
  readonly fixed: number;
  readonly perPortion: number;
}

/**
 * The minutes of a dish as linear functions of its portions, for planning. Hands-on is exact. Elapsed is never below what
 * `minutesOf` gives, for any number of portions up to 8, whole or not: minutes in a fixed order bend upwards only, so the
 * straight line between none and eight lies on or above them. Of the orders tried the one with the lowest line over
 * 1 to 8 portions is taken. Errors as for `minutesOf`.
 */
export function linearMinutes(
  dish: Pick<Dish, "method">,
  kit: KitchenHands = ALONE,
): { readonly handsOn: LinearMinutes; readonly elapsed: LinearMinutes } {
  const lines = findOrders(dish.method, kit).now.map((order) => {
    const fixed = orderMinutes(order, 0);
    return { fixed, perPortion: (orderMinutes(order, LINEAR_PORTIONS) - fixed) / LINEAR_PORTIONS };
  });
  const middle = (1 + LINEAR_PORTIONS) / 2;
  const height = ({ fixed, perPortion }: LinearMinutes) => fixed + perPortion * middle;
  const elapsed = lines.reduce((best, line) => (height(line) < height(best) ? line : best));
  const add = (key: "fixed" | "perPortion") =>
    dish.method.reduce((sum, { minutes, hands }) => sum + (minutes[key] * HANDS[hands]) / 2, 0);
  return { handsOn: { fixed: add("fixed"), perPortion: add("perPortion") }, elapsed };
}

function toJob({ minutes, hands, kit }: Step): Job {
  const holds = (part: KitPart) => (kit.includes(part) ? 1 : 0);
  return { minutes, holds: [HANDS[hands], holds("ring"), ...SINGLE_PARTS.map(holds)] };
}

/** Ways to do the steps of the sitting and those ahead, one or more of each. */
function findOrders(method: Dish["method"], { rings, cooks }: KitchenHands): Record<"now" | "ahead", FixedOrder[]> {
  if (!(rings >= 1 && cooks >= 1)) throw new RangeError(`${rings} rings and ${cooks} cooks are less than one of each`);
  const order = orderSteps(method);
  if (order.cyclic.length > 0) throw new RangeError("the steps wait for each other in a ring");
  const isAhead = markAhead(method, order);
  const pick = (ahead: boolean) => [...method.keys()].filter((at) => isAhead[at] === ahead);
  // A schedule that leaves a ring or a cook idle is one too, and a list schedule is at times shorter with less.
  const kits = countUpTo(rings).flatMap((some) => countUpTo(cooks).map((hands) => ({ rings: some, cooks: hands })));
  const find = (steps: readonly number[]) => kits.flatMap((kit) => tryLists(method, order, steps, kit));
  return { now: find(pick(false)), ahead: find(pick(true)) };
}

function countUpTo(most: number): number[] {
  return Array.from({ length: Math.floor(most) }, (_, at) => at + 1);
}

/** Three lists: as the method has the steps, what the longest work hangs on first, what could start soonest first. */
function tryLists(method: Dish["method"], order: StepOrder, steps: readonly number[], kit: KitchenHands): FixedOrder[] {
  const jobs = steps.map((at) => toJob(method[at] as Step));
  const precedes = steps.map((before) => steps.map((after) => order.precedes[before]?.[after] === true));
  const capacities = [2 * kit.cooks, kit.rings, ...SINGLE_PARTS.map(() => 1)];
  const work: Workload = { jobs, precedes, capacities };
  const asWritten = order.sequence.map((at) => steps.indexOf(at)).filter((at) => at >= 0);
  return TRIED_PORTIONS.flatMap((portions) => {
    const minutes = jobs.map((job) => jobMinutes(job, portions));
    const tails = chainMinutes(minutes, [...asWritten].reverse(), (at, other) => precedes[at]?.[other] === true);
    const heads = chainMinutes(minutes, asWritten, (at, other) => precedes[other]?.[at] === true);
    const soonest = (at: number) => (heads[at] as number) - (minutes[at] as number);
    const longestFirst = [...asWritten].sort((a, b) => (tails[b] as number) - (tails[a] as number));
    const soonestFirst = [...asWritten].sort((a, b) => soonest(a) - soonest(b));
    return [asWritten, longestFirst, soonestFirst].map((sequence) => fixOrder(work, portions, sequence));
  });
}

/** Minutes of the longest chain from each job on, itself included, through the jobs that `isLinked` says it hangs on. */
function chainMinutes(
  minutes: readonly number[],
  sequence: readonly number[],
  isLinked: (at: number, other: number) => boolean,
): number[] {
  const chains: number[] = minutes.map(() => 0);
  for (const at of sequence) {
    const linked = chains.filter((_, other) => isLinked(at, other));
    chains[at] = (minutes[at] as number) + Math.max(0, ...linked);
  }
  return chains;
}
