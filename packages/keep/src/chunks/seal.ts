import { digest } from "lib0/hash/sha256";

/** The SHA-256 digest of the bytes, by which a store knows that they are those that were written. */
export function seal(bytes: Uint8Array): Uint8Array {
  return new Uint8Array(digest(bytes));
}

/** True where the bytes are those that were sealed. */
export function isSealed(bytes: Uint8Array, sealed: Uint8Array): boolean {
  return isSame(seal(bytes), sealed);
}

/** The same, found beside the thread that asks where the browser can: a page that came over plain HTTP can't. */
export async function isStillSealed(bytes: Uint8Array, sealed: Uint8Array): Promise<boolean> {
  const { subtle } = crypto as Partial<Pick<typeof crypto, "subtle">>;
  if (subtle === undefined) return isSealed(bytes, sealed);
  return isSame(new Uint8Array(await subtle.digest("SHA-256", bytes as Uint8Array<ArrayBuffer>)), sealed);
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, at) => byte === b[at]);
}
