import { checkPlan, type PlanFault } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuProblem } from "../problem.ts";
import { explainImpossible, type WhyImpossible } from "./explainImpossible.ts";
import { findGaps } from "./findGaps.ts";
import type { FoundPlan } from "./searchAgain.ts";
import { compare, type ReasonWish, searchAtLength } from "./whyDish.ts";

/** Why a dish does not stand at a sitting. */
export type WhyNot =
  /** It stands there. */
  | { readonly kind: "served" }
  /** It can't be served there whatever the rest of the plan: what the judge says of it alone. */
  | { readonly kind: "unfit"; readonly faults: readonly PlanFault[] }
  /** The best plan found with it there, and what that costs more (minor units; below 0 where it is cheaper). */
  | { readonly kind: "dearer"; readonly extraMinor: number; readonly found: FoundPlan; readonly moves: number }
  /** No plan was found with it there; which limits that breaks. */
  | { readonly kind: "breaks"; readonly why: WhyImpossible; readonly moves: number };

const USUAL_MOVES = 4000;

/** What becomes of a plan when a dish is pinned to a sitting. */
export function whyNot(
  problem: MenuProblem,
  plan: MenuPlan,
  dish: number,
  sitting: number,
  { seed, moves = USUAL_MOVES }: ReasonWish,
): WhyNot {
  const isIt = (other: number): boolean => familyOf(problem, other) === familyOf(problem, dish);
  if (plan.batches.some((batch) => isIt(batch.dish) && batch.sittings.includes(sitting))) return { kind: "served" };
  const faults = findUnfit(problem, dish, sitting);
  if (faults.length > 0) return { kind: "unfit", faults };
  const others = problem.sittings[sitting]?.dishes.filter((other) => other !== dish && isIt(other)) ?? [];
  const ways = [dish, ...others];
  const sittings = problem.sittings.map((one, k) => (k === sitting ? { ...one, dishes: ways } : one));
  const pinned = { ...problem, sittings };
  const gaps = findGaps(pinned);
  if (gaps.length > 0) return { kind: "breaks", why: { kind: "gaps", gaps }, moves: 0 };
  const answer = searchAtLength(pinned, placeDish(plan, dish, sitting), { seed, moves });
  const { moves: made, nearest: start } = answer;
  const tell = (best: MenuPlan | undefined): WhyNot | undefined => {
    const { extraMinor, found } = compare(pinned, best, checkPlan(problem, plan).money.totalMinor);
    return extraMinor === undefined || found === undefined
      ? undefined
      : { kind: "dearer", extraMinor, found, moves: made };
  };
  const dearer = tell(answer.best);
  if (dearer) return dearer;
  const why = explainImpossible(pinned, { seed, ...(start && { start }) });
  // A search with loosened limits may come upon a plan that keeps them all.
  return (why.kind === "possible" && tell(why.found.plan)) || { kind: "breaks", why, moves: made };
}

/** The plan's menu with a dish put at a sitting in place of the one there. */
function placeDish(plan: MenuPlan, dish: number, sitting: number): Pick<MenuPlan, "batches" | "trips"> {
  const batches = plan.batches.map((batch) => ({ ...batch, sittings: batch.sittings.filter((k) => k !== sitting) }));
  return {
    trips: plan.trips,
    batches: [...batches.filter(({ sittings }) => sittings.length > 0), { dish, sittings: [sitting] }],
  };
}

const UNFIT = new Set(["dish-unfit", "packed"]);

/** What forbids a dish at a sitting both when it is cooked for it and when it is left over from before. */
function findUnfit(problem: MenuProblem, dish: number, sitting: number): PlanFault[] {
  const alone = { batches: [{ dish, sittings: [sitting] }], trips: [], purchases: [], uses: [] };
  const { faults } = checkPlan(problem, alone);
  return faults.filter(({ code, path }) => path[0] === "batches" && path[1] === 0 && UNFIT.has(code));
}
