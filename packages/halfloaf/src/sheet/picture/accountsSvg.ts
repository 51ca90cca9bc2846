import type { AccountLine } from "../../kitchen/record/index.ts";
import type { FigureWords } from "../words/SheetWords.ts";
import { LEAST_MINOR, niceTicks } from "./niceTicks.ts";
import { plotArea } from "./plotArea.ts";
import { cut, fillOf, INK, type Look, type PictureWords, round, svgFrame, svgText } from "./svgFrame.ts";

/** What the bars of a stretch of days stand for. */
export const ACCOUNT_BARS = ["planned", "spent", "eaten", "wasted"] as const;
export type AccountBar = (typeof ACCOUNT_BARS)[number];

/** Words of the picture of accounts. */
export interface AccountsWords extends PictureWords {
  readonly money: string;
  readonly days: string;
  readonly bar: Readonly<Record<AccountBar, string>>;
}

const LOOKS: Readonly<Record<AccountBar, Look>> = {
  planned: "empty",
  spent: "solid",
  eaten: "strokes",
  wasted: "cross",
};
const [LEFT, TOP, HEIGHT, RIGHT, BOTTOM, GROUP] = [64, 36, 260, 20, 64, 92];

/** What was planned, spent, eaten and wasted in each stretch of days, side by side. */
export function accountsSvg(
  lines: readonly AccountLine[],
  currency: string,
  words: AccountsWords,
  { money }: Pick<FigureWords, "money">,
): string {
  const barsOf = ({ planned, tillMinor, platesMinor, wasteMinor }: AccountLine) => ({
    planned: planned?.tillMinor,
    spent: tillMinor,
    eaten: platesMinor,
    wasted: wasteMinor,
  });
  const most = Math.max(
    LEAST_MINOR,
    ...lines.flatMap((line) => Object.values(barsOf(line)).map((value) => value ?? 0)),
  );
  const width = Math.max(4, lines.length) * GROUP;
  const area = plotArea({
    left: LEFT,
    top: TOP,
    width,
    height: HEIGHT,
    xTicks: [
      { value: 0, label: "" },
      { value: width, label: "" },
    ],
    yTicks: niceTicks(0, most).map((minor) => ({ value: minor, label: money(Math.round(minor), currency) })),
    xTitle: "",
    yTitle: words.money,
    hasXLines: false,
  });
  const bar = (GROUP - 16) / ACCOUNT_BARS.length;
  const marks = lines.flatMap((line, at) => [
    ...ACCOUNT_BARS.flatMap((kind, place) => {
      const value = barsOf(line)[kind];
      if (value === undefined || value <= 0) return [];
      const y = area.y(value);
      const box = `x="${round(LEFT + at * GROUP + 8 + place * bar)}" y="${round(y)}" width="${round(bar - 2)}" height="${round(TOP + HEIGHT - y)}"`;
      return [`<rect ${box} fill="${fillOf("accounts", LOOKS[kind])}" stroke="${INK}"/>`];
    }),
    svgText(LEFT + at * GROUP + GROUP / 2, TOP + HEIGHT + 16, cut(line.name, 13), "middle"),
  ]);
  const legend = ACCOUNT_BARS.flatMap((kind, at) => {
    const x = LEFT + at * 90;
    return [
      `<rect x="${x}" y="${TOP + HEIGHT + 32}" width="22" height="14" fill="${fillOf("accounts", LOOKS[kind])}" stroke="${INK}"/>`,
      svgText(x + 28, TOP + HEIGHT + 44, words.bar[kind]),
    ];
  });
  return svgFrame({
    ...words,
    id: "accounts",
    width: LEFT + width + RIGHT,
    height: TOP + HEIGHT + BOTTOM,
    marks: [...area.marks, ...marks, ...legend],
  });
}
