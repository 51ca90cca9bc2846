import type { WorkPlan } from "../plan.ts";
import type { WorkProblem } from "../problem.ts";
import type { WorkFault } from "./WorkFault.ts";

interface Cut {
  readonly start: number;
  readonly end: number;
  readonly kind: "raw" | "ready" | "wash";
  readonly step: number;
}

/** One thing at a time at a board, and nothing ready to eat after something raw without a wash in between. */
export function checkBoard(problem: WorkProblem, plan: WorkPlan): readonly WorkFault[] {
  const { board } = problem;
  if (!board) return [];
  const cuts: Cut[] = problem.steps.flatMap((step, i) => {
    if (step.board === undefined || step.minutes === 0) return [];
    const start = plan.starts[i] as number;
    return [{ start, end: start + step.minutes, kind: step.board, step: i }];
  });
  if (board.count > 1) {
    const of = (kind: string) => cuts.filter((cut) => cut.kind === kind);
    return [...crowded(of("raw"), 1), ...crowded(of("ready"), board.count - 1)];
  }
  const washes = plan.boardWashes.map(
    (start): Cut => ({ start, end: start + board.washMinutes, kind: "wash", step: -1 }),
  );
  const all = [...cuts, ...washes].sort((a, b) => a.start - b.start || a.end - b.end);
  return [...crowded(all, 1), ...dirtied(all)];
}

function crowded(cuts: readonly Cut[], count: number): readonly WorkFault[] {
  return cuts.flatMap(({ start }) => {
    const at = cuts.filter((other) => other.start <= start && start < other.end).length;
    return at > count
      ? [{ code: "board" as const, path: ["minute", start], expected: `<= ${count}`, received: String(at) }]
      : [];
  });
}

function dirtied(inOrder: readonly Cut[]): readonly WorkFault[] {
  let isDirty = false;
  const faults: WorkFault[] = [];
  for (const { kind, step } of inOrder) {
    if (kind === "ready" && isDirty) {
      faults.push({ code: "hygiene", path: ["starts", step], expected: "a clean board", received: "raw before" });
    }
    if (kind !== "ready") isDirty = kind === "raw";
  }
  return faults;
}
