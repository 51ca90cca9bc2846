import { deviceOf, numberOf } from "halfloaf/kitchen/record";

/** The ids of rows by their writer, each with its numbers as runs: `1-57,59`. */
export function toNumberRuns(ids: Iterable<string>): Record<string, string> {
  const numbers = new Map<string, number[]>();
  for (const id of ids) {
    const list = numbers.get(deviceOf(id));
    if (list === undefined) numbers.set(deviceOf(id), [numberOf(id)]);
    else list.push(numberOf(id));
  }
  return Object.fromEntries([...numbers].map(([writer, list]) => [writer, tellRuns(list.sort((a, b) => a - b))]));
}

function tellRuns(sorted: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && number <= last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(",");
}

/** Tells whether a number is in runs. What is no run holds nothing. */
export function isInRuns(runs: string, number: number): boolean {
  return runs.split(",").some((run) => {
    const [from, to = from] = run.split("-").map(Number);
    return from !== undefined && to !== undefined && number >= from && number <= to;
  });
}
