import { tellCount, tellMoney } from "@halfloaf/words/en";
import { harmless } from "../../output/harmless.ts";
import { wrap, wrapBehind } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";
import { type BesideRow, layBeside } from "../layBeside.ts";
import { layMisfits } from "../layMisfits.ts";
import type { PartOf, ReadPrice } from "../ReadReport.ts";

const MOST_ROWS = 200;
const TITLES = ["as printed", "understood as"] as const;
const BY = { gtin: "by its number", memory: "as said", label: "by its label" } as const;
const WITHOUT: Readonly<Record<string, string>> = {
  "day-unknown": "no price is kept: the day is not known (--on)",
  "shop-unknown": "no price is kept: the shop is not known (--shop)",
  "price-not-whole": "no price is kept: the price of one is no whole number",
  "content-unlike": "no price is kept: it holds another amount than the pack did",
};

/** A price list as a page. */
export function layPriceList({ file, currency, rows, issues, issueCount }: PartOf<"prices">, page: Page): string[] {
  const shown = rows.slice(0, MOST_ROWS);
  return [
    ...wrap(`${harmless(file)}: a price list of ${tellCount(rows.length, "row")}, in ${currency}`, page.width).map(
      page.paint.strong,
    ),
    "",
    ...layBeside(
      shown.map((row) => toRow(row, currency)),
      page,
      TITLES,
    ),
    ...(rows.length > shown.length ? [`and ${rows.length - shown.length} more rows; --json lists all`] : []),
    ...laySum(rows, page),
    ...layMisfits(issues, issueCount, page),
  ];
}

/** A receipt as a page: its head, each line beside its pack, whether the sum is right, what was not read. */
export function layReceipt(part: PartOf<"receipt">, page: Page): string[] {
  const { file, currency, shop, shopText, date, rows, extras, balance, totalMinor, unread, issues } = part;
  const { width, paint } = page;
  const money = (minor: number) => tellMoney(minor, currency);
  const head = `a receipt of ${shop ?? `a shop that is not known (${harmless(shopText ?? "no head")})`}, ${date ?? "day not known"}, in ${currency}`;
  const misfits = issues.filter(({ code }) => code !== "total");
  const apart = balance.kind === "apart" ? paint.warning : paint.good;
  return [
    ...wrap(`${harmless(file)}: ${harmless(head)}`, width).map(paint.strong),
    "",
    ...layBeside(
      rows.map((row) => toRow(row, currency)),
      page,
      TITLES,
    ),
    ...extras.flatMap(({ line, name, kind, amountMinor }) =>
      wrapBehind(`${line} `, `${harmless(name)} ${money(amountMinor)} (${kind.replace("-", " ")})`, width),
    ),
    "",
    ...wrap(tellBalance(balance, totalMinor, money), width).map(apart),
    ...laySum(rows, page),
    // What the sums are apart is told above.
    ...layMisfits(misfits, misfits.length, page),
    ...(unread.length === 0
      ? []
      : [
          "",
          paint.heading("LINES WITHOUT A PRICE OF THEIR OWN"),
          ...unread.flatMap(({ line, text }) => wrapBehind(`  line ${line}: `, harmless(text), width)),
        ]),
  ];
}

function tellBalance(
  { kind, sumMinor, taxMinor, apartMinor }: PartOf<"receipt">["balance"],
  totalMinor: number | undefined,
  money: (minor: number) => string,
): string {
  if (kind === "no-total" || totalMinor === undefined)
    return `No total was found; the lines add up to ${money(sumMinor)}.`;
  if (kind === "equal") return `The lines add up to the total of ${money(totalMinor)}.`;
  if (kind === "tax-added")
    return `The lines and the tax of ${money(taxMinor ?? 0)} add up to the total of ${money(totalMinor)}.`;
  return `The total of ${money(totalMinor)} is ${money(Math.abs(apartMinor ?? 0))} ${(apartMinor ?? 0) > 0 ? "more" : "less"} than the lines, ${money(sumMinor)}. Look for a line that was misread.`;
}

function toRow(row: ReadPrice, currency: string): BesideRow {
  const { line, label, priceMinor, discountMinor, measure, shop, gtin, offer, seen, pack, nearest, outcome } = row;
  const money = (minor: number) => tellMoney(minor, currency);
  const off = discountMinor === undefined ? "" : ` ${money(discountMinor)}`;
  const left = [
    label,
    ...(measure === undefined ? [] : [measure]),
    money(priceMinor) + off,
    ...(gtin === undefined ? [] : [gtin]),
  ].join("  ");
  const right: { text: string; isDoubt?: boolean }[] = [];
  if (pack !== undefined) right.push({ text: `${pack.id} (${BY[pack.by]}), ${money(pack.wasMinor)} so far` });
  else if (outcome === "new-pack") right.push({ text: "a new pack" });
  else
    right.push({
      text:
        nearest.length === 0
          ? "no pack like it"
          : `which pack? nearest: ${nearest.map((each) => each.pack).join(", ")}`,
      isDoubt: true,
    });
  if (offer) right.push({ text: `offer: ${offer.count} for ${money(offer.priceMinor)}` });
  if (WITHOUT[outcome] !== undefined) right.push({ text: WITHOUT[outcome], isDoubt: true });
  if (seen && outcome === "price") right.push({ text: `seen ${seen.on} at ${seen.at}` });
  else if (shop !== undefined && outcome === "pack-open") right.push({ text: `at ${shop}` });
  return {
    lead: String(line),
    left: harmless(left),
    right: right.map((each) => ({ ...each, text: harmless(each.text) })),
  };
}

function laySum(rows: readonly ReadPrice[], { width, paint }: Page): string[] {
  const count = (outcome: string) => rows.filter((row) => row.outcome === outcome).length;
  const known = count("price") + count("new-pack");
  const open = count("pack-open");
  return [
    "",
    ...wrap(
      `${tellCount(known, "price")} can be kept, ${open} of no known pack, ${rows.length - known - open} of no use yet.`,
      width,
    ).map(paint.strong),
    ...(open === 0
      ? []
      : wrap(
          '--pack "LINE=PACK" says which pack a line is, and is remembered; --food "LINE=ID" makes a new pack of it, with --amount "LINE=500 g" where the label does not tell what it holds.',
          width,
        )),
  ];
}
