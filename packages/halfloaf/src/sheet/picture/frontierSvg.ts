import type { FigureWords } from "../words/SheetWords.ts";
import { niceTicks } from "./niceTicks.ts";
import { plotArea } from "./plotArea.ts";
import { INK, PAPER, type PictureWords, round, svgFrame, svgText } from "./svgFrame.ts";

/** One plan among those that none beats: what it costs, and the other thing that money is weighed against. */
export interface FrontierPoint {
  readonly moneyMinor: number;
  readonly other: number;
  readonly label: string;
}

/** Words of the picture of a frontier. */
export interface FrontierWords extends PictureWords {
  readonly money: string;
  readonly other: string;
  readonly tellOther: (value: number) => string;
}

const [LEFT, TOP, WIDTH, HEIGHT, RIGHT, BOTTOM] = [96, 36, 520, 300, 110, 52];

/** Money against another thing: a point for each plan that no other beats in both, joined by steps. */
export function frontierSvg(
  points: readonly FrontierPoint[],
  currency: string,
  words: FrontierWords,
  { money }: Pick<FigureWords, "money">,
): string {
  const inTurn = [...points].sort((a, b) => a.moneyMinor - b.moneyMinor);
  const moneys = inTurn.map(({ moneyMinor }) => moneyMinor);
  const others = inTurn.map(({ other }) => other);
  const ticksOf = (values: readonly number[], tell: (value: number) => string) =>
    (values.length === 0 ? niceTicks(0, 1) : niceTicks(Math.min(...values), Math.max(...values))).map((value) => ({
      value,
      label: tell(value),
    }));
  const area = plotArea({
    left: LEFT,
    top: TOP,
    width: WIDTH,
    height: HEIGHT,
    xTicks: ticksOf(moneys, (minor) => money(Math.round(minor), currency)),
    yTicks: ticksOf(others, words.tellOther),
    xTitle: words.money,
    yTitle: words.other,
  });
  const path = inTurn
    .map(({ moneyMinor, other }, at) => {
      const [x, y] = [round(area.x(moneyMinor)), round(area.y(other))];
      return at === 0 ? `M${x} ${y}` : `H${x}V${y}`;
    })
    .join("");
  const marks = inTurn.flatMap(({ moneyMinor, other, label }) => [
    `<circle cx="${round(area.x(moneyMinor))}" cy="${round(area.y(other))}" r="5" fill="${PAPER}" stroke="${INK}" stroke-width="2"/>`,
    svgText(area.x(moneyMinor) + 9, area.y(other) - 7, label),
  ]);
  return svgFrame({
    ...words,
    id: "frontier",
    width: LEFT + WIDTH + RIGHT,
    height: TOP + HEIGHT + BOTTOM,
    marks: [...area.marks, `<path d="${path}" fill="none" stroke="${INK}" stroke-dasharray="5 3"/>`, ...marks],
  });
}
