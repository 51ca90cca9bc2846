import { toCanonicalText } from "./settleTwins.ts";

const PRIME = 0x01000193;
/** The first is the offset basis of the standard; the second only has to be another. */
const BASES = [0x811c9dc5, 0x01234567];

/**
 * A short word, of digits and small letters, for what a value says: the same on every device whatever the order of its keys,
 * and another for another value but for one chance in 2^64. It keeps files apart and guards nothing.
 * **Source**: FNV-1a of 32 bits, The FNV Non-Cryptographic Hash Algorithm (RFC 9923; from memory), taken twice over UTF-16 units.
 */
export function fingerprintOf(value: unknown): string {
  const text = toCanonicalText(value);
  return BASES.map((basis) => {
    let hash = basis;
    for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), PRIME);
    return (hash >>> 0).toString(36).padStart(7, "0");
  }).join("");
}
