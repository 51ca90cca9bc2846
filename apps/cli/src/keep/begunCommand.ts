import { beginAhead, type JobAhead, menuOn, remindersOf } from "halfloaf/kitchen/record";
import { addDays } from "halfloaf/quantity";
import { findDish } from "../card/findDish.ts";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { refuse } from "../words/Fault.ts";
import { tellNothingToBegin, tellNoWeekThen } from "../words/keepFaultWords.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What was soaked, put to thaw or begun for later sittings. */
export interface BegunAsk extends KeepAsk {
  /** Ids or titles; none = all that the day has somebody begin. */
  readonly dishes: readonly string[];
}

/** Books what was done ahead; what lies frozen in the stores goes into the fridge to thaw. */
export function begunCommand(ask: BegunAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const named = ask.dishes.map((word) => findDish(word, open.tables.dishes));
    const faults = named.flatMap((one) => (one.ok ? [] : one.faults));
    if (faults.length > 0) return { ok: false, faults };
    const dishes = named.flatMap((one) => (one.ok ? [one.value.id] : []));
    const jobs = listAhead(open).filter(({ dish }) => dishes.length === 0 || dishes.includes(dish));
    if (jobs.length === 0)
      return refuse(
        menuOn(open.state, open.day) === undefined && menuOn(open.state, addDays(open.day, 1)) === undefined
          ? tellNoWeekThen(open.day)
          : tellNothingToBegin(),
      );
    return writeAct(open, terminal.page, (pen) => {
      const rows = jobs.flatMap((job) => {
        const week = menuOn(open.state, job.date)?.week;
        if (week === undefined) return [];
        // Each takes out of the freezer what those before it left there.
        const begun = beginAhead(open.kept.events.state, week, job, open.day, pen);
        open.kept.events.add(begun);
        return begun;
      });
      return { ok: true, value: { rows } };
    });
  });
}

function listAhead({ edited, state, tables, day }: OpenKeep): JobAhead[] {
  return remindersOf(edited, state, tables, day).flatMap((told) =>
    told.kind === "job" && !("portions" in told.job) ? [told.job] : [],
  );
}
