import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import type { Choice, ChoiceJudge } from "./Choice.ts";
import { measurePlan } from "./measurePlan.ts";
import { type Against, listSteps, type Step } from "./steps.ts";

/** How choices are looked for. */
export interface FrontierOptions {
  readonly judge: ChoiceJudge;
  readonly seed?: number;
  /** Moves for each step. */
  readonly moves: number;
}

/** The choices after some of the steps. */
export interface FrontierReport {
  readonly done: number;
  readonly steps: number;
  /** From the cheapest on; each is dearer than the one before and better in what money is weighed against. */
  readonly choices: readonly Choice[];
}

/**
 * Plans between which only money and one other thing decide: minutes, different dishes or shortfalls. Each step searches
 * the same problem with that thing weighed more or asked for more, and begins at the plan found before; the report after
 * each step holds only sound plans that no other beats in both. Step by step, so that the caller can stop at any time.
 * Nothing is proven: a longer search may find better ones. Yields nothing where a sitting has no dish.
 */
export function* frontier(problem: MenuProblem, against: Against, options: FrontierOptions): Generator<FrontierReport> {
  const steps = listSteps(problem, against);
  const better = BETTER[against];
  let choices: readonly Choice[] = [];
  let last: MenuPlan | undefined;
  for (const [done, step] of steps.entries()) {
    const plan = searchStep(step, options, last);
    last = plan ?? last;
    const found = plan && measurePlan(problem, plan, options.judge);
    if (found) choices = addChoice(choices, found, better);
    if (found || done === steps.length - 1) yield { done: done + 1, steps: steps.length, choices };
  }
}

/** What is weighed against money, the more of it the better. */
const BETTER: Readonly<Record<Against, (choice: Choice) => number>> = {
  minutes: ({ minutes }) => -minutes,
  variety: ({ distinct }) => distinct,
  intake: ({ shortfallMinor }) => -shortfallMinor,
};

/** Amounts that differ by less are the same. */
const SLACK = 1e-6;

function searchStep(
  { problem }: Step,
  { seed = 1, moves }: FrontierOptions,
  start: MenuPlan | undefined,
): MenuPlan | undefined {
  const search = new MenuSearch(problem, seed, { expectedMoves: moves, ...(start && { start }) });
  if (search.gaps.length > 0) return undefined;
  for (let made = 0; made < moves; ) made = search.advance().moves;
  return search.best();
}

/** The choices with one more, without those that another beats or equals in both; from the cheapest on. */
export function addChoice(
  choices: readonly Choice[],
  added: Choice,
  better: (choice: Choice) => number,
): readonly Choice[] {
  const beats = (a: Choice, b: Choice): boolean =>
    a.moneyMinor <= b.moneyMinor + SLACK && better(a) >= better(b) - SLACK;
  if (choices.some((choice) => beats(choice, added))) return choices;
  return [...choices.filter((choice) => !beats(added, choice)), added].sort((a, b) => a.moneyMinor - b.moneyMinor);
}
