import { tellCount, tellDayShort, tellMinutes, tellMoney } from "@halfloaf/words/en";
import { addDays } from "halfloaf/quantity";
import { harmless } from "../output/harmless.ts";
import { layTable, wrap } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import type { ChoicesReport } from "./ChoicesReport.ts";

type Choice = ChoicesReport["choices"][number];

const TITLES: Readonly<Record<ChoicesReport["against"], string>> = {
  minutes: "Money against minutes",
  variety: "Money against different dishes",
  intake: "Money against shortfalls",
};

/** The choices as a small table, each with what the step to the next one costs. */
export function layChoices({ width, paint }: Page, report: ChoicesReport): string[] {
  const { choices, currency, from, days } = report;
  const money = (minor: number): string => tellMoney(minor, currency);
  const rows = choices.map((choice, at) => [
    money(choice.moneyMinor),
    money(choice.paidMinor),
    tellMinutes(choice.minutes),
    String(choice.distinct),
    money(choice.shortfallMinor),
    tellNext(choice, choices[at + 1], report),
  ]);
  const columns = [
    { title: "money", right: true },
    { title: "paid", right: true },
    { title: "minutes", right: true },
    { title: "evenings", right: true },
    { title: "shortfall", right: true },
    { title: "next step", wraps: true },
  ];
  const when = `${tellDayShort(from)} to ${tellDayShort(addDays(from, days - 1))}`;
  return [
    ...wrap(`${harmless(report.kitchen)}, ${when}. Money in ${harmless(currency)}.`, width).map(paint.strong),
    "",
    paint.heading(TITLES[report.against].toUpperCase()),
    "",
    ...layTable(columns, rows, width, 2),
    "",
    ...wrap(LEGEND, width),
  ];
}

const LEGEND =
  "Money: paid, less what the stock gains. Minutes: hands-on and trips. Evenings: different dishes there. Shortfall: what misses the references, at the kitchen's price for it; no figure here is a diagnosis. Every row is a checked plan that no other found beats in both; a longer --effort may find better ones.";

function tellNext(choice: Choice, next: Choice | undefined, { against, currency }: ChoicesReport): string {
  if (next === undefined) return "";
  const extra = tellMoney(next.moneyMinor - choice.moneyMinor, currency);
  if (against === "minutes") return `${tellMinutes(choice.minutes - next.minutes)} less for ${extra}`;
  if (against === "variety") return `${tellCount(next.distinct - choice.distinct, "dish", "dishes")} more for ${extra}`;
  return `${tellMoney(choice.shortfallMinor - next.shortfallMinor, currency)} less short for ${extra}`;
}
