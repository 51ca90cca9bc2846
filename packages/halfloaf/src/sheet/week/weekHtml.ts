import type { Printed } from "../claim/Claim.ts";
import { checkClaims } from "../claim/checkClaims.ts";
import { claimsHtml } from "../claim/claimsHtml.ts";
import { dayBody, type SheetOptions } from "../day/dayHtml.ts";
import { flowHtml, sourcesHtml } from "../day/daySections.ts";
import { intakeHtml } from "../day/intakeHtml.ts";
import { fitPage } from "../html/fitPage.ts";
import { type Html, html } from "../html/html.ts";
import { name, table } from "../html/table.ts";
import { toPage } from "../html/toPage.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { WeekSheet } from "./WeekSheet.ts";

/**
 * The week sheet as an HTML page: the week on its first page, then one page a day. Where a line of any day contradicts a
 * claim, nothing is printed and the lines come back.
 */
export function weekHtml(
  sheet: WeekSheet,
  words: SheetWords,
  { paper = "a4", claims = [] }: SheetOptions = {},
): Printed {
  const broken = checkClaims(claims, sheet.days);
  if (broken.length > 0) return { kind: "refused", broken };
  const { day, figures } = words;
  const title = day.weekTitle(sheet.kitchen, figures.day(sheet.from), figures.day(sheet.to));
  const days = sheet.days.map((each) =>
    dayBody(each, words, paper, html`<h1>${day.title(each.kitchen, figures.day(each.date))}</h1>`, false),
  );
  const overview = fitPage(
    {
      above: [
        html`<h1>${title}</h1>`,
        html`<p class="note">${day.moneyIn(sheet.currency)}</p>`,
        claimsHtml(claims, sheet.days, words),
        daysHtml(sheet, words),
      ],
      columns: [
        flowHtml(sheet.flow, sheet.currency, words),
        tillsHtml(sheet, words),
        sourcesHtml({ ...sheet, eachFood: false }, words),
      ],
      below: [
        intakeHtml(sheet.intake, day.intakeOfWeek, words),
        html`<p class="note">${day.cautionsOnDays} ${words.calculated} ${words.careFirst}</p>`,
      ],
    },
    paper,
  );
  const body = html`${overview}
${days}`;
  return { kind: "printed", html: toPage({ title, paper, body }, words) };
}

/** The menu by day, with what the plates of each eater come to. */
function daysHtml({ days, currency, platesMinor, handsOnMinutes }: WeekSheet, words: SheetWords): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, currency);
  const rows = days.map((each) => [
    figures.dayShort(each.date),
    html`<ul class="plain">${each.sittings.map(
      (line) =>
        html`<li><span class="note">${figures.sitting(line.kind)}</span> ${name(line.dish.name)}${line.leftover && html` <span class="note">(${day.leftover(line.cookedOn && figures.dayShort(line.cookedOn))})</span>`}</li>`,
    )}</ul>`,
    figures.minutes(each.handsOnMinutes),
    money(each.platesMinor),
  ]);
  return html`<section><h2>${day.menu}</h2>${table({
    columns: [
      { title: day.date },
      { title: day.dish },
      { title: day.handsOn, isFigure: true },
      { title: day.onPlates, isFigure: true },
    ],
    rows,
    sums: [[day.weekTotal, "", figures.minutes(handsOnMinutes), money(platesMinor)]],
  })}</section>`;
}

/** What each till says, and what the week has cost against its budget. */
function tillsHtml({ days, currency, flow, budget }: WeekSheet, words: SheetWords): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, currency);
  const trips = days.flatMap(({ date, trips: each }) => each.map((trip) => ({ date, trip })));
  const fareMinor = trips.reduce((sum, { trip }) => sum + trip.fareMinor, 0);
  return html`<section><h2>${day.bought}</h2>${table({
    columns: [{ title: day.pack }, { title: day.till, isFigure: true }],
    rows: trips.map(({ date, trip }) => [
      day.trip(trip.shop.name, figures.dayShort(date), figures.minutes(trip.minutes)),
      money(trip.tillMinor),
    ]),
    sums: [[day.toTills, money(flow.tillMinor)]],
  })}${fareMinor > 0 && html`<p class="note">${day.fare(money(fareMinor))}</p>`}
${budget !== undefined && html`<p>${day.budget(money(budget.budgetMinor), money(budget.paidMinor), money(Math.abs(budget.budgetMinor - budget.paidMinor)), budget.paidMinor > budget.budgetMinor)}</p>`}</section>`;
}
