import {
  LocalSearch,
  type MenuCooking,
  type MenuPlan,
  type ReplanOptions,
  type ReplanOutcome,
  replan,
  toRemainder,
  type UnplannedWeek,
} from "../../menu/index.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { NEVER_MINUTES, stateTogether, timeTogether } from "./stateTogether.ts";

/** A plan whose cookings are all known, and the problem with what was learned of them on the way. */
export interface SettledWeek {
  readonly stated: KitchenProblem;
  readonly outcome: ReplanOutcome;
}

/** Plans tried before dishes of whose cooking at once nothing is known are taken to be cooked one after the other. */
const HOPEFUL_ROUNDS = 3;
const MOST_ROUNDS = 12;
/** Moves of a search that learns what else can be cooked at once, and its temperatures in minor units. */
const LEARNING = { moves: 20_000, hotMinor: 30, coldMinor: 3 };
/** Cookings that one such search has timed; it stays away from any further one. */
const MOST_LEARNED = 24;

/**
 * Plans a week again until all that its plan cooks at once is done in time by an order of work of its own. The planner
 * knows at first no more of such a cooking than that it takes no less than its longest dish and its greatest load, so each
 * round times what the plan has cooked and tells the planner; a plan that stands with that is kept as it is. `stated` is the
 * meaning of the week's indices, without what is known of cookings. Decision 0006.
 */
export function settleTogether(
  of: { readonly stated: KitchenProblem; readonly kitchen: Kitchen; readonly tables: Tables },
  week: UnplannedWeek,
  options: ReplanOptions,
): SettledWeek {
  const { kitchen, tables } = of;
  let stated = stateTogether({ ...of.stated, problem: week.problem }, week.plan, kitchen, tables);
  for (let round = 1; ; round++) {
    const outcome = replan({ ...week, problem: stated.problem }, options);
    if (outcome.kind === "none") return { stated, outcome };
    const { plan, moves } = outcome;
    const exact = stateTogether(stated, plan, kitchen, tables);
    if (exact === stated) return { stated, outcome };
    const { faults, money } = options.judge(exact.problem, plan);
    if (faults.length === 0) return { stated: exact, outcome: { ...outcome, moneyMinor: money.totalMinor } };
    if (round === MOST_ROUNDS) return { stated: exact, outcome: { kind: "none", gaps: [], leastBroken: plan, moves } };
    stated = learnAround({ stated: exact, kitchen, tables }, week, plan, options.seed ?? 1);
    if (round >= HOPEFUL_ROUNDS) stated = { ...stated, problem: { ...stated.problem, isApart: true } };
  }
}

/** The problem with what is cooked at once in good menus near a plan. */
function learnAround(
  { stated, kitchen, tables }: { readonly stated: KitchenProblem; readonly kitchen: Kitchen; readonly tables: Tables },
  week: UnplannedWeek,
  plan: MenuPlan,
  seed: number,
): KitchenProblem {
  const rest = toRemainder({ ...week, problem: stated.problem, plan });
  const learned: MenuCooking[] = [];
  const search = new LocalSearch(rest.problem, {
    seed,
    timeTogether: (dishes) => {
      if (learned.length === MOST_LEARNED) return { dishes, elapsedMinutes: NEVER_MINUTES, washMinutes: 0 };
      const cooking = timeTogether(stated, dishes, kitchen, tables);
      learned.push(cooking);
      return cooking;
    },
  });
  if (search.gaps.length > 0) return stated;
  search.goTo(rest.plan);
  search.fall(LEARNING);
  const { problem } = stated;
  const isOfWhole = ({ dishes }: MenuCooking): boolean => dishes.every(({ dish }) => dish < problem.dishes.length);
  return { ...stated, problem: { ...problem, cookings: [...(problem.cookings ?? []), ...learned.filter(isOfWhole)] } };
}
