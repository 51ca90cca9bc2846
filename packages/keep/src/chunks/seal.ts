import { digest } from "lib0/hash/sha256";

/** The SHA-256 digest of the bytes, by which a store knows that they are those that were written. */
export function seal(bytes: Uint8Array): Uint8Array {
  return new Uint8Array(digest(bytes));
}

/** True where the bytes are those that were sealed. */
export function isSealed(bytes: Uint8Array, sealed: Uint8Array): boolean {
  const now = seal(bytes);
  return now.length === sealed.length && now.every((byte, at) => byte === sealed[at]);
}
