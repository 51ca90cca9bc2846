import {
  ovenMinutes,
  type WorkDish,
  type WorkKit,
  type WorkProblem,
  type WorkStep,
  type WorkUse,
  type WorkWait,
} from "../../work/problem.ts";
import type { BoardWashed, Happening, KitWashed, StepHappened } from "./Happening.ts";
import type { TimedCooking } from "./solveCooking.ts";

/** How a step that has begun went, or will go by what is known now. */
interface Took {
  readonly start: number;
  readonly minutes: number;
}

/** What is left of a cooking as a problem of its own that begins now, and what its indices were. */
export interface Remaining {
  readonly problem: WorkProblem;
  /** Steps that have begun, by their old index. */
  readonly took: ReadonlyMap<number, Took>;
  /** New index of an old step, for those that are left or still going on. */
  readonly index: ReadonlyMap<number, number>;
  /** Old index of each wait and each use; undefined for those that stand for the past. */
  readonly waits: readonly (number | undefined)[];
  readonly uses: readonly (number | undefined)[];
  /** Washes that were made, in old minutes and uses. */
  readonly boardWashes: readonly BoardWashed[];
  readonly kitWashes: readonly KitWashed[];
}

/**
 * What is left from now on. A step that is going on begins now with the minutes it still takes; one that is done is left
 * out, and what waits for it has waited already. What the past leaves behind is not forgotten: steps that are no
 * work, begun now, stand for a board that was left raw and for vessels that stand dirty (which are washed from the next
 * minute on), and the oven is as warm as it was planned to be by now. A wash that nobody marked was not made.
 */
export function restOf(timed: TimedCooking, happened: readonly Happening[], now: number): Remaining {
  return new RestDraft(timed, happened, now).finish();
}

class RestDraft {
  private readonly timed: TimedCooking;
  private readonly old: WorkProblem;
  private readonly now: number;
  private readonly took = new Map<number, Took>();
  private readonly index = new Map<number, number>();
  private readonly steps: WorkStep[] = [];
  private readonly boardWashes: readonly BoardWashed[];
  private readonly kitWashes: readonly KitWashed[];

  constructor(timed: TimedCooking, happened: readonly Happening[], now: number) {
    this.timed = timed;
    this.old = timed.cooking.problem;
    this.now = now;
    this.boardWashes = happened.filter((each) => each.kind === "board-wash");
    this.kitWashes = happened.filter((each) => each.kind === "kit-wash");
    for (const each of happened) if (each.kind === "step") this.begin(each);
  }

  finish(): Remaining {
    this.addSteps();
    const dishes = this.old.dishes.map((dish, at) => this.toDish(dish, at));
    if (this.isBoardSoiled()) this.addMark("soiled board", 0, { board: "raw" });
    const waits = this.listWaits();
    const uses = this.listUses();
    const { old, took, index, boardWashes, kitWashes } = this;
    const problem: WorkProblem = {
      ...old,
      steps: this.steps,
      dishes,
      waits: waits.map(({ wait }) => wait),
      uses: uses.map(({ use }) => use),
      kit: old.kit.map((kit, kind) => this.toKit(kit, kind)),
      ...(old.oven && { oven: { ...old.oven, roomC: this.ovenNowC(old.oven) } }),
    };
    return {
      problem,
      took,
      index,
      waits: waits.map(({ was }) => was),
      uses: uses.map(({ was }) => was),
      boardWashes,
      kitWashes,
    };
  }

  private begin({ step, begunMinutes, doneMinutes, leftMinutes }: StepHappened): void {
    const planned = this.old.steps[step];
    if (planned === undefined) throw new RangeError(`there is no step ${step}`);
    const left = leftMinutes ?? Math.max(0, begunMinutes + planned.minutes - this.now);
    const end = doneMinutes ?? this.now + left;
    this.took.set(step, { start: begunMinutes, minutes: end - begunMinutes });
  }

  private endOf(step: number): number {
    const real = this.took.get(step);
    if (real === undefined) throw new RangeError(`step ${step} has not begun`);
    return real.start + real.minutes;
  }

  private isDone(step: number): boolean {
    return this.took.has(step) && this.endOf(step) <= this.now;
  }

  /** More hands than there are can't be at work; who began too much has found a way. */
  private addSteps(): void {
    let handsLeft = 2 * this.old.cooks;
    for (const [i, step] of this.old.steps.entries()) {
      if (this.isDone(i)) continue;
      this.index.set(i, this.steps.length);
      if (!this.took.has(i)) {
        this.steps.push({ ...step, earliestMinutes: 0 });
        continue;
      }
      const hands = step.hands <= handsLeft ? step.hands : 0;
      handsLeft -= hands;
      this.steps.push({ ...step, hands, minutes: this.endOf(i) - this.now, earliestMinutes: 0, latestMinutes: 0 });
    }
  }

  private addMark(id: string, dish: number, more: Partial<WorkStep> = {}): number {
    return this.steps.push({ id, dish, minutes: 0, hands: 0, earliestMinutes: 0, latestMinutes: 0, ...more }) - 1;
  }

  /** A dish whose last step is done has waited since; a step of no minutes stands for it. */
  private toDish({ holdMinutes, isFirm, ...dish }: WorkDish, at: number): WorkDish {
    const last = this.index.get(dish.last);
    if (last !== undefined)
      return { ...dish, last, ...(holdMinutes !== undefined && { holdMinutes }), ...(isFirm && { isFirm }) };
    const left = holdMinutes === undefined ? undefined : holdMinutes - (this.now - this.endOf(dish.last));
    return {
      ...dish,
      last: this.addMark(`${dish.id} done`, at),
      ...(left !== undefined && { holdMinutes: Math.max(0, left) }),
      ...(isFirm && left !== undefined && left >= 0 && { isFirm }),
    };
  }

  /** Raw food was on it, and neither a wash nor food that is ready to eat came after. */
  private isBoardSoiled(): boolean {
    const { board, steps } = this.old;
    if (board === undefined || board.count > 1) return false;
    const begun = [...this.took];
    return begun.some(([i]) => {
      if (steps[i]?.board !== "raw" || !this.isDone(i)) return false;
      const end = this.endOf(i);
      const isWashed = this.boardWashes.some(({ startMinutes }) => startMinutes >= end);
      return !isWashed && !begun.some(([other, { start }]) => steps[other]?.board === "ready" && start >= end);
    });
  }

  private listWaits(): { wait: WorkWait; was: number }[] {
    return this.old.waits.flatMap((wait, was) => {
      const [from, to] = [this.index.get(wait.from), this.index.get(wait.to)];
      if (to === undefined || this.took.has(wait.to)) return [];
      return [{ wait: from === undefined ? this.waitOn(wait, to) : { ...wait, from, to }, was }];
    });
  }

  /** The wait since a step that is done, as one from now on; a limit that is past already is no longer firm. */
  private waitOn({ from, mostMinutes, isFirm, leastMinutes, weight }: WorkWait, to: number): WorkWait {
    const since = this.now - this.endOf(from);
    const left = mostMinutes === undefined ? undefined : mostMinutes - since;
    return {
      from: this.addMark(`step ${from} done`, this.old.steps[from]?.dish as number),
      to,
      leastMinutes: Math.max(0, leastMinutes - since),
      ...(left !== undefined && { mostMinutes: Math.max(0, left) }),
      ...(isFirm && left !== undefined && left >= 0 && { isFirm }),
      ...(weight !== undefined && { weight }),
    };
  }

  /** Vessels in use, vessels still to be used, and vessels that stand dirty. */
  private listUses(): { use: WorkUse; was: number | undefined }[] {
    const left = this.old.uses.flatMap((use, was) => {
      const to = this.index.get(use.to);
      if (to === undefined) return [];
      const from = this.index.get(use.from) ?? this.addMark(`use ${was}`, this.old.steps[use.from]?.dish as number);
      return [{ use: { ...use, from, to }, was }];
    });
    const dirty = this.old.kit.flatMap((_, kind) => {
      const isWanted = left.some(({ use }) => use.kind === kind);
      return Array.from({ length: isWanted ? this.dirtyCount(kind) : 0 }, (__, k) => {
        // A minute long, since a use of no minutes would take no vessel.
        const mark = this.addMark(`dirty ${kind} ${k}`, 0, { minutes: 1 });
        return { use: { kind, from: mark, to: mark }, was: undefined };
      });
    });
    return [...left, ...dirty];
  }

  private dirtyCount(kind: number): number {
    const { kit, uses } = this.old;
    if (kit[kind]?.washMinutes === undefined) return 0;
    const over = uses.filter((use) => use.kind === kind && this.took.has(use.from) && this.isDone(use.to)).length;
    const washed = this.kitWashes.filter(({ use }) => uses[use]?.kind === kind).length;
    return Math.max(0, over - washed);
  }

  /** Where more is in use than the kitchen has, the cook has found another piece. */
  private toKit(kit: WorkKit, kind: number): WorkKit {
    const held = this.old.uses.filter(
      (use) => use.kind === kind && this.took.has(use.from) && !this.isDone(use.to),
    ).length;
    return { ...kit, count: Math.max(kit.count, held) };
  }

  /** As warm as what bakes now or baked last; before that as warm as the plan has it by now. */
  private ovenNowC(oven: NonNullable<WorkProblem["oven"]>): number {
    const baked = this.old.steps.flatMap((step, i) => (step.oven ? [{ tempC: step.oven.tempC, i }] : []));
    const begun = baked
      .filter(({ i }) => this.took.has(i))
      .sort((a, b) => (this.took.get(a.i) as Took).start - (this.took.get(b.i) as Took).start);
    const latest = begun.at(-1);
    if (latest !== undefined) return latest.tempC;
    const starts = this.timed.plan.starts;
    const first = baked.sort((a, b) => (starts[a.i] as number) - (starts[b.i] as number))[0];
    if (first === undefined) return oven.roomC;
    const on = (starts[first.i] as number) - ovenMinutes(oven, oven.roomC, first.tempC);
    return Math.min(first.tempC, oven.roomC + Math.max(0, this.now - on) * oven.warmCPerMinute);
  }
}
