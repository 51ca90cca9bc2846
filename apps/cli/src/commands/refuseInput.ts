import { tellCount } from "@halfloaf/words/en";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Fault } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";

/** Says why what was given can't be used: as talk, and as data where data was asked for. */
export function refuseInput(about: string, faults: readonly Fault[], json: boolean, terminal: Terminal): ExitCode {
  if (json) terminal.print(toJsonText(toFaultReport(about, faults)));
  const page = { ...terminal.page, paint: terminal.talkPaint };
  const heading = `${harmless(about)}: ${tellCount(faults.length, "fault")}. Nothing was done.`;
  for (const line of [page.paint.strong(heading), ...layFaults(faults, page)]) terminal.talk(line);
  return EXIT.badInput;
}
