import { tellDay } from "@halfloaf/words/en";
import { wrap, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import type { WhyPart } from "./listWhySteps.ts";
import type { WhyReport } from "./WhyReport.ts";
import { tellAmount, type WhyTask } from "./WhyTask.ts";

/** What stands above the reasons. */
export function layWhyHead(page: Page, { moneyMinor }: WhyReport, task: WhyTask): string[] {
  const head = `The plan weighs ${tellAmount(task, moneyMinor)}: tills, fares, minutes, dislikes and shortfalls, less what is left. All differences are in this measure, found by search and not proven: a longer search may find cheaper plans.`;
  return wrap(head, page.width);
}

/** Reasons as lines; the title is left out that `above` has already. */
export function layWhyPart(
  page: Page,
  report: WhyPart,
  task: WhyTask,
  above?: string,
): { lines: string[]; title?: string } {
  const { names } = task;
  const where = ({ sitting, dish }: { sitting: { date: string; kind: string; eaters: string[] }; dish: string }) =>
    `${tellDay(sitting.date)}, ${sitting.kind} (${sitting.eaters.map(names.eater).join(", ")}): ${names.dish(dish)}`;
  const part = (title: string, heading: string, sentences: readonly string[]): Part => ({ title, heading, sentences });
  const parts: Part[] = [
    ...(report.packs ?? []).map((one) => part("Why these packs", names.food(one.food), one.sentences)),
    ...(report.dishes ?? []).map((one) => part("Why this dish", where(one), one.sentences)),
    ...(report.otherDishes ?? []).map((one) => part("Why not that dish", where(one), one.sentences)),
    ...(report.limits === undefined ? [] : [layLimits(report.limits)]),
  ];
  const title = parts.at(-1)?.title;
  const lines = parts.flatMap(({ title, heading, sentences }, at) => [
    ...((at === 0 ? above : parts[at - 1]?.title) === title ? [] : ["", page.paint.heading(title.toUpperCase())]),
    "",
    ...wrap(heading, page.width).map(page.paint.strong),
    ...sentences.flatMap((sentence) => wrapBehind("- ", sentence, page.width)),
  ]);
  return { lines, ...(title !== undefined && { title }) };
}

interface Part {
  readonly title: string;
  readonly heading: string;
  readonly sentences: readonly string[];
}

function layLimits(limits: NonNullable<WhyReport["limits"]>): Part {
  const sentences =
    limits.length === 0 ? ["The plan comes up to none of its limits."] : limits.map(({ sentence }) => sentence);
  return { title: "What the limits cost", heading: "Each loosened by itself", sentences };
}
