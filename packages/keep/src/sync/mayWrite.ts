import type { Role } from "./messages.ts";

/**
 * True where a device of that role may write a row of that kind. A cook writes what happens; what the kitchen is, and which
 * week counts, is for keepers to say; a reader writes nothing.
 */
export function mayWrite(role: Role, { kind }: { readonly kind: string }): boolean {
  if (role === "keeper") return true;
  return role === "cook" && kind !== "edited" && kind !== "menu-accepted";
}
