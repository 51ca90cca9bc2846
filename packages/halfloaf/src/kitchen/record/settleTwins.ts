/**
 * Which of two rows of one id counts: no device writes two, so they are the same, or a file was tampered with or a device
 * copied. Then the one whose text, keys in order, sorts first counts, on every device alike.
 */
export function settleTwins(first: unknown, second: unknown): "same" | "first" | "second" {
  if (first === second) return "same";
  const [a, b] = [toCanonicalText(first), toCanonicalText(second)];
  if (a === b) return "same";
  return a < b ? "first" : "second";
}

/** JSON with the keys of every object in order, and without what is undefined. */
export function toCanonicalText(value: unknown): string {
  return JSON.stringify(value, (_, each: unknown) =>
    typeof each === "object" && each !== null && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  );
}
