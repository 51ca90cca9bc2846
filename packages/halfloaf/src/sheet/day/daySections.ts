import { type Html, html, type Piece } from "../html/html.ts";
import { name, table } from "../html/table.ts";
import { letterOf } from "../timelineSvg.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { DaySheet, DaySittingLine, DayTrip, Named } from "./DaySheet.ts";

/** A list of names or pieces with a sign between them. */
function joined(pieces: readonly Piece[], sign = ", "): Piece[] {
  return pieces.flatMap((piece, at) => (at === 0 ? [piece] : [sign, piece]));
}

/** The menu of a day: dishes, minutes and plates, with the sum of each column. */
export function menuHtml(sheet: DaySheet, words: SheetWords): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const plateColumns = sheet.eaters.map(({ eater }) => ({ title: name(eater.name), isFigure: true }));
  const several = sheet.eaters.length > 1;
  return html`<section><h2>${day.menu}</h2><div class="wide" tabindex="0" role="group" aria-label="${day.menu}">${table(
    {
      columns: [
        { title: day.sitting },
        { title: day.dish },
        { title: day.handsOn, isFigure: true },
        { title: day.ready, isFigure: true },
        ...plateColumns,
        ...(several ? [{ title: day.together, isFigure: true }] : []),
      ],
      rows: sheet.sittings.map((line) => [
        figures.sitting(line.kind),
        [html`<b>${letterOfDish(sheet, line.dish.id)}</b> `, name(line.dish.name), ...howHtml(line, words)],
        figures.minutes(line.handsOnMinutes),
        figures.minutes(line.elapsedMinutes),
        ...sheet.eaters.map(({ eater }) => plateOf(line, eater.id, money)),
        ...(several ? [money(line.costMinor)] : []),
      ]),
      sums: [
        [
          day.dayTotal,
          "",
          figures.minutes(sheet.handsOnMinutes),
          "",
          ...sheet.eaters.map(({ costMinor }) => money(costMinor)),
          ...(several ? [money(sheet.platesMinor)] : []),
        ],
      ],
    },
  )}</div></section>`;
}

function plateOf({ plates }: DaySittingLine, eater: string, money: (minor: number) => string): string {
  const own = plates.filter((plate) => plate.eater.id === eater);
  return own.length === 0 ? "" : money(own.reduce((sum, { costMinor }) => sum + costMinor, 0));
}

/** How a dish comes to the table, besides being cooked: packed, begun ahead, left over, put by. */
function howHtml(line: DaySittingLine, { day, figures }: SheetWords): Piece[] {
  const told = [
    ...(line.packed ? [day.packed] : []),
    ...(line.ahead ? [day.ahead] : []),
    ...(line.leftover ? [day.leftover(line.cookedOn && figures.dayShort(line.cookedOn))] : []),
    ...(line.putBy === undefined ? [] : [day.putBy(line.putBy)]),
  ];
  return told.length === 0 ? [] : [html` <span class="note">(${told.join("; ")})</span>`];
}

/** What is bought on the trips, with what each till says. */
export function tripsHtml(
  trips: readonly DayTrip[],
  currency: string,
  words: SheetWords,
  dates?: readonly string[],
): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, currency);
  const tables = trips.map(
    (trip, at) =>
      html`${table({
        caption: day.trip(trip.shop.name, dates?.[at], figures.minutes(trip.minutes)),
        columns: [{ title: day.pack }, { title: day.price, isFigure: true }],
        rows: trip.lines.map(({ count, label, savedMinor, estimate, priceMinor }) => [
          [
            `${figures.count(count)} × `,
            name(label),
            savedMinor > 0 && html` <span class="note">(${day.saved(money(savedMinor))})</span>`,
            estimate && html` <span class="note">(${day.estimate})</span>`,
          ],
          money(priceMinor),
        ]),
        sums: [[day.till, money(trip.tillMinor)]],
      })}${trip.fareMinor > 0 && html`<p class="note">${day.fare(money(trip.fareMinor))}</p>`}`,
  );
  return html`<section class="long"><h2>${day.bought}</h2>${tables.length === 0 ? html`<p>${day.noneBought}</p>` : tables}</section>`;
}

/** Where the money went: opening + till = plates + waste + left. */
export function flowHtml(flow: DaySheet["flow"], currency: string, words: SheetWords): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, currency);
  const rows: [string, string, string][] = [
    ["", day.opening, money(flow.openingMinor)],
    ["+", day.toTills, money(flow.tillMinor)],
    ["=", day.onPlates, money(flow.platesMinor)],
    ["+", day.wasted, money(flow.wasteMinor)],
    ["+", day.left, money(flow.leftMinor)],
  ];
  const body = rows.map(
    ([sign, label, minor]) =>
      html`<tr><th scope="row"><span class="sign">${sign}</span> ${label}</th><td class="figure">${minor}</td></tr>`,
  );
  return html`<section><h2>${day.flow}</h2><table><tbody>${body}</tbody></table></section>`;
}

/** What is left in the evening, and what was thrown away; the lines add up. */
export function leftHtml(sheet: DaySheet, words: SheetWords): Html {
  const { day, figures } = words;
  const { soon, waiting, others, totalMinor } = sheet.left;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const tell = (until: string | undefined) =>
    until !== undefined &&
    html` <span class="note">${day.until(figures.dayShort(until).replaceAll(" ", "\u00a0"))}</span>`;
  const lost = sheet.wasted.map(({ label, massG, costMinor }) => [name(label), figures.mass(massG), money(costMinor)]);
  const columns = [{ title: day.pack }, { title: day.mass, isFigure: true }, { title: day.worth, isFigure: true }];
  return html`<section class="long"><h2>${day.leftOf}</h2>${table({
    columns,
    rows: [
      ...soon.map(({ label, massG, costMinor, keepsUntil }) => [
        [name(label), tell(keepsUntil)],
        figures.mass(massG),
        money(costMinor),
      ]),
      ...waiting.map(({ dish, portions, costMinor }) => [
        [dishHtml(sheet, dish), ", ", day.waiting(portions)],
        "",
        money(costMinor),
      ]),
      [day.otherPacks(others.packs), "", money(others.costMinor)],
    ],
    sums: [[day.leftTotal, "", money(totalMinor)]],
  })}${lost.length > 0 && table({ caption: day.wastedLines, columns, rows: lost })}</section>`;
}

/** The letter of a dish on the sheet, A for the first one served. */
function letterOfDish({ sittings }: Pick<DaySheet, "sittings">, id: string): string {
  const at = [...new Set(sittings.map(({ dish }) => dish.id))].indexOf(id);
  return at < 0 ? "" : letterOf(at);
}

/** A dish by its letter, by its name where the sheet does not serve it. */
function dishHtml(sheet: Pick<DaySheet, "sittings">, { id, name: title }: Named): Html {
  const letter = letterOfDish(sheet, id);
  return letter === "" ? name(title) : html`<b>${letter}</b>`;
}

/** Cautions with who says so and the letters of the dishes they are about. */
export function cautionsHtml(sheet: Pick<DaySheet, "sittings" | "cautions">, words: SheetWords): Html {
  const { day, cautions } = words;
  const items = sheet.cautions.map(({ code, text, authority, dishes }) => {
    const letters = dishes.map(({ id }) => letterOfDish(sheet, id)).sort();
    return html`<li>${cautions.tellCaution(code, text)} <span class="note">[${cautions.tellAuthority(authority)}]</span>${letters.length > 0 && html` <b>${letters.join(", ")}</b>`}</li>`;
  });
  return html`<section class="long"><h2>${day.cautions}</h2><p class="note">${day.cautionsByLetter}</p><ul>${items}</ul></section>`;
}

/** Where the prices come from, each with its part of the plates. */
export function sourcesHtml(
  sheet: Pick<DaySheet, "sources" | "currency" | "platesMinor"> & { readonly eachFood?: boolean },
  words: SheetWords,
): Html {
  const { day, figures } = words;
  const money = (minor: number) => figures.money(minor, sheet.currency);
  const tell = ({ kind, at = "", on }: DaySheet["sources"][number]) =>
    kind === "seen" && on !== undefined
      ? day.seenAt(at, figures.day(on))
      : kind === "estimate"
        ? day.estimatedAt(at)
        : day.atHand;
  return html`<section class="long"><h2>${day.sources}</h2>${table({
    columns: [{ title: day.price }, { title: day.plate, isFigure: true }],
    rows: sheet.sources.map((source) => [
      [
        html`<b>${tell(source)}</b>`,
        source.kind !== "stock" && sheet.eachFood !== false && [": ", joined(source.foods.map(name))],
      ],
      money(source.costMinor),
    ]),
    sums: [[day.onPlates, money(sheet.platesMinor)]],
  })}</section>`;
}
