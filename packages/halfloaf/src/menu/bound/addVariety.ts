import { familyOf, type MenuDish } from "../problem.ts";
import type { SittingKind } from "./groupSittings.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { ServingCount, WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Different dishes and main ingredients at the sittings that count for variety, and the uses of dishes that are one family.
 *
 *     v[r] <= y[r],   v[r] <= sum of x[r,c] over those kinds,   sum over r of v[r] >= distinct
 *     for a family F of more than one dish: sum of x[r,c] over r in F <= maxUses, and in place of its v[r] a u[F] <= 1,
 *     u[F] <= sum over r in F of v[r]
 *     sum of x[r,c] over those kinds and the dishes of one main ingredient <= mainMax
 */
export function addVariety(model: ModelBuilder, facts: WeeklyFacts): void {
  const { limits } = facts.problem;
  addFamilyUses(model, facts);
  const counted = facts.counts.map((counts) => counts.filter(({ kind }) => (facts.kinds[kind] as SittingKind).variety));
  const byMain = new Map<number, ServingCount[]>();
  const marks = new Map<number, string[]>();
  counted.forEach((counts, r) => {
    if (counts.length === 0) return;
    const { main } = facts.problem.dishes[r] as MenuDish;
    byMain.set(main, [...(byMain.get(main) ?? []), ...counts]);
    const family = familyOf(facts.problem, r);
    marks.set(family, [...(marks.get(family) ?? []), markDish(model, facts, counts, r)]);
  });
  const different = [...marks].map(([family, own]) => [markFamily(model, family, own), 1] as const);
  if (limits.distinct > 0) model.atLeast("distinct", limits.distinct, different);
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
  model.lazy(`mark use ${r}`, 0, [
    [mark, -1],
    [`y ${r}`, 1],
  ]);
  model.atMost(`mark count ${r}`, 0, [[mark, 1], ...counts.map(({ column }) => [column, -1] as const)]);
  return mark;
}

/** The column that says whether any of a family is counted; for a dish without a family its own. */
function markFamily(model: ModelBuilder, family: number, marks: readonly string[]): string {
  if (marks.length === 1) return marks[0] as string;
  const mark = model.column(`u ${family}`, 0, 1);
  model.atMost(`mark family ${family}`, 0, [[mark, 1], ...marks.map((own) => [own, -1] as const)]);
  return mark;
}

/** All dishes of a family together within the uses that each of them may have. */
function addFamilyUses(model: ModelBuilder, { problem, counts }: WeeklyFacts): void {
  const members = new Map<number, (readonly ServingCount[])[]>();
  counts.forEach((own, r) => {
    const family = familyOf(problem, r);
    if (own.length > 0) members.set(family, [...(members.get(family) ?? []), own]);
  });
  for (const [family, own] of members) {
    if (own.length < 2) continue;
    const { maxUses } = problem.dishes[family] as MenuDish;
    model.atMost(
      `family ${family}`,
      maxUses,
      own.flat().map(({ column }) => [column, 1] as const),
    );
  }
}
