import fc from "fast-check";
import { expect, test } from "vitest";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import { coverCosts } from "./coverCosts.ts";
import { LevelCuts } from "./LevelCuts.ts";
import { listMeasures } from "./listMeasures.ts";
import { gatherWeeklyFacts, type WeeklyFacts } from "./WeeklyFacts.ts";

/** Whole levels for all dishes, and units of each food that cover what they need at their least cost. */
function drawWholeLevels(
  facts: WeeklyFacts,
  levels: readonly number[],
): { columns: Map<string, number>; needG: number[] } {
  const columns = new Map<string, number>();
  const needG = facts.supplies.map(() => 0);
  levels.forEach((drawn, dish) => {
    const level = Math.min(drawn, facts.servings[dish]?.most ?? 0, facts.counts[dish]?.length ? 99 : 0);
    if (level === 0) return;
    columns.set(`l ${dish} ${level}`, 1);
    for (const { food, massG } of facts.problem.dishes[dish]?.makings ?? []) {
      needG[food] = (needG[food] as number) + massG * (facts.servings[dish]?.fewestPortions[level] as number);
    }
  });
  return { columns, needG };
}

test("no cut found at any point charges whole levels more than their cheapest cover", () => {
  const fractions = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 60, maxLength: 60 });
  const whole = fc.array(fc.array(fc.nat(3), { minLength: 9, maxLength: 9 }), { minLength: 8, maxLength: 8 });
  let found = 0;
  fc.assert(
    fc.property(arbitraryWeek(), fractions, whole, (problem, shares, choices) => {
      const facts = gatherWeeklyFacts(problem);
      // Levels in fractions and no units at all: whatever is charged is a violation.
      const at = (column: string): number =>
        column.startsWith("l")
          ? (shares[(column.length * 7 + column.charCodeAt(2) * 13 + column.charCodeAt(4)) % 60] as number) / 10
          : 0;
      for (const { row } of new LevelCuts(facts, listMeasures(facts)).separate(at)) {
        found++;
        const [, , measure, food] = row.name.match(/^(lift) (\w) (\d+)/) ?? [];
        for (const levels of choices) {
          const { columns, needG } = drawWholeLevels(facts, levels);
          const need = needG[Number(food)] as number;
          if (need > (facts.reachG[Number(food)] as number)) continue;
          const cheapest = coverCosts(
            facts.supplies[Number(food)] ?? [],
            measure === "c" ? ({ unitMinor }) => unitMinor : ({ tillMinor }) => tillMinor,
            facts.reachG[Number(food)] as number,
          )(need);
          if (!Number.isFinite(cheapest)) continue;
          const units = row.entries.filter(([column]) => column.startsWith("n"));
          const charged = row.entries.reduce(
            (sum, [column, value]) => sum - (column.startsWith("l") ? value * (columns.get(column) ?? 0) : 0),
            0,
          );
          // Units enter with their cost over one scale for the whole row, which the dearest charge or 1 sets.
          const [, scaled] = units[0] ?? ["", 0];
          const supply = facts.supplies[Number(food)]?.[Number(units[0]?.[0].split(" ")[2])];
          const cost = Math.max(0, (measure === "c" ? supply?.unitMinor : supply?.tillMinor) ?? 0);
          if (cost === 0) continue;
          expect((charged * cost) / scaled).toBeLessThanOrEqual(cheapest + 1e-6);
        }
      }
    }),
    { numRuns: 150 },
  );
  expect(found).toBeGreaterThan(50);
});
