import type { STEP_KINDS } from "../../dish/index.ts";
import { learnPace, type ObservedStep, type Pace, type PaceOfKind, toPace } from "../cooking/pace.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import type { RecordState } from "./recordState.ts";

/** What is learned of one cook; `by` is absent for cookings of which it is not said who did them. */
export interface PaceOfCook {
  readonly by?: string;
  readonly learned: readonly PaceOfKind[];
}

type StepKind = (typeof STEP_KINDS)[number];
type Forgetting = Pick<EditedKitchen, "paceForgotten">;
interface SeenStep extends ObservedStep {
  readonly by?: string;
}

/** Steps that are learned from, the latest; older ones are let go, as a cook changes. */
const MOST_KEPT = 1000;

/** The pace of each cook of whom steps were seen and are not forgotten, in the order of their first cooking. */
export function pacesOf(edited: Forgetting, state: RecordState): PaceOfCook[] {
  const byCook = new Map<string | undefined, ObservedStep[]>();
  for (const { by, ...step } of listSeen(edited, state)) {
    const steps = byCook.get(by) ?? [];
    byCook.set(by, steps);
    steps.push(step);
  }
  return [...byCook].map(([by, steps]) => ({ ...(by !== undefined && { by }), learned: learnPace(steps) }));
}

/** The pace that plans reckon with: of all cooks together, and of what they showed nothing, as it was set by hand. */
export function paceOfKitchen(edited: Forgetting & Pick<EditedKitchen, "pace">, state: RecordState): Pace | undefined {
  const learned = toPace(learnPace(listSeen(edited, state)));
  return edited.pace === undefined && Object.keys(learned).length === 0 ? undefined : { ...edited.pace, ...learned };
}

/** The kitchen with the pace of a kind of step, or of all, set back to what dishes state; later cookings are learned from. */
export function forgetPace(edited: EditedKitchen, state: RecordState, kind?: StepKind): EditedKitchen {
  const latest: Partial<Record<StepKind, number>> = { ...edited.paceForgotten };
  for (const { pace: seen } of state.cookings.values()) {
    if (seen === undefined) continue;
    const kinds = seen.steps.map((step) => step.kind).filter((each) => kind === undefined || each === kind);
    for (const each of kinds) latest[each] = Math.max(latest[each] ?? 0, seen.atMs);
  }
  const { pace = {}, ...rest } = edited;
  const kept = kind === undefined ? [] : Object.entries(pace).filter(([each]) => each !== kind);
  return { ...rest, ...(kept.length > 0 && { pace: Object.fromEntries(kept) }), paceForgotten: latest };
}

function listSeen({ paceForgotten = {} }: Forgetting, { cookings }: RecordState): SeenStep[] {
  return [...cookings.values()]
    .flatMap(({ pace }): SeenStep[] => {
      if (pace === undefined) return [];
      const { by, atMs, steps } = pace;
      const fresh = steps.filter(({ kind }) => atMs > (paceForgotten[kind] ?? -1));
      return fresh.map((step) => (by === undefined ? step : { ...step, by }));
    })
    .slice(-MOST_KEPT);
}
