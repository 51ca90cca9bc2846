import type { Claim, Printed } from "../claim/Claim.ts";
import { checkClaims } from "../claim/checkClaims.ts";
import { claimsHtml } from "../claim/claimsHtml.ts";
import { fitPage } from "../html/fitPage.ts";
import { type Html, html } from "../html/html.ts";
import type { Paper } from "../html/sheetCss.ts";
import { toPage } from "../html/toPage.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { DaySheet } from "./DaySheet.ts";
import { cautionsHtml, flowHtml, leftHtml, menuHtml, sourcesHtml, tripsHtml } from "./daySections.ts";
import { intakeHtml } from "./intakeHtml.ts";

/** How a sheet is printed. */
export interface SheetOptions {
  /** A4 by default. */
  readonly paper?: Paper;
  /** What the sheet says of itself; it is not printed unless all of it is true. */
  readonly claims?: readonly Claim[];
}

/**
 * The day sheet as an HTML page. A claim that a line of the sheet contradicts is not printed, and neither is the sheet:
 * the lines that break it come back instead.
 */
export function dayHtml(sheet: DaySheet, words: SheetWords, { paper = "a4", claims = [] }: SheetOptions = {}): Printed {
  const broken = checkClaims(claims, [sheet]);
  if (broken.length > 0) return { kind: "refused", broken };
  const title = words.day.title(sheet.kitchen, words.figures.day(sheet.date));
  const body = dayBody(sheet, words, paper, html`<h1>${title}</h1>`, claimsHtml(claims, [sheet], words));
  return { kind: "printed", html: toPage({ title, paper, body }, words) };
}

/** Eaters whose intake has room side by side in one column. */
const MOST_IN_COLUMN = 3;

/** The page of one day under a heading of its own. */
export function dayBody(sheet: DaySheet, words: SheetWords, paper: Paper, heading: Html, claims: Html | false): Html {
  const intake = intakeHtml(sheet.intake, words.day.intakeOfDay, words);
  const isWide = sheet.intake.length > MOST_IN_COLUMN;
  return fitPage(
    {
      above: [heading, html`<p class="note">${words.day.moneyIn(sheet.currency)}</p>`, claims, menuHtml(sheet, words)],
      columns: [
        tripsHtml(sheet.trips, sheet.currency, words),
        flowHtml(sheet.flow, sheet.currency, words),
        leftHtml(sheet, words),
        !isWide && intake,
        sourcesHtml(sheet, words),
        cautionsHtml(sheet, words),
      ],
      below: [isWide && intake, html`<p class="note">${words.calculated} ${words.careFirst}</p>`],
    },
    paper,
  );
}
