import type { DishServings } from "./reckonServings.ts";
import type { ServingCount, WeeklyFacts } from "./WeeklyFacts.ts";

/** One whole number of servings of a dish, with what it needs of a food at least and the columns that it raises. */
export interface UseOption {
  readonly massG: number;
  /** Positions of columns, each as often as the option raises it by 1. */
  readonly marks: readonly number[];
}

/** Values below this count as none. */
export const NO_SHARE = 1e-6;
const MOST_COMBINATIONS = 60;

/** Numbers of servings at some kinds of sitting. */
interface Combination {
  readonly servings: number;
  readonly portions: number;
  readonly marks: readonly number[];
}

/**
 * The whole numbers of servings that a dish may have, told by the columns that are above 0 at a point: its levels and,
 * where sittings differ in portions, its counts at kinds of sitting. `place` gives a column its position; one that gets
 * none is not told of. What is not told is taken for as small as it can be.
 */
export function listOptions(
  facts: WeeklyFacts,
  { dish, massG }: { readonly dish: number; readonly massG: number },
  point: (column: string) => number,
  place: (column: string) => number,
): UseOption[] {
  const { most, fewestPortions } = facts.servings[dish] as DishServings;
  const counts = facts.counts[dish] ?? [];
  const levels = (facts.levels[dish] ?? []).map((column) => (point(column) > NO_SHARE ? place(column) : undefined));
  const differ = counts.some(({ portions }) => portions !== counts[0]?.portions);
  if (!differ)
    return levels.flatMap((level, i): UseOption[] =>
      level === undefined ? [] : [{ massG: massG * (fewestPortions[i + 1] as number), marks: [level] }],
    );
  const { told, combinations } = combine(counts, most, point, place);
  const others = counts
    .filter((count) => !told.has(count))
    .flatMap(({ portions, most: here }) => Array<number>(here).fill(portions))
    .sort((a, b) => a - b);
  return combinations.flatMap(({ servings, portions, marks }) => {
    const options: UseOption[] = servings > 0 ? [{ massG: massG * portions, marks }] : [];
    let reached = portions;
    for (let k = servings; k <= most && (k === servings || others[k - servings - 1] !== undefined); k++) {
      if (k > servings) reached += others[k - servings - 1] as number;
      const level = levels[k - 1];
      const least = Math.max(reached, fewestPortions[k] as number);
      if (level !== undefined) options.push({ massG: massG * least, marks: [...marks, level] });
    }
    return options;
  });
}

/** All numbers of servings, together no more than `most`, at kinds that the point serves most, as many as stay few enough. */
function combine(
  counts: readonly ServingCount[],
  most: number,
  point: (column: string) => number,
  place: (column: string) => number,
): { told: ReadonlySet<ServingCount>; combinations: readonly Combination[] } {
  const told = new Set<ServingCount>();
  let combinations: Combination[] = [{ servings: 0, portions: 0, marks: [] }];
  const served = counts
    .map((count) => ({ count, value: point(count.column) }))
    .filter(({ value }) => value > NO_SHARE)
    .sort((a, b) => b.value - a.value);
  for (const { count } of served) {
    const { column, portions, most: here } = count;
    if (combinations.length * (1 + Math.min(here, most)) > MOST_COMBINATIONS) break;
    told.add(count);
    const position = place(column);
    combinations = combinations.flatMap((one) =>
      Array.from({ length: Math.min(here, most - one.servings) + 1 }, (_, n) => ({
        servings: one.servings + n,
        portions: one.portions + n * portions,
        marks: [...one.marks, ...Array<number>(n).fill(position)],
      })),
    );
  }
  return { told, combinations };
}
