import type { FoodTable } from "../../food/index.ts";
import type { WeekPlan } from "../../kitchen/index.ts";
import type { FoodKind } from "../ribbons/foodKindOf.ts";
import { layRibbons, RIBBON_SIZES, type Ribbon } from "../ribbons/layRibbons.ts";
import type { SheetNames } from "../WeekSource.ts";
import type { FigureWords } from "../words/SheetWords.ts";
import { cut, fillOf, INK, LINE, type Look, PAPER, type PictureWords, round, svgFrame, svgText } from "./svgFrame.ts";

/** Words of the picture of ribbons. */
export interface RibbonWords extends PictureWords {
  readonly end: (end: Ribbon["end"], rest: string) => string;
  readonly kind: Readonly<Record<FoodKind, string>>;
}

const LOOK_OF_KIND: Readonly<Record<FoodKind, Look>> = {
  dry: "solid",
  fresh: "strokes",
  dairy: "dots",
  protein: "cross",
  fat: "back",
  other: "empty",
};
const STATION_LETTERS = 8;
const [LEFT, HEAD, RIGHT, FOOT, LETTER] = [12, 58, 150, 40, 6.3];

/**
 * The pack ribbons of a week: a ribbon for each pack from the day it comes to the plate that finishes it, or to what becomes
 * of its rest; as thick as so much of it is left, with a bead where some of it is cooked.
 */
export function ribbonsSvg(
  week: WeekPlan,
  foods: FoodTable,
  names: Pick<SheetNames, "food">,
  words: RibbonWords,
  figures: Pick<FigureWords, "dayShort" | "mass" | "sitting">,
): string {
  const sizes = { ...RIBBON_SIZES, station: 52 };
  const picture = layRibbons(week, foods, sizes);
  const bottom = HEAD + picture.lanes * sizes.lane;
  const days = picture.days.flatMap(({ date, x, width }) => [
    `<path d="M${LEFT + x} ${HEAD - 44}V${bottom}" stroke="${LINE}"/>`,
    svgText(LEFT + x + width / 2, HEAD - 34, figures.dayShort(date), "middle"),
  ]);
  const stations = picture.stations.map(({ x, kind }) =>
    svgText(LEFT + x, HEAD - 14, cut(figures.sitting(kind), STATION_LETTERS), "middle"),
  );
  const ribbons = picture.ribbons.flatMap((ribbon) =>
    drawRibbon(ribbon, names.food(ribbon.food), words, figures, sizes),
  );
  const kinds = (Object.keys(LOOK_OF_KIND) as FoodKind[]).filter((kind) =>
    picture.ribbons.some((ribbon) => ribbon.kind === kind),
  );
  return svgFrame({
    ...words,
    id: "ribbons",
    width: LEFT + picture.width + RIGHT,
    height: bottom + FOOT,
    marks: [...days, '<g font-size="10">', ...stations, "</g>", ...ribbons, ...drawLegend(kinds, bottom + 14, words)],
  });
}

function drawRibbon(
  { lane, stretches, beads, fromX, toX, kind, end, restG }: Ribbon,
  food: string,
  words: RibbonWords,
  { mass }: Pick<FigureWords, "mass">,
  sizes: typeof RIBBON_SIZES,
): string[] {
  const middle = HEAD + lane * sizes.lane + sizes.lane - sizes.pack / 2 - 6;
  const parts = stretches.map(({ fromX: from, toX: to, share }) => {
    const height = Math.max(2, share * sizes.pack);
    return `<rect x="${round(LEFT + from)}" y="${round(middle - height / 2)}" width="${round(to - from)}" height="${round(height)}" fill="${fillOf("ribbons", LOOK_OF_KIND[kind])}" stroke="${INK}" stroke-width=".7"/>`;
  });
  const dots = beads.map(
    ({ x }) =>
      `<circle cx="${round(LEFT + x)}" cy="${round(middle)}" r="5" fill="${PAPER}" stroke="${INK}" stroke-width="1.5"/>`,
  );
  const room = Math.max(sizes.label, toX - fromX) / LETTER;
  const rest = end === "finished" ? [] : [words.end(end, mass(restG))];
  const told = cut([food, ...rest].join(", "), Math.floor(room));
  return ["<g>", `${svgText(LEFT + fromX + 2, middle - sizes.pack / 2 - 3, told)}`, ...parts, ...dots, "</g>"];
}

function drawLegend(kinds: readonly FoodKind[], y: number, words: RibbonWords): string[] {
  let x = LEFT;
  return kinds.flatMap((kind) => {
    const at = x;
    x += 44 + Math.ceil(words.kind[kind].length * LETTER);
    return [
      `<rect x="${at}" y="${y}" width="24" height="14" fill="${fillOf("ribbons", LOOK_OF_KIND[kind])}" stroke="${INK}"/>`,
      svgText(at + 30, y + 12, words.kind[kind]),
    ];
  });
}
