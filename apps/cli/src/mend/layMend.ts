import { tellCount, tellDay, tellDayShort, tellMass, tellMinutes, tellMoney } from "@halfloaf/words/en";
import { harmless } from "../output/harmless.ts";
import { layTable, spread, wrap, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import { pad } from "../output/textWidth.ts";
import { tellReason } from "../words/mendWords.ts";
import type { Names } from "../words/Names.ts";
import { tellTaken } from "../words/takenWords.ts";
import type { MendReport } from "./MendReport.ts";

/** A mended week to be laid out as a page. */
export interface MendPage extends Page {
  readonly report: MendReport;
  readonly names: Names;
}

type Part = (page: MendPage) => string[];

/** What changes and why, what it costs, the price of keeping, what is bought otherwise, the days that changed. */
export function layMend(page: MendPage): string[] {
  const parts: Part[] = [layChanges, layOtherWays, layBesides, layCosts, layKeeping, layBuying, layDays, layGuests];
  const laid = parts.map((part) => part(page)).filter((lines) => lines.length > 0);
  return laid.flatMap((lines, at) => (at === 0 ? lines : ["", ...lines]));
}

function head({ paint }: Page, text: string): string {
  return paint.heading(text.toUpperCase());
}

function layChanges(page: MendPage): string[] {
  const { report, names, width, paint } = page;
  const title = head(page, "What changes");
  if (report.sittings.length === 0) {
    const kept = report.kept ? "Nothing: the plan stands as it was." : "No dish changes.";
    return [title, "", ...wrap(kept, width)];
  }
  const lines = report.sittings.flatMap((sitting) => {
    const { date, kind, eaters, before, after } = sitting;
    const where = `${tellDayShort(date)} ${kind} (${eaters.map(names.eater).join(", ")})`;
    const what = [
      ...(after === undefined ? [] : [names.dish(after)]),
      ...(before === undefined ? [] : [`${after === undefined ? "no" : "not"} ${names.dish(before)}`]),
    ].join(", ");
    return [
      ...wrapBehind("  ", `${where}: ${what}`, width),
      ...wrapBehind("    ", tellReason(sitting, report.currency), width).map(paint.quiet),
    ];
  });
  return [title, "", ...lines];
}

/** What came besides the week's lists and is planned with, and how much of it is used. */
function layBesides(page: MendPage): string[] {
  const { report, names, width } = page;
  const lots = new Map(report.week.lots.map((lot) => [lot.id, lot]));
  const lines = (report.week.besides ?? []).flatMap(({ stock, paidMinor }) => {
    const paid = paidMinor > 0 ? `, paid ${tellMoney(paidMinor, report.currency)}` : "";
    const used = lots.get(stock.id)?.usedG ?? 0;
    const use = used > 0 ? `${tellMass(used)} of it is planned for` : "none of it is planned for";
    return wrapBehind("  ", `${names.food(stock.food)}, ${tellMass(stock.massG)}${paid}: ${use}`, width);
  });
  return lines.length === 0 ? [] : [head(page, "At hand besides"), "", ...lines];
}

/** Dishes that stay and are cooked with other makings. */
function layOtherWays(page: MendPage): string[] {
  const { report, names, width } = page;
  const lines = (report.otherWays ?? []).flatMap(({ date, kind, dish, taken }) => {
    const how = taken.length === 0 ? "as it is first stated" : `with ${tellTaken({ taken }, names)}`;
    return wrapBehind("  ", `${tellDayShort(date)} ${kind}: ${names.dish(dish)}, now ${how}`, width);
  });
  return lines.length === 0 ? [] : [head(page, "Cooked with other makings"), "", ...lines];
}

function layCosts(page: MendPage): string[] {
  const { before, after, currency } = page.report;
  const money = (minor: number): string => tellMoney(minor, currency);
  const signed = (minor: number): string => (minor > 0 ? `+${money(minor)}` : money(minor));
  const rows = [
    ["Tills and fares", money(before.paidMinor), money(after.paidMinor), signed(after.paidMinor - before.paidMinor)],
    ["Thrown away", money(before.wasteMinor), money(after.wasteMinor), signed(after.wasteMinor - before.wasteMinor)],
    [
      "Carried over",
      money(before.carryOverMinor),
      money(after.carryOverMinor),
      signed(after.carryOverMinor - before.carryOverMinor),
    ],
    [
      "Hands-on",
      tellMinutes(before.handsOnMinutes),
      tellMinutes(after.handsOnMinutes),
      tellExtraMinutes(after.handsOnMinutes - before.handsOnMinutes),
    ],
  ];
  const columns = [
    { title: "", wraps: true },
    { title: "before", right: true },
    { title: "now", right: true },
    { title: "change", right: true },
  ];
  return [head(page, `What it costs (${harmless(currency)})`), "", ...layTable(columns, rows, page.width, 2)];
}

function tellExtraMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  return `${whole > 0 ? "+" : ""}${whole} min`;
}

function layKeeping(page: MendPage): string[] {
  const { priceMinor, moves } = page.report.keeping;
  const { currency } = page.report;
  const sentence =
    priceMinor > 0
      ? `Keeping to the old plan costs ${tellMoney(priceMinor, currency)} ${currency}: so much less a plan made afresh would cost, with minutes, dislikes and shortfalls weighed in.`
      : `Keeping to the old plan costs nothing: in ${moves} moves no plan made afresh was found that is cheaper.`;
  return [head(page, "Price of keeping"), "", ...wrap(sentence, page.width)];
}

function layBuying(page: MendPage): string[] {
  const { report, names, width } = page;
  if (report.buying.length === 0) return [];
  const trips = [...new Set(report.buying.map(({ date, shop }) => `${date} ${shop}`))];
  const lines = trips.flatMap((trip) => {
    const own = report.buying.filter(({ date, shop }) => `${date} ${shop}` === trip);
    const [first] = own;
    if (first === undefined) return [];
    const rows = own.flatMap(({ label, before, after }) =>
      spread(harmless(label), `${before} -> ${tellCount(after, "pack")}`, width, "    "),
    );
    return [`  ${names.shop(first.shop)}, ${tellDayShort(first.date)}`, ...rows];
  });
  return [head(page, "To buy, other than before"), "", ...lines];
}

/** The days on which something changed, whole, so that they can be read by themselves. */
function layDays(page: MendPage): string[] {
  const { report, names, width, paint } = page;
  const dates = [...new Set(report.sittings.map(({ date }) => date))];
  const days = dates.flatMap((date) => {
    const sittings = report.week.sittings.filter((sitting) => sitting.date === date);
    const lines = sittings.flatMap(({ kind, dish, eaters, leftover, batch }) => {
      const planned = report.week.batches[batch];
      const taken = planned === undefined || leftover ? "" : tellTaken(planned, names);
      const who = eaters.map(names.eater).join(", ");
      const how = leftover ? ", left over" : taken === "" ? "" : `, with ${taken}`;
      const text = `${names.dish(dish)} (${who === "" ? "nobody" : who})${how}`;
      return wrapBehind(pad(`  ${kind}`, 11), text, width);
    });
    return ["", paint.strong(tellDay(date)), ...(lines.length > 0 ? lines : ["  nobody eats here"])];
  });
  return days.length === 0 ? [] : [head(page, "The days that change"), ...days];
}

function layGuests(page: MendPage): string[] {
  const hasGuests = page.report.sittings.some(({ why }) => why.kind === "guests");
  const text =
    "Ask guests about allergies and what they don't eat: the kitchen knows nothing of them, and the dishes are chosen for its own eaters.";
  return hasGuests ? wrap(text, page.width) : [];
}
