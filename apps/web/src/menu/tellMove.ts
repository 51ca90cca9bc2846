import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";
import type { MoveTold } from "./reasoning/Told.ts";
import { tellExtra } from "./tellExtra.ts";

/** What a move to a sitting would cost, or why it can't be made. */
export function tellMove(
  told: MoveTold,
  at: string,
  currency: string,
  further: Further<"menu">,
  formats: Formats,
): string {
  const { week } = further;
  if (told.kind === "unfit") return week.moveUnfit(at);
  if (told.kind === "breaks") return week.moveBreaks(at);
  const cost = tellExtra(told.extraMinor, currency, further, formats);
  return week.moveCost(at, `${cost}, ${week.changes(told.changed.length)}`);
}
