import { tellMoney } from "@halfloaf/words/en";
import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import { priceHistory, type Stretch } from "halfloaf/kitchen/record";
import { parseWith } from "halfloaf/quantity";
import { accountsSvg, countPacks, frontierSvg, priceHistorySvg, ribbonsSvg } from "halfloaf/sheet";
import { ChoicesReport } from "../choices/ChoicesReport.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { accountsOf, type KeptAsk, withKept } from "./makeTable.ts";
import { openSheetWeek, type WeekAsk } from "./openSheetWeek.ts";

/** The pack ribbons of a week. */
export async function makeRibbons(ask: WeekAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openSheetWeek(ask, terminal);
  if (!source.ok) return source;
  const { week, kitchen, tables, names } = source.value;
  const { ribbons, sheet } = sheetCatalogueEn(kitchen.english);
  const words = ribbons(week.kitchen, week.from, countPacks(week));
  return { ok: true, value: ribbonsSvg(week, tables.foods, names, words, sheet.figures) };
}

/** What money is weighed against, from a file that `halfloaf choices --json` has printed. */
export function makeFrontier({ file }: { readonly file: string }, terminal: Terminal): Found<string> {
  const read = readJsonFile(file, terminal.cwd);
  if (!read.ok) return read;
  const { content } = read.value;
  const parsed = parseWith(ChoicesReport, content);
  if (!parsed.ok) return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
  const { choices, currency, kitchen, against } = parsed.value;
  const { frontier, tellAgainst, sheet } = sheetCatalogueEn("british");
  const points = choices.map(({ moneyMinor, minutes, distinct, shortfallMinor }) => {
    const other = { minutes, variety: distinct, intake: shortfallMinor }[against];
    return { moneyMinor, other, label: `${tellMoney(moneyMinor, currency)}, ${tellAgainst(against, other)}` };
  });
  const words = frontier(
    harmless(kitchen),
    against,
    points.map(({ label }) => label),
  );
  return { ok: true, value: frontierSvg(points, currency, words, sheet.figures) };
}

/** How the prices of a food have moved in a kept kitchen. */
export function makePrices(
  { food, ...ask }: KeptAsk & { readonly food?: string },
  terminal: Terminal,
): Promise<Found<string>> {
  return withKept(ask, terminal, ({ edited, state, foods, names }) => {
    const histories = priceHistory(edited, state, foods, food === undefined ? {} : { food });
    const tell = ({ label, shop }: (typeof histories)[number]) => `${harmless(label)}, ${names.shop(shop)}`;
    const told = histories.flatMap((history) => {
      const last = history.points.at(-1);
      const price = last && `${tellMoney(last.priceMinor, edited.currency)} on ${last.on}`;
      return price === undefined ? [] : [`${tell(history)}: ${price}`];
    });
    const { prices, sheet } = sheetCatalogueEn(edited.english);
    const words = prices(edited.name, edited.currency, told, tell);
    return priceHistorySvg(histories, edited.currency, words, sheet.figures);
  });
}

/** What was planned, spent, eaten and wasted in a kept kitchen. */
export function makeAccounts(
  { each, ...ask }: KeptAsk & { readonly each: Stretch },
  terminal: Terminal,
): Promise<Found<string>> {
  return withKept(ask, terminal, (source, { day }) => {
    const { edited } = source;
    const lines = accountsOf(source, each, day);
    const { accounts, sheet } = sheetCatalogueEn(edited.english);
    const words = accounts(edited.name, edited.currency, lines);
    return accountsSvg(lines, edited.currency, words, sheet.figures);
  });
}
