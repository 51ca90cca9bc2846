import type { Step } from "./dish.ts";

/** Which step must be finished before which, through others too. */
export interface StepOrder {
  /** `precedes[a][b]` is true where step `a` comes before step `b`; positions are those of the method. */
  readonly precedes: readonly (readonly boolean[])[];
  /** Positions of the steps so that none stands before one it must wait for; else as near the method as that allows. */
  readonly sequence: readonly number[];
  /** Positions of the steps that wait for themselves, directly or through others; none in a sound method. */
  readonly cyclic: readonly number[];
}

/** The order that `after` puts on the steps of a method. An id that names no step is passed over. */
export function orderSteps(method: readonly Pick<Step, "id" | "after">[]): StepOrder {
  const position = new Map(method.map(({ id }, at) => [id, at]));
  const precedes = method.map(() => method.map(() => false));
  for (const [at, { after }] of method.entries()) {
    for (const id of after) {
      const before = position.get(id);
      if (before !== undefined) (precedes[before] as boolean[])[at] = true;
    }
  }
  closeTransitively(precedes);
  const cyclic = method.map((_, at) => at).filter((at) => precedes[at]?.[at]);
  return { precedes, sequence: sortByOrder(precedes), cyclic };
}

/** **Source**: Warshall 1962, A Theorem on Boolean Matrices, J. ACM 9, 11-12. */
function closeTransitively(precedes: boolean[][]): void {
  for (const middle of precedes.keys()) {
    for (const row of precedes) {
      if (!row[middle]) continue;
      for (const to of precedes.keys()) if (precedes[middle]?.[to]) row[to] = true;
    }
  }
}

/** Takes again and again the first step of the method whose predecessors are all taken; rings come last. */
function sortByOrder(precedes: readonly (readonly boolean[])[]): number[] {
  const left = [...precedes.keys()];
  const sorted: number[] = [];
  while (left.length > 0) {
    const ready = left.findIndex((at) => left.every((before) => !precedes[before]?.[at]));
    sorted.push(...left.splice(Math.max(ready, 0), 1));
  }
  return sorted;
}

/**
 * True for each step done hours before the sitting: those marked so, and all that must be finished before one of them.
 * `order` is the order of the same method.
 */
export function markAhead(method: readonly Pick<Step, "ahead">[], order: StepOrder): boolean[] {
  return method.map(({ ahead }, at) => ahead || method.some((other, to) => other.ahead && order.precedes[at]?.[to]));
}
