import { proveBound } from "@halfloaf/engine";
import type { MenuProblem } from "halfloaf/menu";
import type { Terminal } from "../output/Terminal.ts";
import { tellMoney } from "../words/amountWords.ts";

/**
 * Works for so many seconds at proving how much cheaper any plan could be, and tells it as talk: how far a proof gets
 * depends on the machine, so it is no part of the plan. Ctrl-C ends the proof, not the program.
 */
export async function proveWeek(
  problem: MenuProblem,
  moneyMinor: number,
  currency: string,
  seconds: number,
  terminal: Terminal,
): Promise<void> {
  if (seconds <= 0) return;
  const stop = new AbortController();
  const takeOff = terminal.onStop(() => stop.abort());
  const tellGap = (boundMinor: number): string => {
    const gapMinor = Math.max(0, Math.ceil(moneyMinor - boundMinor));
    const share = ((100 * gapMinor) / Math.max(1, moneyMinor)).toFixed(1);
    return `no plan within these limits can be cheaper by more than ${tellMoney(gapMinor, currency)} ${currency} (${share} %)`;
  };
  const outcome = await proveBound(problem, {
    incumbentMinor: moneyMinor,
    seconds,
    signal: stop.signal,
    onProgress: ({ boundMinor }) => terminal.showProgress(`Proving: ${tellGap(boundMinor)} (Ctrl-C takes this)`),
  });
  terminal.showProgress("");
  takeOff();
  const boundMinor = "boundMinor" in outcome ? outcome.boundMinor : undefined;
  if (boundMinor === undefined) terminal.talk("Nothing could be proven of how cheap a plan could be.");
  else terminal.talk(`Proven: ${tellGap(boundMinor)}, all weighed as above.`);
}
