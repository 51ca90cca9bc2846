import type { DeclaredCell } from "../../intake/index.ts";
import { type Html, html, type Piece } from "../html/html.ts";
import { name, table } from "../html/table.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { CardAllergens, CardDeclarationLine, CardSheet } from "./CardSheet.ts";

/** The declaration per 100 g and per portion, in the order and rounding of the law. */
export function declarationHtml(sheet: CardSheet, words: SheetWords): Html {
  const { card, figures } = words;
  return html`<section><h2>${card.declaration}</h2>${table({
    columns: [
      { title: words.day.component },
      { title: card.per100G, isFigure: true },
      { title: card.perPortion(figures.mass(sheet.portionMassG)), isFigure: true },
    ],
    rows: sheet.declaration.map((line) => [
      line.ofWhich ? card.ofWhich(line.item) : card.item(line.item),
      cellOf(line, line.per100G, words),
      cellOf(line, line.perPortion, words),
    ]),
  })}<p class="note">${card.declarationNote(sheet.retained)} ${words.calculated}</p></section>`;
}

function cellOf(
  { atLeast }: CardDeclarationLine,
  cell: DeclaredCell | undefined,
  { card, figures }: SheetWords,
): Piece {
  if (cell === undefined) return card.unknown;
  const text =
    cell.unit === "g" ? `${figures.declared(cell.figure.text)} g` : `${cell.kj.text} kJ / ${cell.kcal.text} kcal`;
  return atLeast ? card.atLeast(text) : text;
}

/**
 * What is in it, by mass when it goes in, heaviest first, allergens emphasised. **Source**: Regulation (EU) 1169/2011,
 * Articles 18 and 21.
 */
export function ingredientsHtml(sheet: CardSheet, words: SheetWords): Html {
  const { card } = words;
  const inTurn = [...sheet.lines].sort((a, b) => b.edibleG - a.edibleG);
  const items = inTurn.map(({ food, allergens }, at) => [
    at > 0 && ", ",
    allergens.length === 0
      ? name(food.name)
      : html`<strong class="allergen">${name(food.name)}</strong> (${card.contains(allergens.map((each) => card.allergenNames.eu[each]).join(", "))})`,
  ]);
  const others = sheet.unknown.map((food) => [", ", name(food.name)]);
  return html`<section><h2>${card.ingredients}</h2><p>${items}${others}</p></section>`;
}

/** Allergens by the lists of the law. */
export function allergensHtml({ allergens }: CardSheet, words: SheetWords): Html {
  const { card } = words;
  const tell = <Allergen extends string>(
    { sure, possible }: CardAllergens<Allergen>,
    names: Readonly<Record<Allergen, string>>,
  ): Piece => [
    sure.length === 0
      ? card.none
      : sure.map((each, at) => [at > 0 && ", ", html`<strong class="allergen">${names[each]}</strong>`]),
    possible.length > 0 &&
      html` <span class="note">${card.possibly(possible.map((each) => names[each]).join(", "))}</span>`,
  ];
  return html`<section><h2>${card.allergens}</h2><p>${card.allergensByLaw("eu")}: ${tell(allergens.eu, card.allergenNames.eu)}</p><p>${card.allergensByLaw("us")}: ${tell(allergens.us, card.allergenNames.us)}</p></section>`;
}
