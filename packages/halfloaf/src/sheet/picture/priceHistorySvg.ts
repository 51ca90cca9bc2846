import type { PriceHistory } from "../../kitchen/record/index.ts";
import { addDays, type CivilDate, daysBetween } from "../../quantity/index.ts";
import type { FigureWords } from "../words/SheetWords.ts";
import { LEAST_MINOR, niceTicks } from "./niceTicks.ts";
import { plotArea } from "./plotArea.ts";
import { cut, INK, PAPER, type PictureWords, round, svgFrame, svgText } from "./svgFrame.ts";

/** Words of the picture of prices. */
export interface PriceHistoryWords extends PictureWords {
  readonly perKg: string;
  readonly day: string;
  /** What a line is called: pack and shop. */
  readonly line: (history: PriceHistory) => string;
}

const [LEFT, TOP, WIDTH, HEIGHT, RIGHT, BOTTOM, LEGEND] = [64, 36, 560, 260, 30, 50, 18];
/** Strokes and signs by which lines are told apart without colour; after the last they begin again. */
const DASHES = ["", "8 3", "2 3", "10 3 2 3", "5 5"];
const MOST_TICKS = 6;

/** How the prices of packs have moved, for a kg each: steps from one look to the next, a sign at each look. */
export function priceHistorySvg(
  histories: readonly PriceHistory[],
  currency: string,
  words: PriceHistoryWords,
  figures: Pick<FigureWords, "money" | "dayShort">,
): string {
  const drawn = histories.flatMap((history) => {
    const points = history.points.flatMap(({ on, perKgMinor }) =>
      perKgMinor === undefined ? [] : [{ on, perKgMinor }],
    );
    return points.length === 0 ? [] : [{ history, points }];
  });
  const days = drawn.flatMap(({ points }) => points.map(({ on }) => on)).sort();
  const [first = "2000-01-01", last = first] = [days[0], days.at(-1)];
  const prices = drawn.flatMap(({ points }) => points.map(({ perKgMinor }) => perKgMinor));
  const area = plotArea({
    left: LEFT,
    top: TOP,
    width: WIDTH,
    height: HEIGHT,
    xTicks: dayTicks(first, last).map((day) => ({ value: day, label: figures.dayShort(addDays(first, day)) })),
    yTicks: niceTicks(0, Math.max(LEAST_MINOR, ...prices)).map((minor) => ({
      value: minor,
      label: figures.money(Math.round(minor), currency),
    })),
    xTitle: words.day,
    yTitle: words.perKg,
  });
  const marks = drawn.flatMap(({ history, points }, at) => {
    const dash = DASHES[at % DASHES.length] as string;
    const places = points.map(({ on, perKgMinor }) => [area.x(daysBetween(first, on)), area.y(perKgMinor)] as const);
    const path = places.map(([x, y], place) => (place === 0 ? `M${round(x)} ${round(y)}` : `H${round(x)}V${round(y)}`));
    const y = TOP + HEIGHT + BOTTOM + at * LEGEND;
    return [
      stroke(`${path.join("")}H${LEFT + WIDTH}`, dash),
      ...places.map(([px, py]) => signOf(at, px, py)),
      stroke(`M${LEFT} ${y}h36`, dash),
      signOf(at, LEFT + 18, y),
      svgText(LEFT + 46, y + 4, cut(words.line(history), 80)),
    ];
  });
  return svgFrame({
    ...words,
    id: "prices",
    width: LEFT + WIDTH + RIGHT,
    height: TOP + HEIGHT + BOTTOM + Math.max(1, drawn.length) * LEGEND,
    marks: [...area.marks, ...marks],
  });
}

/** Days from the first on, so far apart that their labels have room. */
function dayTicks(first: CivilDate, last: CivilDate): number[] {
  const span = Math.max(1, daysBetween(first, last));
  const step = Math.ceil(span / MOST_TICKS);
  return Array.from({ length: Math.ceil(span / step) + 1 }, (_, at) => at * step);
}

function stroke(path: string, dash: string): string {
  return `<path d="${path}" fill="none" stroke="${INK}" stroke-width="1.5"${dash === "" ? "" : ` stroke-dasharray="${dash}"`}/>`;
}

function signOf(at: number, x: number, y: number): string {
  const [left, top] = [round(x), round(y)];
  const look = `fill="${at % 2 === 0 ? INK : PAPER}" stroke="${INK}" stroke-width="1.5"`;
  return at % 4 < 2
    ? `<circle cx="${left}" cy="${top}" r="4" ${look}/>`
    : `<rect x="${round(x - 4)}" y="${round(y - 4)}" width="8" height="8" ${look}/>`;
}
