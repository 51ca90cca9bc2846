import { type Html, html } from "../html/html.ts";
import type { Paper } from "../html/sheetCss.ts";
import { name, table } from "../html/table.ts";
import { toPage } from "../html/toPage.ts";
import { listCautions } from "../listCautions.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { LessonCooking, LessonPack, LessonPlate, LessonSheet } from "./LessonSheet.ts";

/**
 * A dish or a day for teaching, as one HTML page that needs nothing besides itself: the sums unfold without any script.
 * Throws where there is nothing to show.
 */
export function lessonHtml(
  sheet: LessonSheet,
  words: SheetWords,
  { paper = "a4" }: { readonly paper?: Paper } = {},
): string {
  const [first] = sheet.cookings;
  if (first === undefined) throw new RangeError("a lesson without a cooking shows nothing");
  const { lesson, figures, day } = words;
  const title =
    sheet.date === undefined ? lesson.title(first.dish.name) : lesson.dayTitle(sheet.kitchen, figures.day(sheet.date));
  const body = html`<article class="sheet">
<h1>${name(title)}</h1>
<p class="note">${day.moneyIn(sheet.currency)}</p>
${sheet.cookings.map((cooking) => cookingHtml(cooking, sheet, words))}
<p class="note">${words.calculated} ${words.careFirst}</p>
</article>`;
  return toPage({ title, paper, body }, words);
}

function cookingHtml(cooking: LessonCooking, sheet: LessonSheet, words: SheetWords): Html {
  const { lesson, figures, day } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const step = ({ text, minutes, isHandsFree, ahead }: LessonCooking["steps"][number]) =>
    html`<li>${text} <span class="note">${lesson.step(figures.minutes(minutes), isHandsFree)}${ahead && `, ${lesson.ahead}`}</span></li>`;
  return html`<section class="long"><h2>${name(cooking.dish.name)}</h2>
<p>${lesson.intro(cooking.portions, figures.minutes(cooking.elapsedMinutes))}</p>
<h3>${lesson.makings}</h3><ul>${cooking.makings.map((line) => html`<li>${name(line)}</li>`)}</ul>
<h3>${lesson.method}</h3><ol>${cooking.steps.map(step)}</ol>
<h3>${lesson.sums}</h3>
<p>${lesson.batchSum(money(cooking.costMinor), cooking.plates.map(({ costMinor }) => money(costMinor)).join(" + "))}</p>
${cooking.plates.map((plate) => plateHtml(plate, cooking, sheet, words))}
<details><summary>${lesson.packSum}</summary>${packsHtml(cooking, sheet, words)}</details>
${cooking.cautions.length > 0 && html`<h3>${day.cautions}</h3><ul>${listCautions(cooking.cautions, words)}</ul>`}</section>`;
}

/** Whose plate it is, at which sitting; else the number of the portion, or that it waits. */
function plateName(plate: LessonPlate, plates: readonly LessonPlate[], { lesson, figures }: SheetWords): string {
  const { eater, date, sitting } = plate;
  if (eater === undefined) {
    const isRest = plates.some((other) => other.eater !== undefined);
    return isRest ? lesson.later : lesson.portion(plates.indexOf(plate) + 1);
  }
  const when = [sitting && figures.sitting(sitting), date && figures.dayShort(date)];
  return [eater.name, ...when.filter((each) => each !== undefined)].join(", ");
}

/** One portion: what it used of each pack, and the sum. */
function plateHtml(plate: LessonPlate, { packs, plates }: LessonCooking, sheet: LessonSheet, words: SheetWords): Html {
  const { lesson, figures } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const title = plateName(plate, plates, words);
  const rows = packs.map((pack, at) => {
    const part = plate.parts[at];
    return [
      [name(pack.label), html` <span class="note">${wholeOf(pack, money, words)}</span>`],
      figures.mass(part?.massG ?? 0),
      money(part?.costMinor ?? 0),
    ];
  });
  return html`<details><summary>${lesson.plate(title, money(plate.costMinor))}</summary>${table({
    columns: [{ title: lesson.pack }, { title: lesson.taken, isFigure: true }, { title: lesson.cost, isFigure: true }],
    rows,
    sums: [[lesson.together, "", money(plate.costMinor)]],
  })}</details>`;
}

function wholeOf({ pack }: LessonPack, money: (minor: number) => string, { lesson, figures }: SheetWords): string {
  return pack === undefined ? "" : lesson.ofPack(figures.mass(pack.massG), money(pack.costMinor));
}

/** What the cooking took of each pack in all, and where its price comes from. */
function packsHtml({ packs, costMinor }: LessonCooking, sheet: LessonSheet, words: SheetWords): Html {
  const { lesson, figures, day } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const priceOf = ({ price: { kind, at = "", on } }: LessonPack) =>
    kind === "seen" && on !== undefined
      ? day.seenAt(at, figures.day(on))
      : kind === "estimate"
        ? day.estimatedAt(at)
        : day.atHand;
  return table({
    columns: [
      { title: lesson.pack },
      { title: lesson.price },
      { title: lesson.taken, isFigure: true },
      { title: lesson.cost, isFigure: true },
    ],
    rows: packs.map((pack) => [
      [name(pack.label), html` <span class="note">${wholeOf(pack, money, words)}</span>`],
      priceOf(pack),
      figures.mass(pack.massG),
      money(pack.costMinor),
    ]),
    sums: [[lesson.together, "", "", money(costMinor)]],
  });
}
