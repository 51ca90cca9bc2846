import type { Fault } from "./Fault.ts";
import { findNearest } from "./nearest.ts";
import { quote } from "./valueWords.ts";

/** A name that leads nowhere, with the names it may have been meant for; `where` says where it was looked for. */
export function tellUnknown(noun: string, id: string, ids: readonly string[], where: string): Fault {
  const near = findNearest(id, ids, 3, 0);
  return {
    code: `${noun}-unknown`,
    path: [],
    value: quote(id),
    sentence: `There is no ${noun} ${quote(id)} ${where}.`,
    remedy: near.length > 0 ? `Nearest to it: ${near.join(", ")}.` : "Look the id up in the file.",
  };
}
