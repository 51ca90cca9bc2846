import type { TimedCooking } from "./solveCooking.ts";
import type { SheetDish, SheetLine, StepLine, TimelineBar, TimelineRow } from "./WorkSheet.ts";

const SINGLE = ["microwave", "kettle", "blender"] as const;

/** The rows of the timeline: hands, rings, oven, single pieces of kit, and what waits; rows without a bar are left out. */
export function listRows(
  timed: TimedCooking,
  lines: readonly SheetLine[],
  dishes: readonly SheetDish[],
): TimelineRow[] {
  const { cooks, kit } = timed.cooking.wish;
  const steps = lines.filter((line): line is StepLine => line.kind === "step" && line.endMinutes > line.startMinutes);
  const rows: TimelineRow[] = [];
  const add = (row: TimelineRow) => rows.push(row);
  for (let cook = 1; cook <= cooks; cook++) {
    add({ kind: "hands", ...(cooks > 1 && { number: cook }), bars: handsBars(lines, cook) });
  }
  for (let ring = 1; ring <= kit.rings; ring++) {
    const on = steps.filter((line) => line.kit.some(({ part, number = 1 }) => part === "ring" && number === ring));
    add({ kind: "ring", ...(kit.rings > 1 && { number: ring }), bars: on.map((line) => toBar(line, "held")) });
  }
  add({ kind: "oven", bars: ovenBars(lines, steps) });
  for (const part of SINGLE) {
    add({
      kind: part,
      bars: steps.filter((line) => line.kit.some((each) => each.part === part)).map((line) => toBar(line, "held")),
    });
  }
  for (const at of dishes.keys()) add({ kind: "waiting", number: at + 1, bars: waitingBars(timed, at) });
  return rows.filter(({ bars }) => bars.length > 0);
}

function toBar({ startMinutes, endMinutes, dish, step }: StepLine, fill: TimelineBar["fill"]): TimelineBar {
  return { startMinutes, endMinutes, dish, label: step, fill };
}

function handsBars(lines: readonly SheetLine[], cook: number): TimelineBar[] {
  return lines.flatMap((line): TimelineBar[] => {
    if (line.kind === "oven" || !line.cooks.includes(cook)) return [];
    if (line.kind === "step")
      return line.endMinutes > line.startMinutes ? [toBar(line, line.hands === "full" ? "full" : "eye")] : [];
    return [{ startMinutes: line.startMinutes, endMinutes: line.endMinutes, label: `wash ${line.part}`, fill: "wash" }];
  });
}

function ovenBars(lines: readonly SheetLine[], steps: readonly StepLine[]): TimelineBar[] {
  return [
    ...lines.flatMap((line): TimelineBar[] => {
      if (line.kind !== "oven" || line.endMinutes <= line.startMinutes) return [];
      return [
        { startMinutes: line.startMinutes, endMinutes: line.endMinutes, label: `${line.tempC} °C`, fill: "warming" },
      ];
    }),
    ...steps.filter((line) => line.kit.some(({ part }) => part === "oven")).map((line) => toBar(line, "held")),
  ];
}

/** Hot food between two steps, and the finished dish until it is served. */
function waitingBars({ cooking, plan }: TimedCooking, dish: number): TimelineBar[] {
  const { problem, steps } = cooking;
  const endOf = (i: number) => (plan.starts[i] as number) + (problem.steps[i]?.minutes as number);
  const bar = (from: number, until: number): TimelineBar[] => {
    const step = steps[from]?.step;
    if (step === undefined || step.kind === "heat-water" || until <= endOf(from)) return [];
    return [{ startMinutes: endOf(from), endMinutes: until, dish, label: step.id, fill: "waiting" }];
  };
  const between = problem.waits.flatMap(({ from, to, weight }) =>
    problem.steps[from]?.dish === dish && weight !== undefined ? bar(from, plan.starts[to] as number) : [],
  );
  const { last } = problem.dishes[dish] as (typeof problem.dishes)[number];
  return [...between, ...bar(last, plan.serveMinutes)];
}
