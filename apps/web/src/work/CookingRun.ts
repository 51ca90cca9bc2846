import type { Dish } from "halfloaf/dish";
import { retellSheet, type StepLine, type WorkSheet } from "halfloaf/kitchen";
import type { Cooks, DishWanted, StepTold } from "../thinking/Thinker.ts";
import { COOKING_KEY } from "./cookingKey.ts";
import { ring } from "./ring.ts";

/** A cooking under way, which lasts while other screens are open and the page is loaded again. */
export interface Running {
  readonly wanted: readonly DishWanted[];
  /** Absent = one cook. */
  readonly cooks?: Cooks;
  readonly sheet: WorkSheet;
  /** When the cook began, in milliseconds since 1970; absent = not yet. */
  readonly begunMs?: number;
  readonly told: readonly StepTold[];
  /** True once everything is done and only the stores are to be told. */
  readonly isOver?: boolean;
}

/** A step that goes on by itself, and when it ends. */
export interface RunningTimer {
  readonly line: StepLine;
  /** In milliseconds since 1970. */
  readonly endsMs: number;
}

/** A step that is over rings so often, and so long apart, until the cook says it is done. */
const RINGS = 4;
const RING_EVERY_MS = 30_000;

/** The one cooking of this device, its timers, and who wants to hear of it. */
class CookingRun {
  #running: Running | undefined;
  #dishes: readonly Dish[] | undefined;
  readonly #hearers = new Set<() => void>();
  readonly #rung = new Map<string, { readonly times: number; readonly atMs: number }>();
  #watch: ReturnType<typeof setInterval> | undefined;

  constructor() {
    try {
      this.#running = JSON.parse(localStorage.getItem(COOKING_KEY) ?? "null") ?? undefined;
    } catch {
      // Without storage a cooking lasts as long as the page.
    }
    this.#keepTime();
  }

  get running(): Running | undefined {
    return this.#running;
  }

  /** Tells the cooking from now on as these dishes tell it: it is worked out in the language they were written in. */
  speak(dishes: readonly Dish[]): void {
    if (dishes === this.#dishes) return;
    this.#dishes = dishes;
    const running = this.#running;
    if (running === undefined) return;
    const isAsTold = JSON.stringify(retellSheet(running.sheet, dishes)) === JSON.stringify(running.sheet);
    if (!isAsTold) this.set(running);
  }

  set(given: Running | undefined): void {
    const running = this.#dishes && given ? { ...given, sheet: retellSheet(given.sheet, this.#dishes) } : given;
    this.#running = running;
    try {
      if (running === undefined) localStorage.removeItem(COOKING_KEY);
      else localStorage.setItem(COOKING_KEY, JSON.stringify(running));
    } catch {
      // As above.
    }
    this.#keepTime();
    for (const hearer of this.#hearers) hearer();
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Steps go on by themselves whatever screen is open, so that the clock is kept here and by no screen. */
  #keepTime(): void {
    const isWanted = this.#running?.begunMs !== undefined && this.#running.isOver !== true;
    if (isWanted) this.#watch ??= setInterval(() => this.#ringIfDue(Date.now()), 1000);
    else {
      clearInterval(this.#watch);
      this.#watch = undefined;
      this.#rung.clear();
    }
  }

  #ringIfDue(nowMs: number): void {
    let isDue = false;
    for (const { line, endsMs } of timersOf(this.#running)) {
      const key = `${line.dish} ${line.step}`;
      if (endsMs > nowMs) {
        this.#rung.delete(key);
        continue;
      }
      const { times, atMs } = this.#rung.get(key) ?? { times: 0, atMs: Number.NEGATIVE_INFINITY };
      if (times >= RINGS || nowMs - atMs < RING_EVERY_MS) continue;
      this.#rung.set(key, { times: times + 1, atMs: nowMs });
      isDue = true;
    }
    if (isDue) ring();
  }
}

export const cookingRun = new CookingRun();

/** The steps that go on by themselves now, the first to end first. */
export function timersOf(running: Running | undefined): RunningTimer[] {
  if (running?.begunMs === undefined) return [];
  const { begunMs, sheet, told } = running;
  return sheet.lines
    .flatMap((line): RunningTimer[] => {
      if (line.kind !== "step" || line.hands === "full") return [];
      const known = told.find(({ dish, step }) => dish === line.dish && step === line.step);
      if (known === undefined || known.doneMinutes !== undefined) return [];
      return [{ line, endsMs: begunMs + line.endMinutes * 60_000 }];
    })
    .sort((a, b) => a.endsMs - b.endsMs);
}

/** Minutes since the cook began. */
export function minutesSince(begunMs: number, nowMs: number): number {
  return Math.max(0, (nowMs - begunMs) / 60_000);
}
