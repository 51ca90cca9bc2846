import { readShared } from "./shared.ts";

/** Where it is remembered into which kitchen's database a joining is under way. */
export const JOINING = "halfloaf-joining";

/** The database of a joining that was broken off, its invitation used up already; undefined where there is none. */
export function joiningId(): string | undefined {
  try {
    const id = localStorage.getItem(JOINING);
    return id === null || readShared(id) === undefined ? undefined : id;
  } catch {
    // Storage that is refused remembers nothing.
    return undefined;
  }
}
