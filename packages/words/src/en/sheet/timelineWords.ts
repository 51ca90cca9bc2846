import type { TimelineRow, WorkSheet } from "halfloaf/kitchen";
import { letterOf, type TimelineWords } from "halfloaf/sheet";
import { tellMoment } from "../../clockWords.ts";
import { tellMinutes } from "../amountWords.ts";
import { ROW_NAMES } from "../nameWords.ts";

/** What the picture of a timeline says in words. */
export function timelineWords(sheet: WorkSheet): TimelineWords {
  const dishes = sheet.dishes.map(({ title }, at) => `${letterOf(at)} ${title}`).join("; ");
  const steps = sheet.lines.flatMap((line) =>
    line.kind === "step" ? [`${tellMoment(sheet, line.startMinutes)} ${letterOf(line.dish)} ${line.step}`] : [],
  );
  return {
    title: `Order of work: ${dishes}`,
    description: `${tellMinutes(sheet.serveMinutes)} from the first step to the plate. ${steps.join(", ")}, ${tellMoment(sheet, sheet.serveMinutes)} serve.`,
    rowName: nameRow,
    barName: ({ label }) => label,
    tick: (minutes) => tellMoment(sheet, minutes),
    legend: {
      full: "both hands",
      eye: "an eye on it",
      held: "in use",
      wash: "washing up",
      warming: "oven warms up",
      waiting: "waits",
    },
  };
}

/** A row among others: "hands", "ring 2", "A waits". */
export function nameRow({ kind, number }: TimelineRow): string {
  if (kind === "waiting") return `${letterOf((number ?? 1) - 1)} waits`;
  const name = ROW_NAMES[kind].toLowerCase();
  return number === undefined ? name : `${name} ${number}`;
}
