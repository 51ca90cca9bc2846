import { availableParallelism } from "node:os";
import type { Planner, RunningProof } from "@halfloaf/engine";
import { tellCount, tellMoney } from "@halfloaf/words/en";
import type { MenuPlan, MenuProblem } from "halfloaf/menu";
import type { Terminal } from "../output/Terminal.ts";

/** Most seconds for the proof among a plan's own dishes, which comes after the other. */
const OWN_DISHES_S = 1;

/**
 * Works for so many seconds at proving how much cheaper any plan could be: beside the search where the machine has a
 * thread for it, else after it. How far a proof gets depends on the machine, so it is talk and no part of the plan.
 */
export class WeekProof {
  private readonly problem: MenuProblem;
  private readonly seconds: number;
  private readonly planner: Planner;
  private running: RunningProof | undefined;
  private boundMinor: number | undefined;
  private onBound: () => void = () => undefined;

  constructor(planner: Planner, problem: MenuProblem, seconds: number) {
    this.planner = planner;
    this.problem = problem;
    this.seconds = seconds;
    if (seconds > 0 && availableParallelism() > 1) this.running = this.begin();
  }

  /** Tells it of a plan that costs so much; the bound is not pushed above it. */
  hear(moneyMinor: number): void {
    this.running?.hear(moneyMinor);
  }

  /**
   * Waits for the rest of the seconds and tells what is proven of a plan; then what is proven among its own dishes alone,
   * which is mostly far closer. Ctrl-C ends the proof, not the program.
   */
  async tell(plan: MenuPlan, moneyMinor: number, currency: string, terminal: Terminal): Promise<void> {
    if (this.seconds <= 0) return;
    this.running ??= this.begin();
    this.running.hear(moneyMinor);
    this.onBound = () => {
      const gap = this.boundMinor === undefined ? "" : `: ${tellGap(moneyMinor, this.boundMinor, currency)}`;
      terminal.showProgress(`Proving${gap} (Ctrl-C takes this)`);
    };
    const { boundMinor, isStopped } = await this.finish(this.running, terminal);
    if (boundMinor === undefined) terminal.talk("Nothing could be proven of how cheap a plan could be.");
    else terminal.talk(`Proven: ${tellGap(moneyMinor, boundMinor, currency)}, all weighed as above.`);
    if (isStopped) return;
    const dishes = [...new Set(plan.batches.map(({ dish }) => dish))];
    const seconds = Math.min(OWN_DISHES_S, this.seconds);
    this.onBound = () => terminal.showProgress("Proving among the dishes of this plan alone (Ctrl-C ends it)");
    const own = this.planner.prove({ problem: this.problem, seconds, incumbentMinor: moneyMinor, dishes });
    const among = await this.finish(own, terminal);
    if (among.boundMinor === undefined || among.boundMinor <= (boundMinor ?? Number.NEGATIVE_INFINITY)) return;
    const gap = tellGap(moneyMinor, among.boundMinor, currency);
    terminal.talk(`Among the ${tellCount(dishes.length, "dish", "dishes")} of this plan alone: ${gap}.`);
  }

  private async finish(
    running: RunningProof,
    terminal: Terminal,
  ): Promise<{ readonly boundMinor: number | undefined; readonly isStopped: boolean }> {
    let isStopped = false;
    const takeOff = terminal.onStop(() => {
      isStopped = true;
      running.stop();
    });
    this.onBound();
    const outcome = await running.outcome;
    terminal.showProgress("");
    takeOff();
    return { boundMinor: "boundMinor" in outcome ? outcome.boundMinor : undefined, isStopped };
  }

  private begin(): RunningProof {
    return this.planner.prove({ problem: this.problem, seconds: this.seconds }, ({ boundMinor }) => {
      this.boundMinor = boundMinor;
      this.onBound();
    });
  }
}

function tellGap(moneyMinor: number, boundMinor: number, currency: string): string {
  const gapMinor = Math.max(0, Math.ceil(moneyMinor - boundMinor));
  const share = ((100 * gapMinor) / Math.max(1, moneyMinor)).toFixed(1);
  return `no plan within these limits can be cheaper by more than ${tellMoney(gapMinor, currency)} ${currency} (${share} %)`;
}
