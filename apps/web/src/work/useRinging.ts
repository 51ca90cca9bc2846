import type { StepLine } from "halfloaf/kitchen";
import { useEffect } from "react";
import { ring } from "./ring.ts";

/** Rings when each of the steps that go on by themselves is over. */
export function useRinging(goingOn: readonly StepLine[], begunMs: number): void {
  const ends = goingOn.map(({ dish, step, endMinutes }) => `${dish} ${step} ${endMinutes}`).join("|");
  // biome-ignore lint/correctness/useExhaustiveDependencies: the ends say all that matters of the steps.
  useEffect(() => {
    const timers = goingOn.map(({ endMinutes }) => {
      const wait = begunMs + endMinutes * 60_000 - Date.now();
      return wait > 0 ? setTimeout(ring, wait) : undefined;
    });
    return () => {
      for (const timer of timers) clearTimeout(timer);
    };
  }, [ends, begunMs]);
}
