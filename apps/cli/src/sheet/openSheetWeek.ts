import type { WeekSource } from "halfloaf/sheet";
import { loadTables } from "../input/loadTables.ts";
import { civilDayOf } from "../keep/civilDayOf.ts";
import { openAccepted } from "../keep/openAccepted.ts";
import { isKept } from "../keep/openFolder.ts";
import { openWeekFile } from "../mend/openWeekFile.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";
import { toNames } from "../words/Names.ts";
import { isKitchenName, planFirst } from "./planFirst.ts";

/** Which week a sheet is made of. */
export interface WeekAsk {
  /** A week's file, the folder of a kept kitchen, whose accepted week is meant, or another kitchen, which is planned first. */
  readonly week: string;
  /** The kitchen of a week's file; absent: the demo of the name in it. */
  readonly kitchen?: string;
  /** A day of the week; of a kept kitchen it says which week is meant, today where it is absent. */
  readonly on?: string;
}

/** Opens the week with its kitchen and the names of everything in it. */
export async function openSheetWeek({ week, kitchen, on }: WeekAsk, terminal: Terminal): Promise<Found<WeekSource>> {
  const found = isKept(week, terminal.cwd)
    ? await openAccepted(week, on ?? civilDayOf(terminal.nowMs()), terminal)
    : isKitchenName(week, terminal.cwd)
      ? await planFirst(week, terminal)
      : await openWeekFile(week, kitchen, terminal, loadTables());
  if (!found.ok) return found;
  const { week: plan, opened } = found.value;
  const { kitchen: of, tables } = opened;
  return { ok: true, value: { week: plan, kitchen: of, tables, names: toNames(of, tables) } };
}
