import { tellDay, tellDayShort, tellMass, tellMoney, tellPortions } from "@halfloaf/words/en";
import { PLACES } from "halfloaf/food";
import { layTable, wrap, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { tellDaysLeft, tellPlace, tellToCount } from "../words/keepWords.ts";
import type { Names } from "../words/Names.ts";
import type { StoresLine, StoresReport } from "./StoresReport.ts";

/** The stores to be laid out as a page. */
export interface StoresPage extends Page {
  readonly data: StoresReport;
  readonly names: Names;
}

const COLUMNS = [
  { title: "", wraps: true },
  { title: "left", right: true },
  { title: "until" },
  { title: "cost", right: true },
];

/** What must be used up, then what is in each place, in the order in which to use it, and what it cost. */
export function layStores(page: StoresPage): string[] {
  const { data, paint, width } = page;
  const sum = data.lots.reduce((total, { costMinor }) => total + costMinor, 0);
  return [
    paint.strong(tellDay(data.on)),
    ...layUseUp(page),
    ...PLACES.flatMap((place) => layPlace(page, place)),
    ...layDoubts(page),
    "",
    ...wrap(`All that is here cost ${tellMoney(sum, data.currency)} ${data.currency}.`, width),
  ];
}

function nameOf({ names }: StoresPage, { food, dish, lot }: StoresLine): string {
  if (dish !== undefined) return names.dish(dish);
  return food === undefined ? lot : names.food(food);
}

function tellLeft({ portions, massG }: StoresLine): string {
  return portions === undefined ? tellMass(massG) : tellPortions(portions);
}

function layUseUp(page: StoresPage): string[] {
  const { data, paint, width } = page;
  const lines = data.lots.filter(({ lot }) => data.useUp.includes(lot));
  if (lines.length === 0) return [];
  const told = lines.flatMap((line) => {
    const text = `${nameOf(page, line)}, ${tellLeft(line)}: ${tellDaysLeft(line.daysLeft)}`;
    const laid = wrapBehind("  ", text, width);
    return (line.daysLeft ?? 0) < 0 ? laid.map(paint.warning) : laid;
  });
  return ["", paint.heading("USE UP"), "", ...told];
}

function layPlace(page: StoresPage, place: StoresLine["place"]): string[] {
  const { data, paint, width } = page;
  const rows = data.lots
    .filter((line) => line.place === place)
    .map((line) => [
      nameOf(page, line),
      tellLeft(line),
      line.until === undefined ? "not known" : `${tellDayShort(line.until)} ${line.until.slice(0, 4)}`,
      tellMoney(line.costMinor, data.currency),
    ]);
  if (rows.length === 0) return [];
  return ["", paint.heading(tellPlace(place).toUpperCase()), "", ...layTable(COLUMNS, rows, width, 2)];
}

function layDoubts(page: StoresPage): string[] {
  const { data, paint, width } = page;
  const told = data.lots.flatMap((line) =>
    line.toCountG === undefined ? [] : wrapBehind("  ", tellToCount(nameOf(page, line), line.toCountG), width),
  );
  return told.length === 0 ? [] : ["", paint.heading("TO COUNT"), "", ...told];
}
