/**
 * Splits a whole total into whole parts in proportion to weights, so that the parts add up to the total exactly.
 *
 * Each part is its share rounded down; what is left goes, one unit each, to the largest remainders, the earliest first
 * among equal ones. Shares are reckoned exactly, so the answer does not depend on the order of additions. A negative
 * total gives the parts of its opposite, negated. Where every weight is zero all weigh the same.
 * Throws where the total is not whole, a weight is negative or not finite, or there is no part to put a total into.
 * **Source**: the method of largest remainders; Balinski and Young 1982, Fair Representation.
 */
export function splitByLargestRemainder(totalMinor: number, weights: readonly number[]): number[] {
  if (!Number.isSafeInteger(totalMinor)) throw new RangeError(`the total ${totalMinor} is no whole number`);
  const fault = weights.find((weight) => !(Number.isFinite(weight) && weight >= 0));
  if (fault !== undefined) throw new RangeError(`the weight ${fault} is no share`);
  if (weights.length === 0) {
    if (totalMinor === 0) return [];
    throw new RangeError(`there is no part to put ${totalMinor} into`);
  }
  const sign = totalMinor < 0 ? -1 : 1;
  const parts = splitExactly(BigInt(Math.abs(totalMinor)), toWholeWeights(weights));
  return parts.map((part) => (part === 0n ? 0 : sign * Number(part)));
}

/** Weights in the same proportion as whole numbers; a binary fraction becomes whole by doubling it often enough. */
function toWholeWeights(weights: readonly number[]): bigint[] {
  const doublings = weights.map((weight) => {
    let count = 0;
    for (let value = weight; !Number.isInteger(value); value *= 2) count++;
    return count;
  });
  const most = doublings.reduce((a, b) => Math.max(a, b), 0);
  const whole = weights.map((weight, at) => {
    const count = doublings[at] as number;
    // Two steps, since 2 to the power of more than 1023 is no number.
    const half = Math.floor(count / 2);
    return BigInt(weight * 2 ** half * 2 ** (count - half)) << BigInt(most - count);
  });
  return whole.every((weight) => weight === 0n) ? whole.map(() => 1n) : whole;
}

function splitExactly(total: bigint, weights: readonly bigint[]): bigint[] {
  const sum = weights.reduce((a, b) => a + b, 0n);
  const parts = weights.map((weight) => (total * weight) / sum);
  const remainders = weights.map((weight) => (total * weight) % sum);
  const left = Number(total - parts.reduce((a, b) => a + b, 0n));
  const byRemainder = weights.map((_, at) => at);
  byRemainder.sort((a, b) => {
    const [first, second] = [remainders[a] as bigint, remainders[b] as bigint];
    return first === second ? a - b : first > second ? -1 : 1;
  });
  const raised = new Set(byRemainder.slice(0, left));
  return parts.map((part, at) => (raised.has(at) ? part + 1n : part));
}
