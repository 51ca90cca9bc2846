/** Uniform numbers in [0, 1), the same sequence for the same seed on every machine. */
export type RandomSource = () => number;

/**
 * A multiply-with-carry generator on two 16-bit halves.
 * **Source**: Marsaglia 1994, "Yet another RNG" (the multipliers 36969 and 18000).
 */
export function createRandomSource(seed: number): RandomSource {
  let high = (Math.imul(seed | 0, 0x9e3779b1) ^ 0x159a55e5) >>> 0 || 1;
  let low = (seed ^ 0x1f123bb5) >>> 0 || 1;
  const next = () => {
    high = (36969 * (high & 0xffff) + (high >>> 16)) >>> 0;
    low = (18000 * (low & 0xffff) + (low >>> 16)) >>> 0;
    return (((high << 16) + low) >>> 0) / 4294967296;
  };
  for (let k = 0; k < 8; k++) next();
  return next;
}
