/** Copies a short column into another of the same length; a loop, as calls cost more for a few dozen figures. */
export function copyInto(to: Float64Array, from: Float64Array): void {
  for (let i = 0; i < from.length; i++) to[i] = from[i] as number;
}
