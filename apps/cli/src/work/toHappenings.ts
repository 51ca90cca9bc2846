import { type Happening, happenedAsPlanned, type StepHappened, type TimedCooking } from "halfloaf/kitchen";
import type { Fault, Found } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";
import type { AskedMark, Moment } from "./parseMark.ts";

/** What the cook says of the cooking so far. */
export interface AskedMarks {
  readonly marks: readonly AskedMark[];
  /** Now; absent: the cooking has not begun. */
  readonly now?: Moment;
  /** Until then all went as planned but for what is marked; absent: nothing is known that is not marked. */
  readonly asPlanned?: Moment;
}

/** What has happened up to now, in minutes of the cooking. */
export interface Happened {
  readonly nowMinutes: number;
  readonly happenings: readonly Happening[];
  /** Those steps alone whose begin and end were both marked; what only went as planned says nothing of a pace. */
  readonly marked: readonly StepHappened[];
}

const DAY = 1440;
/** Further from the begin of a cooking than this lies a time before it. */
const LONGEST_COOKING = 1200;

/**
 * The marks as happenings of a cooking that is served at a time of day; undefined where nothing was said. What can't be
 * so comes back at once.
 */
export function toHappenings(
  asked: AskedMarks,
  timed: TimedCooking,
  serveAtMinutes: number | undefined,
): Found<Happened | undefined> {
  if (asked.marks.length === 0 && asked.now === undefined && asked.asPlanned === undefined)
    return { ok: true, value: undefined };
  const reader = new MarkReader(timed, serveAtMinutes);
  const value = reader.read(asked);
  return reader.faults.length > 0 ? { ok: false, faults: reader.faults } : { ok: true, value };
}

/** What was said of one step. */
interface StepMarks {
  begun?: number;
  done?: number;
  left?: number;
}

class MarkReader {
  readonly faults: Fault[] = [];
  private readonly timed: TimedCooking;
  private readonly serveAtMinutes: number | undefined;
  private now = 0;

  constructor(timed: TimedCooking, serveAtMinutes: number | undefined) {
    this.timed = timed;
    this.serveAtMinutes = serveAtMinutes;
  }

  read({ marks, now, asPlanned }: AskedMarks): Happened {
    if (now === undefined) this.fault("now-missing", "--now", "is not said", "Say what time it is with --now.");
    else this.now = this.toMinute(now, "--now") ?? 0;
    const until = asPlanned === undefined ? 0 : (this.toMinute(asPlanned, "--as-planned") ?? 0);
    if (until > this.now) this.fault("mark-late", "--as-planned", "lies after now", "Say how all went up to now.");
    const known = happenedAsPlanned(this.timed, Math.min(until, this.now));
    const steps = new Map(known.flatMap((each) => (each.kind === "step" ? [[each.step, each] as const] : [])));
    const marked: StepHappened[] = [];
    for (const [step, said] of this.gatherSteps(marks)) {
      const happened = this.toStep(step, said);
      steps.set(step, happened);
      if (said.begun !== undefined && said.done !== undefined) marked.push(happened);
    }
    const washes: Happening[] = known.filter((each) => each.kind !== "step");
    for (const mark of marks) if (mark.kind === "washed") washes.push(...this.toWash(mark, washes));
    return { nowMinutes: this.now, happenings: [...steps.values(), ...washes], marked };
  }

  private gatherSteps(marks: readonly AskedMark[]): Map<number, StepMarks> {
    const gathered = new Map<number, StepMarks>();
    for (const mark of marks) {
      if (mark.kind === "washed") continue;
      const step = this.findStep(mark);
      if (step === undefined) continue;
      const key = { begun: "begun", done: "done", late: "left" } as const;
      const said = gathered.get(step) ?? {};
      const isTwice = said[key[mark.kind]] !== undefined || (mark.kind === "late" && said.done !== undefined);
      if (isTwice || (mark.kind === "done" && said.left !== undefined))
        this.fault("mark-twice", mark.text, "says another thing than a mark before it", "Say it once.");
      const minutes = mark.kind === "late" ? mark.minutes : this.toMinute(mark.at, mark.text);
      if (minutes !== undefined) gathered.set(step, { ...said, [key[mark.kind]]: minutes });
      if (mark.kind !== "late" && minutes !== undefined && minutes > this.now)
        this.fault("mark-late", mark.text, "lies after now", "Mark what has happened; what is to come is timed anew.");
    }
    return gathered;
  }

  private findStep({ dish, step, text }: Extract<AskedMark, { step: string }>): number | undefined {
    const { steps, ahead, wish } = this.timed.cooking;
    const found = steps.findIndex((each) => each.dish === dish && each.step?.id === step);
    if (found >= 0) return found;
    const own = steps.flatMap((each) => (each.dish === dish && each.step !== undefined ? [each.step.id] : []));
    const isAhead = ahead.some((each) => each.dish === dish && each.step.id === step);
    const says = isAhead
      ? "names a step that is done ahead of the cooking"
      : wish.dishes[dish] === undefined
        ? "names a letter that no dish has"
        : "names no step of this dish";
    const remedy = own.length === 0 ? "Take the letters from the page." : `Its steps are ${own.join(", ")}.`;
    this.fault("mark-unknown", text, says, remedy);
    return undefined;
  }

  /** A step that was only said to be done, or to take longer, was begun as planned. */
  private toStep(step: number, { begun, done, left }: StepMarks): StepHappened {
    const planned = this.timed.plan.starts[step] as number;
    const begunMinutes = begun ?? Math.min(planned, done ?? this.now);
    if (done !== undefined && done < begunMinutes) {
      const id = this.timed.cooking.steps[step]?.step?.id ?? "";
      this.fault("mark-order", id, "is done before it is begun", "Check the two times.");
    }
    return {
      kind: "step",
      step,
      begunMinutes,
      ...(done !== undefined && { doneMinutes: done }),
      ...(left !== undefined && { leftMinutes: left }),
    };
  }

  /** The wash that comes next for such a thing. */
  private toWash(
    { part, at, text }: Extract<AskedMark, { kind: "washed" }>,
    washed: readonly Happening[],
  ): Happening[] {
    const startMinutes = this.toMinute(at, text);
    if (startMinutes === undefined) return [];
    if (startMinutes > this.now) this.fault("mark-late", text, "lies after now", "Mark what has happened.");
    if (part === "board") return [{ kind: "board-wash", startMinutes }];
    const { cooking, plan } = this.timed;
    const kind = (use: number) => cooking.parts[cooking.problem.uses[use]?.kind as number];
    const made = new Set(washed.flatMap((each) => (each.kind === "kit-wash" ? [each.use] : [])));
    const next = [...plan.kitWashes]
      .sort((a, b) => a.startMinutes - b.startMinutes)
      .find(({ use }) => kind(use) === part && !made.has(use));
    if (next !== undefined) return [{ kind: "kit-wash", use: next.use, startMinutes }];
    this.fault("mark-no-wash", text, "is no wash of this order of work", "Leave it out: what comes has a clean one.");
    return [];
  }

  /** The minute of the cooking; undefined, with a fault, where it lies before it or there is no clock. */
  private toMinute({ kind, minutes }: Moment, text: string): number | undefined {
    if (kind === "minute") return minutes;
    if (this.serveAtMinutes === undefined) {
      this.fault("mark-no-clock", text, "is a time of day", "Say when it is served with --serve, or count minutes.");
      return undefined;
    }
    const from = this.serveAtMinutes - this.timed.plan.serveMinutes;
    const minute = (((minutes - from) % DAY) + DAY) % DAY;
    if (minute <= LONGEST_COOKING) return minute;
    this.fault("mark-early", text, "lies before the cooking begins", "Name a time from its first step on.");
    return undefined;
  }

  private fault(code: string, value: string, says: string, remedy: string): void {
    this.faults.push({ code, path: [], value: quote(value), sentence: `${quote(value)} ${says}.`, remedy });
  }
}
