import type { Choose, Dish, Step } from "../../dish/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { type Caution, cautionsOf } from "../../safety/index.ts";
import type { Kitchen } from "../kitchen.ts";
import { isWarmed, PUT_BY_CAUTION } from "../statePutBy.ts";
import { stockBesides } from "../stockBesides.ts";
import type { Tables } from "../tables.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { chooseUsed, freshOf } from "./listCookings.ts";
import type { Pace } from "./pace.ts";
import { isFrozen } from "./placeCautions.ts";
import {
  type BeforeSitting,
  dayToBegin,
  listBegunSteps,
  THAW_IN_WATER_MINUTES,
  THAW_MINUTES,
  timeToBegin,
} from "./timeToBegin.ts";

interface JobBase extends BeforeSitting {
  readonly dish: string;
}

type JobCaution = Pick<WeekPlan["cautions"][number], "code" | "text" | "authority">;

/** One thing to do on a day. */
export type DayJob =
  | (JobBase & {
      readonly kind: "cook";
      readonly batch: number;
      readonly portions: number;
      /** Makings taken otherwise than the dish first states. */
      readonly taken?: NonNullable<WeekPlan["batches"][number]["taken"]>;
    })
  | (JobBase & {
      readonly kind: "re-heat" | "take-out";
      readonly batch: number;
      readonly portions: number;
      /** Day it was cooked; absent of what was put by where the kitchen no longer has it. */
      readonly cookedOn?: CivilDate;
      /** Where it was put by; absent of what is left over from the plan. */
      readonly putBy?: "fridge" | "freezer";
      readonly cautions: readonly JobCaution[];
    })
  | (JobBase & {
      readonly kind: "thaw" | "soak" | "ahead";
      readonly batch: number;
      /** Absent for what lies in the freezer of the stores without a step of the dish for it. */
      readonly step?: Step["id"];
      readonly text?: string;
      readonly foods: readonly string[];
      /** True for cooked portions of the dish that were put by. */
      readonly putBy?: "freezer";
      /** How it thaws where the fridge takes longer than there is; absent where there is time, and of what else is begun. */
      readonly cautions?: readonly JobCaution[];
    });

type Begun = Extract<DayJob, { readonly kind: "thaw" | "soak" | "ahead" }>;

/** For raw meat and fish that may still be frozen when there is no time left to thaw them in the fridge. */
const THAW_AT_ONCE: JobCaution = {
  code: "thaw-at-once",
  text: `In the fridge it takes about ${THAW_MINUTES / 60} h to thaw. Where it is still frozen, thaw it in the microwave, or in a tight bag in cold water that is changed every 30 min, never in the warm; then cook it at once. Or eat another dish.`,
  authority: "US FSIS (from memory)",
};

/**
 * What there is to do on one day of a week's plan, by time: dishes to cook, leftovers to heat again or to take out of the
 * fridge, portions put by to warm, and what must be begun for later sittings, soaks and thawing among it. The first day has besides
 * what should have been thawing before it. Batches of dishes that the tables do not have, and the days outside the plan, bring
 * no job.
 */
export function jobsOfDay(
  week: Week,
  kitchenThen: Pick<Kitchen, "stores" | "putBy" | "authorities">,
  tables: Pick<Tables, "dishes" | "foods" | "safety">,
  date: CivilDate,
  pace: Pace = {},
): DayJob[] {
  const kitchen = stockBesides(kitchenThen, week);
  const dishes = new Map(tables.dishes.map((dish) => [dish.id, dish]));
  const late = date === week.from ? thawsAtOnce(week, kitchenThen, tables, date) : [];
  const jobs = week.batches.flatMap((batch, at): DayJob[] => {
    const dish = dishes.get(batch.dish);
    if (dish === undefined) return [];
    if (batch.putBy !== undefined) return listPutBy(week, at, dish, kitchen, tables);
    return [
      ...listCooking(week, at),
      ...listLeftovers(week, at, dish, kitchen, tables),
      ...listBegun(week, at, dish, tables, pace),
      ...listThawed(week, at, dish, kitchen, tables),
    ];
  });
  return [...late, ...jobs.filter((job) => dayToBegin(job) === date)].sort((a, b) => timeToBegin(a) - timeToBegin(b));
}

/**
 * Raw meat and fish that lie in the freezer of the stores, to be cooked on a day or later, which should have been in the fridge
 * to thaw before that day: what is left is to thaw them at once.
 */
export function thawsAtOnce(
  week: Week,
  kitchenThen: Pick<Kitchen, "stores">,
  tables: Pick<Tables, "dishes" | "foods">,
  date: CivilDate,
): DayJob[] {
  const kitchen = stockBesides(kitchenThen, week);
  const dishes = new Map(tables.dishes.map((dish) => [dish.id, dish]));
  return week.batches.flatMap((batch, at): DayJob[] => {
    const dish = dishes.get(batch.dish);
    if (dish === undefined || batch.putBy !== undefined || batch.date < date) return [];
    const beforeMinutes = Math.ceil(batch.elapsedMinutes) + THAW_IN_WATER_MINUTES;
    return listThawed(week, at, dish, kitchen, tables)
      .filter((job) => dayToBegin(job) < date)
      .map((job) => ({ ...job, beforeMinutes, cautions: [THAW_AT_ONCE] }));
  });
}

type Week = Pick<WeekPlan, "from" | "sittings" | "batches" | "besides">;

function listCooking({ batches }: Week, at: number): DayJob[] {
  const { dish, date, kind, portions, elapsedMinutes, taken } = batches[at] as Week["batches"][number];
  const beforeMinutes = Math.ceil(elapsedMinutes);
  return [{ kind: "cook", date, sitting: kind, dish, batch: at, portions, ...(taken && { taken }), beforeMinutes }];
}

function listLeftovers(
  { sittings, batches }: Week,
  at: number,
  dish: Dish,
  kitchen: Pick<Kitchen, "authorities">,
  { foods, safety }: Pick<Tables, "foods" | "safety">,
): DayJob[] {
  const left = sittings.filter((sitting) => sitting.batch === at && sitting.leftover);
  if (left.length === 0) return [];
  const batch = batches[at] as Week["batches"][number];
  const cookedOn = batch.date;
  const all = cautionsOf(dish, foods, safety, kitchen.authorities.safety, chooseUsed(batch));
  return left.map(({ date, kind, portions, heat, packed }): DayJob => {
    const isHeated = isWarmed(dish, { heat, packed });
    const cautions = pickCautions(all, isHeated);
    const base = { date, sitting: kind, dish: dish.id, batch: at, portions, cookedOn, cautions, beforeMinutes: 0 };
    return { kind: isHeated ? "re-heat" : "take-out", ...base };
  });
}

function pickCautions(all: readonly Caution[], isHeated: boolean): readonly JobCaution[] {
  const codes: readonly string[] = isHeated ? ["eat-within", "re-heat", "re-heat-times"] : ["eat-within", "carry-cold"];
  return all.filter(({ code }) => codes.includes(code)).map(({ code, text, authority }) => ({ code, text, authority }));
}

/** Portions put by: heated, from frozen too; or taken out, having thawed in the fridge since the day before. */
function listPutBy(
  week: Week,
  at: number,
  dish: Dish,
  kitchen: Pick<Kitchen, "putBy" | "authorities">,
  { foods, safety }: Pick<Tables, "foods" | "safety">,
): DayJob[] {
  const sitting = freshOf(week, at);
  const { putBy, portions, uses, elapsedMinutes } = week.batches[at] as Week["batches"][number];
  if (sitting === undefined || putBy === undefined) return [];
  const own = kitchen.putBy.filter(({ id }) => uses.some(({ lot }) => lot === id));
  const within = new Set(own.flatMap((one) => one.foods));
  const choose: Choose = (making) =>
    [making, ...making.alternatives].find(({ food }) => within.has(food)) ??
    (making.optional && within.size > 0 ? undefined : making);
  const isHeated = isWarmed(dish, sitting);
  // Days since the cooking are counted by what was put by itself.
  const ofDish = pickCautions(cautionsOf(dish, foods, safety, kitchen.authorities.safety, choose), isHeated).filter(
    ({ code }) => code !== "eat-within",
  );
  const [cookedOn] = own.map((one) => one.cookedOn).sort();
  const base = { date: sitting.date, sitting: sitting.kind, dish: dish.id, batch: at } as const;
  const thawing: DayJob = { ...base, kind: "thaw", putBy: "freezer", foods: [], beforeMinutes: THAW_MINUTES };
  return [
    ...(putBy === "freezer" && !isHeated ? [thawing] : []),
    {
      ...base,
      kind: isHeated ? "re-heat" : "take-out",
      portions,
      putBy,
      ...(cookedOn !== undefined && { cookedOn }),
      cautions: [...ofDish, PUT_BY_CAUTION],
      beforeMinutes: isHeated ? Math.ceil(elapsedMinutes) : 0,
    },
  ];
}

/** Steps done ahead, each with the minutes of all that hangs on it. */
function listBegun({ batches }: Week, at: number, dish: Dish, { foods }: Pick<Tables, "foods">, pace: Pace): DayJob[] {
  const { date, kind, portions, elapsedMinutes } = batches[at] as Week["batches"][number];
  return listBegunSteps(dish, portions, pace).map(({ step, untilCooking }): DayJob => {
    const thaws = step.kind === "rest" && step.foods.some((food) => isFrozen(foods.get(food)));
    return {
      kind: thaws ? "thaw" : step.kind === "soak" ? "soak" : "ahead",
      date,
      sitting: kind,
      dish: dish.id,
      batch: at,
      step: step.id,
      text: step.text,
      foods: step.foods,
      beforeMinutes: Math.ceil(elapsedMinutes) + untilCooking,
    };
  });
}

/**
 * Raw meat and fish that lie in the freezer of the stores, where the dish has no step of its own to thaw them; what is never kept in
 * a fridge is cooked from frozen.
 */
function listThawed(
  { batches }: Week,
  at: number,
  dish: Dish,
  { stores }: Pick<Kitchen, "stores">,
  { foods }: Pick<Tables, "foods">,
): Begun[] {
  const { date, kind, uses, elapsedMinutes } = batches[at] as Week["batches"][number];
  const own = new Set(dish.method.filter(({ ahead }) => ahead).flatMap((step) => step.foods));
  const frozen = uses.filter(({ lot, food }) => {
    const isCold = stores.some(({ id, place }) => id === lot && place === "freezer");
    const facts = foods.get(food);
    const thaws = facts?.hygiene.startsWith("raw-") && facts.keeping.unopened.fridge !== undefined;
    return isCold && thaws && !isFrozen(facts) && !own.has(food);
  });
  if (frozen.length === 0) return [];
  const names = [...new Set(frozen.map(({ food }) => food))];
  const beforeMinutes = Math.ceil(elapsedMinutes) + THAW_MINUTES;
  return [{ kind: "thaw", date, sitting: kind, dish: dish.id, batch: at, foods: names, beforeMinutes }];
}
