import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";
import { findOutFault, type Made, type OutWish, putOut } from "./putOut.ts";

/** What is made, about what, and where it goes. */
export interface SheetJob {
  /** What was asked about, as it was named. */
  readonly about: string;
  readonly made: Made;
  readonly wish: OutWish;
}

/** Makes a sheet and puts it where it goes; whatever speaks against it is told, and nothing is written. */
export async function runSheet(
  { about, made, wish }: SheetJob,
  terminal: Terminal,
  make: () => Found<string> | Promise<Found<string>>,
): Promise<ExitCode> {
  const fault = findOutFault(made, wish, terminal.cwd);
  const found = fault === undefined ? await make() : { ok: false as const, faults: [fault] };
  const put = found.ok ? await putOut(found.value, wish, terminal) : found;
  return put.ok ? EXIT.done : refuseInput(about, put.faults, false, terminal);
}
