import type { Planner, RunningPlan } from "@halfloaf/engine/web";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { MenuPlan } from "halfloaf/menu";
import type { CivilDate } from "halfloaf/quantity";
import { useEffect, useRef, useState } from "react";
import { startThinker } from "../thinking/startThinker.ts";

/** How far planning has come; money in minor units. */
export type Planning =
  | { readonly kind: "idle" }
  | { readonly kind: "stating" }
  | {
      readonly kind: "searching";
      readonly share: number;
      readonly week?: WeekPlan;
      readonly costMinor?: number;
      readonly gapMinor?: number;
    }
  | { readonly kind: "planned"; readonly week: WeekPlan; readonly gapMinor?: number }
  /** No plan keeps every limit of this kitchen, whose first day is that of the plan. */
  | { readonly kind: "none"; readonly kitchen: Kitchen }
  | { readonly kind: "failed"; readonly reason: string };

const MOVES = 600_000;
const PROOF_S = 6;

/** Plans days of a kitchen in workers: the first plan at once, better ones as they are found. */
export function usePlanning(): {
  readonly planning: Planning;
  readonly plan: (kitchen: Kitchen, from: CivilDate, days: number) => Promise<void>;
  readonly stop: () => void;
  readonly forget: () => void;
} {
  const [planning, setPlanning] = useState<Planning>({ kind: "idle" });
  const running = useRef<RunningPlan>(undefined);
  const planner = useRef<Planner>(undefined);
  useEffect(
    () => () => {
      running.current?.cancel();
      planner.current?.dispose();
    },
    [],
  );
  const plan = async (kitchen: Kitchen, from: CivilDate, days: number): Promise<void> => {
    setPlanning({ kind: "stating" });
    try {
      setPlanning(await search(kitchen, from, days, planner, running, setPlanning));
    } catch (error) {
      setPlanning({ kind: "failed", reason: error instanceof Error ? error.message : String(error) });
    }
  };
  const stop = (): void => running.current?.stop();
  return { planning, plan, stop, forget: () => setPlanning({ kind: "idle" }) };
}

async function search(
  kitchen: Kitchen,
  from: CivilDate,
  days: number,
  planner: { current: Planner | undefined },
  running: { current: RunningPlan | undefined },
  tell: (planning: Planning) => void,
): Promise<Planning> {
  const thinker = startThinker();
  const { startWebPlanner } = await import("@halfloaf/engine/web");
  planner.current ??= startWebPlanner();
  const stated = await thinker.state(kitchen, from, days);
  const write = (plan: MenuPlan, moves: number, moneyMinor: number): Promise<WeekPlan | undefined> =>
    thinker.write(stated.id, plan, { seed: 1, moves, moneyMinor });
  let shown: { readonly week?: WeekPlan; readonly plan?: MenuPlan } = {};
  let gapMinor: number | undefined;
  const job = { problem: stated.problem, seed: 1, moves: MOVES, proofS: PROOF_S };
  running.current = planner.current.plan(job, (progress) => {
    const { plan, costMinor, moves } = progress;
    gapMinor = progress.gapMinor ?? gapMinor;
    if (plan !== undefined && plan !== shown.plan && costMinor !== undefined) {
      shown = { ...shown, plan };
      void write(plan, moves, costMinor).then((week) => {
        if (week !== undefined) shown = { ...shown, week };
      });
    }
    tell({
      kind: "searching",
      share: moves / MOVES,
      ...(shown.week !== undefined && { week: shown.week }),
      ...(costMinor !== undefined && { costMinor }),
      ...(gapMinor !== undefined && { gapMinor }),
    });
  });
  const outcome = await running.current.outcome;
  if (outcome.status === "failed") return { kind: "failed", reason: outcome.reason };
  if (outcome.status === "cancelled") return { kind: "idle" };
  if (outcome.status === "none") return { kind: "none", kitchen: { ...kitchen, startsOn: from } };
  const week = await write(outcome.plan, outcome.moves, outcome.costMinor);
  if (week === undefined) return { kind: "failed", reason: "plan refused by the judge" };
  return { kind: "planned", week, ...(gapMinor !== undefined && { gapMinor }) };
}
