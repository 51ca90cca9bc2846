/** The middle value, the lower one of two; NaN of nothing. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[(sorted.length - 1) >> 1] ?? Number.NaN;
}

export function maximumOf(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), 0);
}
