import type { Claim, Printed } from "../claim/Claim.ts";
import { checkClaims } from "../claim/checkClaims.ts";
import { claimsHtml } from "../claim/claimsHtml.ts";
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

/** The page of one day under a heading of its own. */
export function dayBody(sheet: DaySheet, words: SheetWords, paper: Paper, heading: Html, claims: Html | false): Html {
  const intake = intakeHtml(sheet.intake, words.day.intakeOfDay, words);
  const isWide = sheet.intake.length > MOST_IN_COLUMN;
  return html`<article class="sheet${crowding(sheet, words, paper)}">
${heading}
<p class="note">${words.day.moneyIn(sheet.currency)}</p>
${claims}
${menuHtml(sheet, words)}
<div class="flow">
${tripsHtml(sheet.trips, sheet.currency, words)}
${flowHtml(sheet.flow, sheet.currency, words)}
${leftHtml(sheet, words)}
${!isWide && intake}
${sourcesHtml(sheet, words)}
${cautionsHtml(sheet, words)}
</div>
${isWide && html`<div class="all">${intake}</div>`}
<p class="note">${words.calculated} ${words.careFirst}</p>
</article>`;
}

/** Eaters whose intake has room side by side in one column. */
const MOST_IN_COLUMN = 3;

/**
 * Sizes of letters, and the most lines of a column that a page holds in each; found by printing the fullest days of the demo
 * kitchens. What has more lines than the last takes the last, and a second page where even that is not enough.
 */
const SIZES = [
  { most: 56, look: "" },
  { most: 88, look: " full tight" },
  { most: 130, look: " crowded tight" },
  { most: Number.POSITIVE_INFINITY, look: " brimming tight" },
] as const;
/** Letter is so much shorter than A4. */
const LETTER_SHARE = 0.93;

/** Smaller letters where the day has more to say than a page holds in large ones. */
function crowding(sheet: DaySheet, words: SheetWords, paper: Paper): string {
  const lines = countLines(sheet, words) / (paper === "letter" ? LETTER_SHARE : 1);
  return (SIZES.find(({ most }) => lines <= most) as (typeof SIZES)[number]).look;
}

/** About how many lines of a column the day takes; long texts take several. */
function countLines(
  { sittings, trips, left, wasted, intake, cautions, sources }: DaySheet,
  { cautions: { tellCaution, tellAuthority } }: SheetWords,
): number {
  const inLines = (text: string) => Math.ceil(text.length / 58);
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
  const shown = new Set(
    intake.flatMap(({ lines }) =>
      lines
        .filter(({ verdict }) => verdict === "short" || verdict === "above")
        .map(({ component, kind }) => component + kind),
    ),
  );
  return sum([
    ...sittings.map(({ dish }) => 3 * inLines(dish.name)),
    ...trips.map(({ lines }) => 4 + lines.length),
    left.soon.length + left.waiting.length + 4 + wasted.length,
    2 * intake.length + shown.size * Math.max(1, Math.min(3, intake.length - 1)),
    ...cautions.map(({ code, text, authority, dishes }) =>
      inLines(`${tellCaution(code, text)} ${tellAuthority(authority)} ${"A, ".repeat(dishes.length)}`),
    ),
    ...sources.map(({ foods }) => inLines(foods.join(", ")) + 1),
    16,
  ]);
}
