import type { MenuDish } from "../problem.ts";
import type { SittingKind } from "./groupSittings.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { ServingCount, WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Different dishes and main ingredients at the sittings that count for variety.
 *
 *     v[r] <= y[r],   v[r] <= sum of x[r,c] over those kinds,   sum over r of v[r] >= distinct
 *     sum of x[r,c] over those kinds and the dishes of one main ingredient <= mainMax
 */
export function addVariety(model: ModelBuilder, facts: WeeklyFacts): void {
  const { limits } = facts.problem;
  const counted = facts.counts.map((counts) => counts.filter(({ kind }) => (facts.kinds[kind] as SittingKind).variety));
  const byMain = new Map<number, ServingCount[]>();
  const marks: (readonly [string, number])[] = [];
  counted.forEach((counts, r) => {
    if (counts.length === 0) return;
    const { main } = facts.problem.dishes[r] as MenuDish;
    byMain.set(main, [...(byMain.get(main) ?? []), ...counts]);
    marks.push([markDish(model, facts, counts, r), 1]);
  });
  if (limits.distinct > 0) model.atLeast("distinct", limits.distinct, marks);
  for (const [main, counts] of byMain) {
    if (counts.reduce((sum, { most }) => sum + most, 0) <= limits.mainMax) continue;
    model.atMost(
      `main ${main}`,
      limits.mainMax,
      counts.map(({ column }) => [column, 1] as const),
    );
  }
}

/** The column that says whether the dish is counted: y[r] itself where it is served nowhere else. */
function markDish(model: ModelBuilder, facts: WeeklyFacts, counts: readonly ServingCount[], r: number): string {
  if (counts.length === facts.counts[r]?.length) return `y ${r}`;
  const mark = model.column(`v ${r}`, 0, 1);
  model.atMost(`mark use ${r}`, 0, [
    [mark, 1],
    [`y ${r}`, -1],
  ]);
  model.atMost(`mark count ${r}`, 0, [[mark, 1], ...counts.map(({ column }) => [column, -1] as const)]);
  return mark;
}
