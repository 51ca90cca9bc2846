import { asMarkup, type Html, html, type Piece } from "../html/html.ts";
import type { Paper } from "../html/sheetCss.ts";
import { name, table } from "../html/table.ts";
import { toPage } from "../html/toPage.ts";
import { listCautions } from "../listCautions.ts";
import { costDriversSvg } from "../picture/costDriversSvg.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { CardSheet } from "./CardSheet.ts";
import { allergensHtml, declarationHtml, ingredientsHtml } from "./labelHtml.ts";

/** How a card is printed. */
export interface CardOptions {
  readonly paper?: Paper;
  /** The order of work of the dish as a picture, the text of `timelineSvg`; absent = none is shown. */
  readonly timeline?: string;
}

/** The costing card as an HTML page. */
export function cardHtml(sheet: CardSheet, words: SheetWords, { paper = "a4", timeline }: CardOptions = {}): string {
  const { card, figures, day } = words;
  const title = card.title(sheet.dish.name);
  const { handsOn, elapsed, ahead } = sheet.minutes;
  const body = html`<article class="sheet" style="--letters: 8.4pt">
<h1>${name(title)}</h1>
<p class="note">${card.forPortions(sheet.kitchen, sheet.portions, figures.day(sheet.on))} ${day.moneyIn(sheet.currency)}</p>
${costHtml(sheet, words)}
<div class="flow">
${shopsHtml(sheet, words)}
${declarationHtml(sheet, words)}
${ingredientsHtml(sheet, words)}
${allergensHtml(sheet, words)}
</div>
<section><h2>${card.drivers}</h2><figure>${asMarkup(costDriversSvg(sheet, words))}</figure></section>
<section><h2>${card.work}</h2><p>${card.minutes(figures.minutes(handsOn), figures.minutes(elapsed), ahead > 0 ? figures.minutes(ahead) : undefined)}</p>
${timeline !== undefined && html`<figure>${asMarkup(timeline)}</figure>`}</section>
<section class="long"><h2>${day.cautions}</h2><p>${card.keeps(sheet.keeps.fridgeDays, sheet.keeps.freezerDays, words.cautions.tellAuthority(sheet.keeps.authority))}</p>
<ul>${listCautions(sheet.cautions, words)}</ul></section>
<p class="note">${words.calculated} ${words.careFirst}</p>
</article>`;
  return toPage({ title, paper, body }, words);
}

/** What the dish is made of: as purchased, refuse, edible, cost, and where each price comes from. */
function costHtml(sheet: CardSheet, words: SheetWords): Html {
  const { card, figures } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const columns = [
    { title: card.food },
    { title: card.purchased, isFigure: true },
    { title: card.refuse, isFigure: true },
    { title: card.edible, isFigure: true },
    { title: card.cost, isFigure: true },
    { title: card.from },
  ];
  const rows = sheet.lines.map((line): Piece[] => [
    [
      name(line.food.name),
      line.cut !== undefined && html`, ${line.cut}`,
      line.insteadOf && html` <span class="note">(${card.insteadOf(line.insteadOf.name)})</span>`,
    ],
    figures.mass(line.purchasedG),
    figures.mass(line.refuseG),
    figures.mass(line.edibleG),
    line.costMinor === undefined ? card.noPrice : money(line.costMinor),
    html`<span class="note">${sourceOf(line, words)}</span>`,
  ]);
  const total = money(sheet.totalMinor);
  const refuseG = sheet.purchasedG - sheet.edibleG;
  return html`<section class="long"><h2>${card.makings}</h2><div class="wide" tabindex="0" role="group" aria-label="${card.makings}">${table(
    {
      columns,
      rows,
      sums: [
        [
          card.total,
          figures.mass(sheet.purchasedG),
          figures.mass(Math.max(0, refuseG)),
          figures.mass(sheet.edibleG),
          sheet.atLeast ? card.atLeast(total) : total,
          "",
        ],
      ],
    },
  )}</div>
<p>${card.plates(sheet.platesMinor.map(money).join("; "))}</p>
<p>${card.yield(figures.mass(sheet.portionMassG), figures.mass(sheet.portionMassG * sheet.portions), figures.count(sheet.yieldFactor))}</p>
${sheet.unknown.length > 0 && html`<p class="note">${card.notCosted(sheet.unknown.map((food) => food.name).join(", "))}</p>`}
${sheet.optional.length > 0 && html`<p class="note">${card.optional(sheet.optional.map((food) => food.name).join(", "))}</p>`}
${sheet.estimate && html`<p class="note">${card.estimated}</p>`}</section>`;
}

function sourceOf({ pack, costMinor }: CardSheet["lines"][number], { card, figures }: SheetWords): string {
  if (costMinor === undefined) return "";
  if (pack === undefined) return card.atHand;
  return card.seenAt(pack.label, pack.shop.name, pack.seenOn && figures.day(pack.seenOn));
}

/** What a portion costs now, and at each shop alone. */
function shopsHtml(sheet: CardSheet, words: SheetWords): Html {
  const { card, figures } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const tell = (minor: number) => (sheet.atLeast ? card.atLeast(money(minor)) : money(minor));
  return html`<section class="long"><h2>${card.shops}</h2>${table({
    columns: [
      { title: card.shop },
      { title: card.portion, isFigure: true },
      { title: card.allPortions, isFigure: true },
      { title: card.elsewhere },
    ],
    rows: [
      [card.cheapest, tell(sheet.platesMinor[0] ?? 0), tell(sheet.totalMinor), ""],
      ...sheet.shops.map(({ shop, portionMinor, totalMinor, elsewhere }) => [
        name(shop.name),
        tell(portionMinor),
        tell(totalMinor),
        elsewhere.length === 0 ? card.nothing : elsewhere.map((food) => food.name).join(", "),
      ]),
    ],
  })}</section>`;
}
