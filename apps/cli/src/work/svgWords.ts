import type { WorkSheet } from "halfloaf/kitchen";
import { letterOf, type TimelineWords } from "halfloaf/sheet";
import { tellMinutes } from "../words/amountWords.ts";
import { nameRow } from "./layTimeline.ts";
import { tellMoment } from "./WorkPage.ts";

/** What the picture of a timeline says in words. */
export function toSvgWords(sheet: WorkSheet): TimelineWords {
  const dishes = sheet.dishes.map(({ title }, at) => `${letterOf(at)} ${title}`).join("; ");
  const steps = sheet.lines.flatMap((line) =>
    line.kind === "step" ? [`${tellMoment(sheet, line.startMinutes)} ${letterOf(line.dish)} ${line.step}`] : [],
  );
  return {
    title: `Order of work: ${dishes}`,
    description: `${tellMinutes(sheet.serveMinutes)} from the first step to the plate. ${steps.join(", ")}, ${tellMoment(sheet, sheet.serveMinutes)} serve.`,
    rowName: nameRow,
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
