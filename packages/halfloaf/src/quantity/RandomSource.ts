/** Uniform numbers in [0, 1), the same sequence for the same seed on every machine. */
export type RandomSource = () => number;

/**
 * A small counter-based generator whose every output is a mix of a Weyl sequence.
 * **Source**: the 32-bit finaliser with constants 0x21f0aaad and 0x735a2d97 (C. Wellons, hash-prospector, public domain).
 */
export function createRandomSource(seed: number): RandomSource {
  let counter = Math.imul(seed | 0, 0x9e3779b1) | 0;
  return () => {
    counter = (counter + 0x9e3779b9) | 0;
    let x = counter;
    x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
    x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
    return ((x ^ (x >>> 15)) >>> 0) / 4294967296;
  };
}
