import { type Dish, orderSteps, type Step } from "../../dish/index.ts";
import { type AuthorityChoice, type KeepingRules, pickRule } from "../../safety/index.ts";
import type { WorkDish, WorkStep, WorkWait } from "../../work/problem.ts";
import type { FoodState } from "./foodState.ts";

/** Weight of a minute that hot food waits, and of one that anything else on its way to the table does. */
const [HOT_WEIGHT, COLD_WEIGHT] = [3, 1];

/** The waits of one dish, its end, and the moment it is on the table where its end needs one. */
export interface DishWaits {
  readonly waits: readonly WorkWait[];
  readonly dish: WorkDish;
  readonly table?: WorkStep;
}

/** One dish as its waits are reckoned: steps of the sitting by place in the method, and their indices in the problem. */
export interface DishSteps {
  readonly dish: Dish;
  /** Place in the wish. */
  readonly at: number;
  /** Index in the problem by place in the method; absent for steps done ahead. */
  readonly indices: ReadonlyMap<number, number>;
  readonly states: readonly FoodState[];
  /** Index in the problem that a step of its own for the table would get. */
  readonly free: number;
}

/**
 * The waits of a dish. What the dish says a step can wait is a hold, which gives way where holds collide; what food
 * safety says is firm: rice an hour, other hot or raw food two, by the rules of the authority. Where both meet at the
 * end of the dish, or it has several ends, a step of no minutes stands for the table.
 */
export function listWaits(of: DishSteps, rules: KeepingRules, choice: AuthorityChoice): DishWaits {
  const { dish, indices, at, free } = of;
  const { method } = dish;
  const places = [...indices.keys()];
  const links = listLinks(method, places);
  const limit = (place: number) => safeMinutes(of.states[place] as FoodState, rules, choice);
  const index = (place: number) => indices.get(place) as number;
  const waits = links.flatMap(({ from, to, isNext }): WorkWait[] => {
    const ends = { from: index(from), to: index(to) };
    return isNext
      ? toWaits(ends, method[from] as Step, of.states[from] as FoodState, limit(from))
      : [{ ...ends, leastMinutes: 0 }];
  });
  const ends = places.filter((place) => links.every(({ from }) => from !== place));
  const last = ends[0] as number;
  const step = method[last] as Step;
  const id = `${at} ${dish.id}`;
  const isPlain = ends.length === 1 && (step.holdMinutes === undefined || limit(last) === undefined);
  if (isPlain)
    return { waits, dish: { id, last: index(last), ...endHold(step, limit(last)), holdWeight: weigh(of, last) } };
  const table: WorkStep = { id: `${id} table`, dish: at, minutes: 0, hands: 0 };
  const toTable = ends.flatMap((place) =>
    toWaits({ from: index(place), to: free }, method[place] as Step, of.states[place] as FoodState, limit(place)).map(
      (wait, k) => (k === 0 ? { ...wait, weight: weigh(of, place) } : wait),
    ),
  );
  return {
    waits: [...waits, ...toTable],
    dish: { id, last: free, holdMinutes: 0, isFirm: true, holdWeight: 0 },
    table,
  };
}

/** The order as waits, each step's holds only towards those that come next. */
function listLinks(method: Dish["method"], places: readonly number[]) {
  const { precedes } = orderSteps(method);
  return places.flatMap((to) => {
    const before = places.filter((from) => (method[to] as Step).after.includes((method[from] as Step).id));
    return before.map((from) => ({
      from,
      to,
      isNext: !places.some((other) => precedes[other]?.[to] && isAfter(method, other, from)),
    }));
  });
}

function isAfter(method: Dish["method"], at: number, before: number): boolean {
  return (method[at] as Step).after.includes((method[before] as Step).id);
}

/** A hold and a limit of safety between the same steps; the shorter of the two alone where that says it all. */
function toWaits(
  ends: { readonly from: number; readonly to: number },
  step: Step,
  state: FoodState,
  limit: number | undefined,
): WorkWait[] {
  const weight = state.isHot ? HOT_WEIGHT : step.kind === "heat-water" ? COLD_WEIGHT : undefined;
  const base = { ...ends, leastMinutes: 0, ...(weight !== undefined && { weight }) };
  const { holdMinutes } = step;
  const firm = limit === undefined ? [] : [{ ...ends, leastMinutes: 0, mostMinutes: limit, isFirm: true }];
  if (holdMinutes !== undefined) return [{ ...base, mostMinutes: Math.floor(holdMinutes) }, ...firm];
  return [{ ...base, ...(limit !== undefined && { mostMinutes: limit, isFirm: true }) }];
}

function endHold({ holdMinutes }: Step, limit: number | undefined): Pick<WorkDish, "holdMinutes" | "isFirm"> {
  if (holdMinutes !== undefined) return { holdMinutes: Math.floor(holdMinutes) };
  return limit === undefined ? {} : { holdMinutes: limit, isFirm: true };
}

function weigh({ states }: DishSteps, place: number): number {
  return states[place]?.isHot ? HOT_WEIGHT : COLD_WEIGHT;
}

/** Minutes that what comes out of a step may stand by the rules of safety; undefined where they say nothing. */
function safeMinutes(state: FoodState, rules: KeepingRules, choice: AuthorityChoice): number | undefined {
  if (state.hasRice) return pickRule(rules, "chill-rice-within-minutes", choice).value;
  return state.isHot || state.raw.length > 0 ? pickRule(rules, "room-minutes", choice).value : undefined;
}
