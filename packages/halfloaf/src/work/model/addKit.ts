import type { WorkUse } from "../problem.ts";
import type { Interval } from "../solver/ConstraintModel.ts";
import { atLeast, negate, TRUE } from "../solver/literal.ts";
import type { RuleId, WorkModel } from "./WorkModel.ts";

/** A use before which the kit may have to be washed: variable of the start of the wash, 0 = a clean one is taken. */
export interface KitWash {
  readonly use: number;
  readonly start: number;
  readonly minutes: number;
}

/**
 * Rings, pans and pots, held from the start of one step to the end of another.
 *
 * Kit that is not washed is a plain resource. Of m pieces that are washed and n > m uses, each use takes either a clean
 * piece, which then counts as held from the very beginning, or a used one, held from the start of its wash:
 *
 *     held [h, end of the use),   h = 0 (clean)  or  h >= 1 with  h + wash <= start of the use,   at most m held,
 *
 * so a used piece is only washed once it is free, and exactly n - m are washed.
 */
export function addKit(model: WorkModel, ignored: ReadonlySet<RuleId>): readonly KitWash[] {
  const { problem } = model;
  const washes: KitWash[] = [];
  for (const [kind, { count, washMinutes }] of problem.kit.entries()) {
    const uses = problem.uses.map((use, index) => ({ ...use, index })).filter((use) => use.kind === kind);
    if (uses.length <= count || ignored.has(`kit ${kind}`)) continue;
    addEnergy(model, uses, count);
    if (washMinutes === undefined) shareKit(model, uses, count);
    else washes.push(...washKit(model, uses, count, washMinutes));
  }
  return washes;
}

/** A piece is held for as long as the lags between its first and its last step take at least. */
function addEnergy(model: WorkModel, uses: readonly WorkUse[], count: number): void {
  const work = uses.map(({ from, to }) => ({
    start: model.startOf(from),
    minutes: model.leastSpan(from, to),
    demand: 1,
    when: TRUE,
  }));
  model.constraints.addEnergyLimit(count, work);
}

function shareKit(model: WorkModel, uses: readonly WorkUse[], count: number): void {
  const { constraints } = model;
  constraints.addCumulative(
    count,
    uses.map(({ from, to }) => held(model, model.startOf(from), to)),
  );
  if (count !== 1) return;
  for (const [k, a] of uses.entries()) {
    for (const b of uses.slice(k + 1)) {
      const isFirst = constraints.addSwitch();
      constraints.addEdge(model.startOf(a.to), model.startOf(b.from), model.minutesOf(a.to), isFirst);
      constraints.addEdge(model.startOf(b.to), model.startOf(a.from), model.minutesOf(b.to), negate(isFirst));
    }
  }
}

function washKit(
  model: WorkModel,
  uses: readonly (WorkUse & { index: number })[],
  count: number,
  minutes: number,
): readonly KitWash[] {
  const { constraints } = model;
  const washes = uses.map(({ index, from }) => {
    const start = constraints.addVariable(0, model.horizon);
    constraints.addEdge(start, model.startOf(from), minutes, atLeast(start, 1));
    return { use: index, start, minutes };
  });
  constraints.addCumulative(
    count,
    uses.map(({ to }, k) => held(model, (washes[k] as KitWash).start, to)),
  );
  const copies = washes.map(({ start }) => ({ variable: model.addCopy(atLeast(start, 1)), weight: 1 }));
  constraints.addLimit(copies, uses.length - count);
  return washes;
}

function held(model: WorkModel, start: number, to: number): Interval {
  return { start, startOffset: 0, end: model.startOf(to), endOffset: model.minutesOf(to), demand: 1, when: TRUE };
}
