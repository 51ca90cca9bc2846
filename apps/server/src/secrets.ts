import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

const LETTERS = "abcdefghijklmnopqrstuvwxyz234567";

/** A name by chance, of 100 bits: nobody guesses one that is in use, but it is no secret. */
export function makeName(): string {
  return Array.from(randomBytes(20), (byte) => LETTERS[byte & 31]).join("");
}

/** A secret of 256 bits, as 43 letters. */
export function makeSecret(): string {
  return randomBytes(32).toString("base64url");
}

/** What is kept of a secret. It has 256 bits of chance, so no slow hash is needed to keep it from being guessed. */
export function hashSecret(secret: string): Uint8Array {
  return new Uint8Array(createHash("sha256").update(secret).digest());
}

const NOBODY = hashSecret(makeSecret());

/** Tells in the same time whatever the answer whether a secret is the one of which this is the hash; never where there is none. */
export function isSecret(secret: string, hash: Uint8Array | undefined): boolean {
  const isSame = timingSafeEqual(hashSecret(secret), hash ?? NOBODY);
  return isSame && hash !== undefined;
}

/** The halves of a credential: a name and a secret. */
export function splitCredential(credential: string): { readonly name: string; readonly secret: string } {
  const at = credential.indexOf(".");
  return { name: credential.slice(0, at), secret: credential.slice(at + 1) };
}
