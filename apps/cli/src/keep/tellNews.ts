import { menuOn, type RecordState, weekNews } from "halfloaf/kitchen/record";
import { tellNewsOfWeek } from "../words/keepWords.ts";
import type { OpenKeep } from "./openKeep.ts";

/** How many things came out otherwise than the accepted week of the day takes account of; 0 where no week rules the day. */
export function countNews({ day }: Pick<OpenKeep, "day">, state: RecordState): number {
  const menu = menuOn(state, day);
  return menu === undefined ? 0 : weekNews(state, menu.week, day).length;
}

/** What came out otherwise than the accepted week has it, and how to plan it again; nothing where all is as planned. */
export function tellNews(open: Pick<OpenKeep, "day" | "folder">, state: RecordState): string[] {
  const count = countNews(open, state);
  return count === 0 ? [] : [tellNewsOfWeek(count, open.folder)];
}
