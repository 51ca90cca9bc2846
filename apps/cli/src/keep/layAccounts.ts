import { tellDayShort, tellMass, tellMoney, tellPortions } from "@halfloaf/words/en";
import { layTable, wrap, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { type KeepNames, tellBudget, tellEnergyCost, tellSaving, tellWhyWasted } from "../words/keepWords.ts";
import type { AccountsReport } from "./AccountsReport.ts";

/** Accounts to be laid out as a page. */
export interface AccountsPage extends Page {
  readonly data: AccountsReport;
  readonly names: KeepNames;
}

/** The sums line by line, planned against what was, the cost of a plate, money left, and what was lost and why. */
export function layAccounts(page: AccountsPage): string[] {
  const { data, width } = page;
  const { energy } = data;
  return [
    ...laySums(page),
    ...layPlanned(page),
    ...layCookings(page),
    ...layPlates(page),
    ...layWaste(page),
    "",
    ...wrap(tellBudget(data.budget, data.currency), width),
    ...(energy === undefined ? [] : wrap(tellEnergyCost(energy, data.currency), width)),
  ];
}

const money = (page: AccountsPage, minor: number): string => tellMoney(minor, page.data.currency);

function laySums(page: AccountsPage): string[] {
  const { data, paint, width } = page;
  const columns = ["at start", "came in", "till", "eaten", "wasted", "left"].map((title) => ({ title, right: true }));
  const rows = data.lines.map((line) => [
    line.name,
    ...[
      line.openingMinor,
      line.enteredMinor,
      line.tillMinor,
      line.platesMinor,
      line.wasteMinor,
      line.carryOverMinor,
    ].map((minor) => money(page, minor)),
  ]);
  const title = paint.heading(`ACCOUNTS (${data.currency})`);
  return [title, "", ...layTable([{ title: "" }, ...columns], rows, width)];
}

function layPlanned(page: AccountsPage): string[] {
  const { data, paint, width } = page;
  const rows = data.lines.flatMap((line) =>
    line.planned === undefined
      ? []
      : (
          [
            ["tills", line.planned.tillMinor, line.tillMinor],
            ["fares", line.planned.faresMinor, line.faresMinor],
            ["plates", line.planned.platesMinor, line.platesMinor],
            ["waste", line.planned.wasteMinor, line.wasteMinor],
          ] as const
        ).map(([what, planned, was], at) => [
          at === 0 ? line.name : "",
          what,
          money(page, planned),
          money(page, was),
          `${was > planned ? "+" : ""}${money(page, was - planned)}`,
        ]),
  );
  if (rows.length === 0) return [];
  const columns = [
    { title: "", wraps: true },
    { title: "" },
    { title: "planned", right: true },
    { title: "was", right: true },
    { title: "", right: true },
  ];
  return ["", paint.heading("PLANNED AND AS IT WAS"), "", ...layTable(columns, rows, width)];
}

function layCookings(page: AccountsPage): string[] {
  const { data, paint, width, names } = page;
  if (data.cookings.length === 0) return [];
  const rows = data.cookings.map(({ on, dish, portions, portionMinor, atLeast, plannedPortionMinor }) => [
    tellDayShort(on),
    `${names.dish(dish)}, ${tellPortions(portions)}`,
    plannedPortionMinor === undefined ? "" : money(page, Math.round(plannedPortionMinor)),
    `${atLeast ? ">" : ""}${money(page, Math.round(portionMinor))}`,
  ]);
  const columns = [
    { title: "" },
    { title: "", wraps: true },
    { title: "planned", right: true },
    { title: "was", right: true },
  ];
  return ["", paint.heading("COST OF A PORTION"), "", ...layTable(columns, rows, width)];
}

function layPlates(page: AccountsPage): string[] {
  const { data, paint, width } = page;
  const eaten = data.sittings.filter(({ eatenPlates }) => eatenPlates > 0);
  if (eaten.length === 0) return [];
  const rows = eaten.map(({ on, sitting, plannedMinor, eatenMinor, eatenPlates, atLeast }) => [
    `${tellDayShort(on)}, ${sitting}`,
    String(eatenPlates),
    money(page, plannedMinor),
    `${atLeast ? ">" : ""}${money(page, eatenMinor)}`,
  ]);
  const columns = [
    { title: "", wraps: true },
    ...["plates", "planned", "was"].map((title) => ({ title, right: true })),
  ];
  return ["", paint.heading("SITTINGS"), "", ...layTable(columns, rows, width)];
}

function layWaste(page: AccountsPage): string[] {
  const { data, paint, width, names } = page;
  if (data.waste.length === 0) return [];
  const told = data.waste.flatMap(({ food, dish, massG, costMinor, lots }) => {
    const what = dish !== undefined ? names.dish(dish) : names.food(food ?? "");
    const savings = [...new Set(lots.flatMap((lot) => lot.savings.map((saving) => tellSaving(saving, names))))];
    return [
      ...wrapBehind("  ", `${what}, ${tellMass(massG)}: ${money(page, costMinor)}`, width),
      ...savings.flatMap((saving) => wrapBehind("    ", saving, width).map(paint.quiet)),
    ];
  });
  return ["", paint.heading("THROWN AWAY OR MISSING"), "", ...told, ...layReasons(page)];
}

/** What was lost for each reason; nothing where none was told, since the sum then says no more than the accounts do. */
function layReasons(page: AccountsPage): string[] {
  const { data, paint, width } = page;
  if (data.wasteByReason.every(({ why }) => why === undefined)) return [];
  const rows = data.wasteByReason.map(({ why, massG, costMinor }) => [
    tellWhyWasted(why),
    tellMass(massG),
    money(page, costMinor),
  ]);
  const columns = [
    { title: "", wraps: true },
    { title: "", right: true },
    { title: data.currency, right: true },
  ];
  return ["", paint.heading("WASTE BY REASON"), "", ...layTable(columns, rows, width)];
}
