import { asWritten, type Choose, type Dish } from "../../dish/index.ts";
import type { SittingKitchen } from "./Cooking.ts";
import { timeAlone } from "./timeAlone.ts";

/** The time a dish is advertised with, and the one its steps take; whole minutes for the portions it is written for. */
export interface StatedTime {
  /** The portions that both are for. */
  readonly portions: number;
  readonly statedMinutes: number;
  readonly computedMinutes: number;
  /** Computed less stated: above 0 it takes longer than its author says, below 0 less. */
  readonly offMinutes: number;
  /** False where the computed time may be beaten. */
  readonly isProven: boolean;
}

/**
 * Holds the time a dish is stated with against its order of work in a kitchen, cooked by itself for the portions it is
 * written for. Undefined where nothing is stated, the kit does not suffice or no order of work was found.
 */
export function compareStated(dish: Dish, kitchen: SittingKitchen, choose: Choose = asWritten): StatedTime | undefined {
  const { statedMinutes, portions } = dish;
  if (statedMinutes === undefined) return undefined;
  const timed = timeAlone(dish, kitchen, choose, "serve");
  if (timed === undefined) return undefined;
  const computedMinutes = timed.plan.serveMinutes;
  const offMinutes = computedMinutes - statedMinutes;
  return { portions, statedMinutes, computedMinutes, offMinutes, isProven: timed.isProven };
}
