import type { Planner } from "@halfloaf/engine/web";
import type { Kitchen } from "halfloaf/kitchen";
import { useEffect, useRef, useState } from "react";
import { loadSurely } from "../loading/loadSurely.ts";
import type { Planning } from "./Planning.ts";
import { type PlanAsked, PlanningRun } from "./PlanningRun.ts";

/** Plans days of a kitchen in workers: the first plan at once, better ones as they are found. */
export function usePlanning(): {
  readonly planning: Planning;
  readonly plan: (kitchen: Kitchen, asked: PlanAsked) => Promise<void>;
  readonly stop: () => void;
  readonly forget: () => void;
} {
  const [planning, setPlanning] = useState<Planning>({ kind: "idle" });
  const running = useRef<PlanningRun>(undefined);
  const planner = useRef<Planner>(undefined);
  const tools = useRef({
    plan: async (kitchen: Kitchen, asked: PlanAsked): Promise<void> => {
      running.current?.cancel();
      const run = new PlanningRun((told) => running.current === run && setPlanning(told));
      running.current = run;
      await run.start(kitchen, asked, async () => {
        const { startWebPlanner } = await loadSurely(() => import("@halfloaf/engine/web"));
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
