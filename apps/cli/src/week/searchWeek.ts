import type { Planner } from "@halfloaf/engine";
import { tellMoney } from "@halfloaf/words/en";
import type { KitchenProblem } from "halfloaf/kitchen";
import { atHighPrices, type MenuPlan, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Terminal } from "../output/Terminal.ts";

/** What to search, for how long, from which seed. */
export interface SearchWish {
  readonly stated: KitchenProblem;
  readonly currency: string;
  readonly seed: number;
  readonly moves: number;
  /** Several searches from other seeds, each in a worker and of so many moves; absent: one, in this thread. */
  readonly beside?: { readonly planner: Planner; readonly searches: number };
  /** Told the money of each better plan. */
  readonly onBetter?: (moneyMinor: number) => void;
}

/** What the search came to. */
export type SearchOutcome =
  | {
      readonly kind: "found";
      readonly plan: MenuPlan;
      /** Seed from which one search of so many moves finds the plan. */
      readonly seed: number;
      readonly moves: number;
      readonly moneyMinor: number;
      readonly stopped: boolean;
    }
  /** There is a sitting that no dish of the kitchen is for; nothing was searched. */
  | { readonly kind: "gaps"; readonly sittings: readonly number[] }
  /** No menu kept every limit; `plan` is the one that broke them least. */
  | { readonly kind: "broken"; readonly plan: MenuPlan | undefined; readonly moves: number; readonly stopped: boolean };

/**
 * Searches for a plan. The same problem, seed, number of moves and of searches give the same plan, unless a person stops the
 * search; then the best so far counts. Where none is found and estimated prices may rise, it searches once more for packs that
 * stand the rise. Where no worker can be had for several searches, this thread makes one. Progress is shown as talk.
 */
export async function searchWeek(wish: SearchWish, terminal: Terminal): Promise<SearchOutcome> {
  const { problem } = wish.stated;
  const several = wish.beside === undefined ? undefined : await searchBeside(wish, wish.beside, terminal);
  if (several !== undefined) return several;
  const outcome = await searchProblem(problem, wish, terminal);
  const raised = outcome.kind === "broken" && !outcome.stopped ? atHighPrices(problem) : undefined;
  const again = raised && (await searchProblem(raised, wish, terminal));
  if (again?.kind !== "found") return outcome;
  return { ...again, moneyMinor: checkPlan(problem, again.plan).money.totalMinor };
}

/** Searches in workers; undefined where all of them broke down. */
async function searchBeside(
  wish: SearchWish,
  { planner, searches }: NonNullable<SearchWish["beside"]>,
  terminal: Terminal,
): Promise<SearchOutcome | undefined> {
  const { seed, stated } = wish;
  let stopped = false;
  let bestMinor = Number.POSITIVE_INFINITY;
  const running = planner.plan(
    { problem: stated.problem, seed, moves: wish.moves, searches },
    ({ moves, costMinor }) => {
      terminal.showProgress(tellProgress(wish, moves, costMinor));
      if (costMinor === undefined || costMinor >= bestMinor) return;
      bestMinor = costMinor;
      wish.onBetter?.(costMinor);
    },
  );
  const takeOff = terminal.onStop(() => {
    stopped = true;
    running.stop();
  });
  const outcome = await running.outcome;
  terminal.showProgress("");
  takeOff();
  if (outcome.status === "planned") {
    const { plan, costMinor: moneyMinor, moves } = outcome;
    return { kind: "found", plan, seed: outcome.seed, moves, moneyMinor, stopped };
  }
  if (outcome.status !== "none") return undefined;
  const { gaps, leastBroken, moves } = outcome;
  return gaps.length > 0 ? { kind: "gaps", sittings: gaps } : { kind: "broken", plan: leastBroken, moves, stopped };
}

async function searchProblem(problem: MenuProblem, wish: SearchWish, terminal: Terminal): Promise<SearchOutcome> {
  const search = new MenuSearch(problem, wish.seed, { expectedMoves: wish.moves });
  if (search.gaps.length > 0) return { kind: "gaps", sittings: search.gaps };
  let stopped = false;
  const takeOff = terminal.onStop(() => {
    stopped = true;
  });
  let moves = 0;
  let moneyMinor: number | undefined;
  let shown = "";
  while (moves < wish.moves && !stopped) {
    const report = search.advance();
    moves = report.moves;
    moneyMinor = report.costMinor ?? moneyMinor;
    if (report.improved && moneyMinor !== undefined) wish.onBetter?.(moneyMinor);
    const progress = tellProgress(wish, moves, moneyMinor);
    if (progress !== shown) terminal.showProgress(progress);
    shown = progress;
    await terminal.pause();
  }
  terminal.showProgress("");
  takeOff();
  const plan = search.best();
  if (plan === undefined || moneyMinor === undefined)
    return { kind: "broken", plan: search.leastBroken(), moves, stopped };
  return { kind: "found", plan, seed: wish.seed, moves, moneyMinor, stopped };
}

function tellProgress({ moves: all, currency }: SearchWish, moves: number, moneyMinor: number | undefined): string {
  const share = Math.min(100, Math.round((moves / all) * 100));
  const best =
    moneyMinor === undefined
      ? "none within the limits yet"
      : `best so far ${tellMoney(Math.round(moneyMinor), currency)} ${currency}`;
  return `Searching ${share} %: ${best} (Ctrl-C takes the best so far)`;
}
