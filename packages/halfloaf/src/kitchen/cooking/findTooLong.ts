import { orderSteps, type Step } from "../../dish/index.ts";
import type { Cooking } from "./Cooking.ts";
import { followFood } from "./foodState.ts";
import { solveCooking, stopAfter, type TimedCooking } from "./solveCooking.ts";

/** A step that could be done earlier in the day, with all that must be done before it, and what that saves. */
export interface EarlierStep {
  readonly dish: number;
  readonly step: Step["id"];
  /** Steps of the same dish that go with it. */
  readonly along: readonly Step["id"][];
  readonly savedMinutes: number;
}

/** A cooking that takes longer than there is time for. */
export interface TooLong {
  readonly byMinutes: number;
  /** What could be done earlier, the most saved first; those that save nothing are left out. */
  readonly earlier: readonly EarlierStep[];
}

/** What can be made ready hours before and kept in the fridge, as long as no raw meat, fish or egg is in it. */
const EARLY: ReadonlySet<Step["kind"]> = new Set<Step["kind"]>([
  "wash",
  "cut",
  "grate",
  "mix",
  "knead",
  "soak",
  "chill",
]);
const MOST_QUESTIONS = 40;

/**
 * By how much a cooking is too long for the minutes at hand, and which steps to move to an earlier hour, each with what
 * the rest then saves by an order of work of its own; undefined where it is not too long.
 */
export function findTooLong({ cooking, plan }: TimedCooking, atHandMinutes: number): TooLong | undefined {
  const byMinutes = plan.serveMinutes - atHandMinutes;
  if (byMinutes <= 0) return undefined;
  const earlier = cooking.wish.dishes.flatMap((_, dish) => listEarly(cooking, dish));
  const saving = earlier.flatMap(({ indices, ...step }): EarlierStep[] => {
    const serve = serveWithout(cooking, indices);
    return serve === undefined || serve >= plan.serveMinutes
      ? []
      : [{ ...step, savedMinutes: plan.serveMinutes - serve }];
  });
  return { byMinutes, earlier: saving.sort((a, b) => b.savedMinutes - a.savedMinutes) };
}

/** Steps that with all before them are of a kind that keeps. */
function listEarly({ wish, steps }: Cooking, dish: number) {
  const { dish: facts, choose = (making) => making } = wish.dishes[dish] as Cooking["wish"]["dishes"][number];
  const { method } = facts;
  const { precedes } = orderSteps(method);
  const states = followFood(facts, wish.tables.foods, choose);
  const indexOf = (place: number) =>
    steps.findIndex((each) => each.dish === dish && each.step?.id === method[place]?.id);
  const isEarly = (place: number) =>
    EARLY.has((method[place] as Step).kind) && states[place]?.raw.length === 0 && !states[place]?.isHot;
  return [...method.keys()].flatMap((place) => {
    const along = [...method.keys()].filter((other) => precedes[other]?.[place] && indexOf(other) >= 0);
    if (indexOf(place) < 0 || ![place, ...along].every(isEarly)) return [];
    const step = (method[place] as Step).id;
    return [
      { dish, step, along: along.map((other) => (method[other] as Step).id), indices: [place, ...along].map(indexOf) },
    ];
  });
}

/** When the meal is served with some steps done before; undefined where no order of work was found. */
function serveWithout(cooking: Cooking, indices: readonly number[]): number | undefined {
  const steps = cooking.problem.steps.map((step, i) => {
    if (!indices.includes(i)) return step;
    const { board: _, ...rest } = step;
    return { ...rest, minutes: 0, hands: 0 as const };
  });
  const outcome = solveCooking(
    { ...cooking, problem: { ...cooking.problem, steps } },
    { shouldStop: stopAfter(MOST_QUESTIONS) },
  );
  return outcome.kind === "timed" ? outcome.timed.plan.serveMinutes : undefined;
}
