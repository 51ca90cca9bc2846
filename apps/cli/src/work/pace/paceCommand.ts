import { tellCount } from "@halfloaf/words/en";
import { learnPace, type PaceOfKind } from "halfloaf/kitchen";
import * as v from "valibot";
import { refuseInput } from "../../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../../exitCodes.ts";
import { loadTables } from "../../input/loadTables.ts";
import { openAnyKitchen } from "../../keep/openAnyKitchen.ts";
import { harmless, toJsonText } from "../../output/harmless.ts";
import type { Terminal } from "../../output/Terminal.ts";
import { layPace } from "./layPace.ts";
import { openPace } from "./openPace.ts";
import { PaceReport } from "./PaceReport.ts";
import { savePace } from "./savePace.ts";

/** What `halfloaf pace` was asked. */
export interface PaceWish {
  readonly kitchen: string;
  /** File of the pace; absent: the usual one of the kitchen. */
  readonly pace?: string;
  /** Kind of step that is forgotten, or "all"; absent: nothing is. */
  readonly forget?: PaceOfKind["kind"] | "all";
  readonly json: boolean;
}

/** Shows the pace that was learned for a kitchen's cook, after forgetting what is to be forgotten. */
export async function paceCommand(
  { kitchen: name, pace, forget, json }: PaceWish,
  terminal: Terminal,
): Promise<ExitCode> {
  const opened = await openAnyKitchen(name, terminal, loadTables());
  if (!opened.ok) return refuseInput(name, opened.faults, json, terminal);
  const { kitchen } = opened.value;
  const found = openPace(pace, opened.value.name, terminal.cwd);
  if (!found.ok) return refuseInput(pace ?? name, found.faults, json, terminal);
  const { file, observed, isThere } = found.value;
  const kept = observed.filter(({ kind }) => forget !== "all" && forget !== kind);
  if (isThere && kept.length < observed.length) {
    const saved = savePace(kept, kitchen.name, file, terminal.cwd);
    if (!saved.ok) return refuseInput(file, saved.faults, json, terminal);
    terminal.talk(`${tellCount(observed.length - kept.length, "step")} forgotten in ${harmless(file)}.`);
  }
  const learned = learnPace(kept);
  if (json) {
    const report = { format: "halfloaf-pace-report", version: 1, kitchen: kitchen.name, learned };
    terminal.print(toJsonText(v.parse(PaceReport, report)));
  } else for (const line of layPace(learned, kitchen.name, file, terminal.page)) terminal.print(line);
  return EXIT.done;
}
