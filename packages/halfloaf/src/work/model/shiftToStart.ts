import type { BuiltModel } from "./buildWorkModel.ts";

/** The same order of work, begun as early as its first step or wash can be; for a model without latest starts. */
export function shiftToStart(values: Int32Array, built: BuiltModel): Int32Array {
  const { start, constraints, serve } = built.model;
  const moved = [...start, serve, ...built.washesIn(values)];
  const room = moved.map((v) => (values[v] as number) - Math.max(constraints.lows[v] as number, built.earliestWash(v)));
  const shift = Math.min(...room);
  const shifted = values.slice();
  for (const v of moved) shifted[v] = (values[v] as number) - shift;
  return shifted;
}
