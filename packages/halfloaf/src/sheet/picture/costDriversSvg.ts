import type { CardSheet } from "../card/CardSheet.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import { cut, fillOf, INK, round, svgFrame, svgText } from "./svgFrame.ts";

const [NAMES, BARS, FIGURES, ROW, TOP] = [250, 330, 130, 22, 8];
const LETTERS = 38;

/** What drives the cost of a dish: a bar for each making with a price, the dearest first, with its part of the total. */
export function costDriversSvg(sheet: CardSheet, { pictures, figures }: SheetWords): string {
  const lines = sheet.lines
    .flatMap(({ food, costMinor }) => (costMinor === undefined ? [] : [{ name: food.name, costMinor }]))
    .sort((a, b) => b.costMinor - a.costMinor);
  const most = Math.max(1, ...lines.map(({ costMinor }) => costMinor));
  const tell = (costMinor: number) =>
    `${figures.money(costMinor, sheet.currency)}, ${figures.percent(sheet.totalMinor === 0 ? 0 : costMinor / sheet.totalMinor)}`;
  const marks = lines.flatMap(({ name, costMinor }, at) => {
    const y = TOP + at * ROW;
    const width = (costMinor / most) * BARS;
    return [
      svgText(NAMES - 8, y + 14, cut(name, LETTERS), "end"),
      `<rect x="${NAMES}" y="${y + 2}" width="${round(width)}" height="${ROW - 7}" fill="${fillOf("drivers", "strokes")}" stroke="${INK}"/>`,
      svgText(NAMES + width + 6, y + 14, tell(costMinor)),
    ];
  });
  return svgFrame({
    id: "drivers",
    title: pictures.driversTitle(sheet.dish.name),
    description: lines.map(({ name, costMinor }) => `${name} ${tell(costMinor)}`).join("; "),
    width: NAMES + BARS + FIGURES,
    height: TOP * 2 + Math.max(1, lines.length) * ROW,
    marks,
  });
}
