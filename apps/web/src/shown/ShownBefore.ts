import { fingerprintOf } from "halfloaf/kitchen/record";

/** A screen as a start would show it, and what it was true of. */
export interface ShownBefore {
  /** Id of the kitchen, and the last piece of its store that the screen knew of. */
  readonly kitchen: string;
  readonly seq: number;
  /** All else that it follows from, as a fingerprint: some of what this device remembers is a secret that lies in one place only. */
  readonly rest: string;
  readonly html: string;
}

const KEY = "halfloaf-shown ";
/** What is larger is not kept: reading it would take longer than it gains. */
const MOST_LETTERS = 200_000;

/** The screen of that path as it was shown before; undefined where it is not kept or can't be true any more. */
export function readShown(path: string, kitchen: string, day: string): ShownBefore | undefined {
  try {
    const known = JSON.parse(localStorage.getItem(KEY + path) ?? "null") as ShownBefore | null;
    return known?.kitchen === kitchen && known.rest === restOf(day) ? known : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a screen as it is shown now; where storage is refused or it is too large, none of that path is kept. */
export function writeShown(path: string, day: string, shown: Omit<ShownBefore, "rest">): void {
  try {
    localStorage.removeItem(KEY + path);
    if (shown.html.length <= MOST_LETTERS)
      localStorage.setItem(KEY + path, JSON.stringify({ ...shown, rest: restOf(day) } satisfies ShownBefore));
  } catch {
    // A start without it is slower and nothing else.
  }
}

/** Forgets all that was shown before. */
export function forgetShown(): void {
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith(KEY)) localStorage.removeItem(key);
  } catch {
    // Storage that is refused holds none.
  }
}

/** The day, the build of the app by the name of its script and its tables, the languages, and what the device remembers. */
function restOf(day: string): string {
  const remembered = Object.entries(localStorage).filter(([key]) => !key.startsWith(KEY));
  const build = [import.meta.url, import.meta.env.STARTER_TABLES];
  return fingerprintOf([day, build, navigator.languages, Object.fromEntries(remembered)]);
}
