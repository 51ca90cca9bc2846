import type { Planner } from "@halfloaf/engine/web";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { useEffect, useRef, useState } from "react";
import { PlanningRun } from "./PlanningRun.ts";

/** How far planning has come; money in minor units. */
export type Planning =
  | { readonly kind: "idle" }
  | { readonly kind: "stating" }
  | {
      readonly kind: "searching";
      /** From 0 to 1. */
      readonly share: number;
      readonly week?: WeekPlan;
      /** No plan is cheaper than the week by more than this. */
      readonly gapMinor?: number;
    }
  | { readonly kind: "planned"; readonly week: WeekPlan; readonly gapMinor?: number }
  /** No plan keeps every limit of this kitchen, whose first day is that of the plan. */
  | { readonly kind: "none"; readonly kitchen: Kitchen }
  | { readonly kind: "failed"; readonly reason: string };

/** Plans days of a kitchen in workers: the first plan at once, better ones as they are found. */
export function usePlanning(): {
  readonly planning: Planning;
  readonly plan: (kitchen: Kitchen, from: CivilDate, days: number) => Promise<void>;
  readonly stop: () => void;
  readonly forget: () => void;
} {
  const [planning, setPlanning] = useState<Planning>({ kind: "idle" });
  const running = useRef<PlanningRun>(undefined);
  const planner = useRef<Planner>(undefined);
  const tools = useRef({
    plan: async (kitchen: Kitchen, from: CivilDate, days: number): Promise<void> => {
      running.current?.cancel();
      const run = new PlanningRun((told) => running.current === run && setPlanning(told));
      running.current = run;
      await run.start(kitchen, from, days, async () => {
        const { startWebPlanner } = await import("@halfloaf/engine/web");
        planner.current ??= startWebPlanner();
        return planner.current;
      });
    },
    stop: (): void => running.current?.stop(),
    forget: (): void => {
      running.current?.cancel();
      running.current = undefined;
      setPlanning({ kind: "idle" });
    },
  });
  useEffect(
    () => () => {
      running.current?.cancel();
      planner.current?.dispose();
      planner.current = undefined;
    },
    [],
  );
  return { planning, ...tools.current };
}
