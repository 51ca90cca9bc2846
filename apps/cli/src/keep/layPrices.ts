import { tellDayShort, tellMoney } from "@halfloaf/words/en";
import { harmless } from "../output/harmless.ts";
import { layTable, wrap } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { NO_PACKS, tellAge } from "../words/keepWords.ts";
import type { Names } from "../words/Names.ts";
import type { PricesReport } from "./PricesReport.ts";

/** Prices to be laid out as a page. */
export interface PricesPage extends Page {
  readonly data: PricesReport;
  readonly names: Names;
}

type PackPrices = PricesReport["packs"][number];

const COLUMNS = [
  { title: "", wraps: true },
  { title: "a pack", right: true },
  { title: "a kg", right: true },
  { title: "seen" },
];

/** By food: each pack with its price, its unit price and how old that is, the cheapest unit price first; then how it moved. */
export function layPrices(page: PricesPage): string[] {
  const { data, paint, width, names } = page;
  const foods = [...new Set(data.packs.map(({ food }) => food))];
  if (foods.length === 0) return wrap(NO_PACKS, width);
  const money = (minor: number): string => tellMoney(Math.round(minor), data.currency);
  return foods.flatMap((food, at) => {
    const packs = data.packs.filter((pack) => pack.food === food).sort(byUnitPrice);
    const rows = packs.flatMap((pack) => [
      [
        `${harmless(pack.label)} (${names.shop(pack.shop)})`,
        money(pack.priceMinor),
        pack.perKgMinor === undefined ? "not known" : money(pack.perKgMinor),
        tellAge(pack.sureness, pack.ageDays),
      ],
      ...layMoves(pack, money),
    ]);
    return [
      ...(at === 0 ? [] : [""]),
      paint.heading(`${names.food(food).toUpperCase()} (${data.currency})`),
      ...layTable(COLUMNS, rows, width, 2),
    ];
  });
}

function byUnitPrice(a: PackPrices, b: PackPrices): number {
  return (a.perKgMinor ?? Number.POSITIVE_INFINITY) - (b.perKgMinor ?? Number.POSITIVE_INFINITY);
}

/** The looks before the last one, the earliest first, with the change from one to the next. */
function layMoves({ points }: PackPrices, money: (minor: number) => string): string[][] {
  if (points.length < 2) return [];
  return points.map(({ on, priceMinor, perKgMinor, changePct }) => {
    const change = changePct === undefined ? "" : ` ${changePct > 0 ? "+" : ""}${Math.round(changePct)} %`;
    return [
      `  ${tellDayShort(on)} ${on.slice(0, 4)}${change}`,
      money(priceMinor),
      perKgMinor === undefined ? "" : money(perKgMinor),
      "",
    ];
  });
}
