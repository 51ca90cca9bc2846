import type { WorkSheet } from "halfloaf/kitchen";
import type { DishWanted, StepTold } from "../thinking/Thinker.ts";

/** A cooking under way, which lasts while other screens are open and the page is loaded again. */
export interface Running {
  readonly wanted: readonly DishWanted[];
  readonly sheet: WorkSheet;
  /** When the cook began, in milliseconds since 1970; absent = not yet. */
  readonly begunMs?: number;
  readonly told: readonly StepTold[];
}

const KEY = "halfloaf-cooking";

/** The one cooking of this device, and who wants to hear of it. */
class CookingRun {
  #running: Running | undefined;
  readonly #hearers = new Set<() => void>();

  constructor() {
    try {
      this.#running = JSON.parse(sessionStorage.getItem(KEY) ?? "null") ?? undefined;
    } catch {
      // Without storage a cooking lasts as long as the page.
    }
  }

  get running(): Running | undefined {
    return this.#running;
  }

  set(running: Running | undefined): void {
    this.#running = running;
    try {
      sessionStorage.setItem(KEY, JSON.stringify(running ?? null));
    } catch {
      // As above.
    }
    for (const hearer of this.#hearers) hearer();
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };
}

export const cookingRun = new CookingRun();

/** Minutes since the cook began. */
export function minutesSince(begunMs: number, nowMs: number): number {
  return Math.max(0, (nowMs - begunMs) / 60_000);
}
