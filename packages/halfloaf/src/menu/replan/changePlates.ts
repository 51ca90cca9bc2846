import type { MenuPlan, PlannedBatch, Use } from "../plan.ts";
import type { MenuProblem, MenuSitting, MenuWish } from "../problem.ts";

/** A problem and its plan, always changed together. */
export interface Week {
  readonly problem: MenuProblem;
  readonly plan: MenuPlan;
}

/** The week with other standard portions at a sitting; its batch takes of each of its lots in proportion. */
export function setPortions({ problem, plan }: Week, sitting: number, portions: number): Week {
  const sittings = problem.sittings.map((each, k): MenuSitting => (k === sitting ? { ...each, portions } : each));
  const batchPortions = Math.max(problem.limits.batchPortions, portions);
  const changed = { ...problem, sittings, limits: { ...problem.limits, batchPortions } };
  const batch = plan.batches.findIndex((each) => each.sittings.includes(sitting));
  const [before, after] = [problem, changed].map((each) => portionsOf(each, plan.batches[batch]));
  return { problem: changed, plan: scaleUses(plan, batch, before ? (after as number) / before : 1) };
}

function portionsOf({ sittings }: MenuProblem, batch: PlannedBatch | undefined): number {
  return (batch?.sittings ?? []).reduce((sum, k) => sum + (sittings[k]?.portions ?? 0), 0);
}

function scaleUses(plan: MenuPlan, batch: number, factor: number): MenuPlan {
  const uses = plan.uses.map((use): Use => (use.batch === batch ? { ...use, massG: use.massG * factor } : use));
  return { ...plan, uses };
}

/**
 * The week without some sittings. A batch shrinks by their plates and is cooked at the next of its sittings; one that fed
 * nothing else falls away with all it took. Gives also which sitting each remaining one was.
 */
export function dropSittings(
  { problem, plan }: Week,
  dropped: ReadonlySet<number>,
): Week & { readonly sittingBefore: readonly number[] } {
  const sittingBefore = problem.sittings.flatMap((_, k) => (dropped.has(k) ? [] : [k]));
  const indexOf = new Map(sittingBefore.map((before, k) => [before, k]));
  const keep = (list: readonly number[]): number[] => list.flatMap((k) => indexOf.get(k) ?? []);
  const sittings = sittingBefore.map((k) => problem.sittings[k] as MenuSitting);
  const profiles = problem.profiles.map((profile) => ({ ...profile, sittings: keep(profile.sittings) }));
  const counted = sittings.filter(({ variety }) => variety).length;
  const limits = { ...problem.limits, distinct: Math.min(problem.limits.distinct, counted) };
  const shrink = (wish: MenuWish): MenuWish => {
    const left = keep(wish.sittings);
    return { ...wish, sittings: left, ...(wish.least !== undefined && { least: Math.min(wish.least, left.length) }) };
  };
  let smaller = plan;
  plan.batches.forEach((batch, at) => {
    const left = portionsOf(problem, { ...batch, sittings: batch.sittings.filter((k) => !dropped.has(k)) });
    smaller = scaleUses(smaller, at, left / portionsOf(problem, batch));
  });
  const batches = plan.batches.map((batch) => ({ ...batch, sittings: keep(batch.sittings) }));
  return {
    problem: { ...problem, sittings, profiles, limits, ...(problem.wishes && { wishes: problem.wishes.map(shrink) }) },
    plan: dropEmptyBatches({ ...smaller, batches }),
    sittingBefore,
  };
}

function dropEmptyBatches(plan: MenuPlan): MenuPlan {
  const kept = plan.batches.flatMap((batch, at) => (batch.sittings.length > 0 ? [at] : []));
  const indexOf = new Map(kept.map((before, at) => [before, at]));
  const uses = plan.uses.flatMap((use): Use[] => {
    const batch = indexOf.get(use.batch);
    return batch === undefined || use.massG <= 0 ? [] : [{ ...use, batch }];
  });
  return { ...plan, batches: kept.map((at) => plan.batches[at] as PlannedBatch), uses };
}
