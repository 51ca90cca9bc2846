import { clockMinutes, type TimelineBar, type TimelineRow, type WorkSheet } from "../kitchen/index.ts";
import { escapeXml } from "./escapeXml.ts";

/** Texts of the picture in the language of the reader; everything else on it is from the dishes. */
export interface TimelineWords {
  readonly title: string;
  /** The picture in a sentence or two, for who can't see it. */
  readonly description: string;
  readonly rowName: (row: TimelineRow) => string;
  /** What stands on a bar, short enough for one. */
  readonly barName: (bar: TimelineBar) => string;
  /** The label of a minute on the axis: "12" or "18:29". */
  readonly tick: (minutes: number) => string;
  readonly legend: Readonly<Record<TimelineBar["fill"], string>>;
}

const LEFT = 92;
const WIDTH = 760;
const TOP = 34;
const LANE = 26;
const GAP = 8;
const LEGEND = 40;
const RIGHT = 28;
/** Letters wider than this would run into the next bar. */
const SIGN_WIDTH = 6.4;
const TICKS = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240];
const MOST_TICKS = 12;

/** What each fill looks like: never by colour alone, and told apart in black and white. */
const FILLS: Readonly<
  Record<TimelineBar["fill"], { readonly fill: string; readonly ink: string; readonly dash?: string }>
> = {
  full: { fill: "#1f2933", ink: "#ffffff" },
  eye: { fill: "url(#hl-eye)", ink: "#1f2933" },
  held: { fill: "#ffffff", ink: "#1f2933" },
  wash: { fill: "url(#hl-wash)", ink: "#1f2933" },
  warming: { fill: "url(#hl-warming)", ink: "#1f2933" },
  waiting: { fill: "#ffffff", ink: "#1f2933", dash: "3 3" },
};

/**
 * The timeline of a cooking as the text of an SVG picture: a row for hands, each ring, the oven and what waits, a bar for
 * each stretch of work. Dishes go by letters, A for the first; stretches that overlap within a row stand in lanes. The same
 * sheet and words give the same text. It loads nothing and holds no script. **Source**: W3C, SVG 2; patterns, title and
 * desc after W3C, Web Content Accessibility Guidelines 2.2, 1.1.1 and 1.4.1.
 */
export function timelineSvg(sheet: TimedSheet & Pick<WorkSheet, "rows" | "dishes">, words: TimelineWords): string {
  const total = Math.max(1, sheet.serveMinutes);
  const x = (minutes: number) => round(LEFT + (minutes / total) * WIDTH);
  const laid = layRows(sheet.rows);
  const bottom = TOP + laid.height;
  const letters = sheet.dishes.map(({ title }, at) => `${letterOf(at)} ${title}`);
  const height = bottom + LEGEND + letters.length * 18 + 12;
  const width = LEFT + WIDTH + RIGHT;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="hl-title hl-desc" font-family="system-ui, sans-serif" font-size="12">`,
    `<title id="hl-title">${escapeXml(words.title)}</title>`,
    `<desc id="hl-desc">${escapeXml(words.description)}</desc>`,
    PATTERNS,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...drawAxis(sheet, bottom, x, words),
    ...laid.rows.flatMap(({ row, y, lanes }) => drawRow(row, y, lanes, x, words)),
    ...drawLegend(sheet.rows, bottom + 24, words),
    ...letters.map(
      (text, at) => `<text x="${LEFT}" y="${bottom + LEGEND + 18 * (at + 1)}" fill="#1f2933">${escapeXml(text)}</text>`,
    ),
    "</svg>",
    "",
  ].join("\n");
}

type TimedSheet = Pick<WorkSheet, "serveMinutes" | "serveAtMinutes">;

/** Minutes of the cooking so far apart that are round: on the clock where there is one, else from the beginning. */
export function listTicks(sheet: TimedSheet, stepMinutes: number): number[] {
  const begins = clockMinutes(sheet, 0) ?? 0;
  const first = Math.ceil(begins / stepMinutes) * stepMinutes - begins;
  const count = Math.floor((sheet.serveMinutes - first) / stepMinutes) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, k) => first + k * stepMinutes);
}

/** A for the first dish, B for the second; after Z come numbers. */
export function letterOf(dish: number): string {
  return dish < 26 ? String.fromCharCode(65 + dish) : String(dish + 1);
}

const PATTERNS = [
  "<defs>",
  '<pattern id="hl-eye" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#ffffff"/><rect width="2" height="6" fill="#c3cdd6"/></pattern>',
  '<pattern id="hl-wash" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="#ffffff"/><circle cx="3" cy="3" r="1.2" fill="#8795a1"/></pattern>',
  '<pattern id="hl-warming" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="#ffffff"/><path d="M0 3h6M3 0v6" stroke="#c3cdd6"/></pattern>',
  "</defs>",
].join("");

interface Lane {
  readonly bar: TimelineBar;
  readonly lane: number;
}

/** Bars of a row that overlap go into lanes below each other, each into the first that is free. */
function layRows(rows: readonly TimelineRow[]) {
  let y = TOP;
  const laid = rows.map((row) => {
    const ends: number[] = [];
    const lanes = [...row.bars]
      .sort((a, b) => a.startMinutes - b.startMinutes || a.endMinutes - b.endMinutes)
      .map((bar): Lane => {
        const free = ends.findIndex((end) => end <= bar.startMinutes);
        const lane = free < 0 ? ends.length : free;
        ends[lane] = bar.endMinutes;
        return { bar, lane };
      });
    const at = { row, y, lanes };
    y += Math.max(1, ends.length) * LANE + GAP;
    return at;
  });
  return { rows: laid, height: y - TOP };
}

function drawAxis(
  sheet: TimedSheet,
  bottom: number,
  x: (minutes: number) => number,
  { tick }: TimelineWords,
): string[] {
  const step = TICKS.find((each) => sheet.serveMinutes / each <= MOST_TICKS) ?? 480;
  return listTicks(sheet, step).flatMap((minute) => [
    `<path d="M${x(minute)} ${TOP - 6}V${bottom}" stroke="#d5dce2" stroke-width="1"/>`,
    `<text x="${x(minute)}" y="${TOP - 12}" text-anchor="middle" fill="#1f2933">${escapeXml(tick(minute))}</text>`,
  ]);
}

function drawRow(
  row: TimelineRow,
  y: number,
  lanes: readonly Lane[],
  x: (minutes: number) => number,
  words: TimelineWords,
): string[] {
  const name = `<text x="${LEFT - 8}" y="${y + 16}" text-anchor="end" fill="#1f2933">${escapeXml(words.rowName(row))}</text>`;
  return [name, ...lanes.map(({ bar, lane }) => drawBar(bar, y + lane * LANE, x, words))];
}

function drawBar(bar: TimelineBar, y: number, x: (minutes: number) => number, { barName }: TimelineWords): string {
  const { fill, ink, dash } = FILLS[bar.fill];
  const [left, right] = [x(bar.startMinutes), x(bar.endMinutes)];
  const width = round(right - left);
  const text = bar.dish === undefined ? barName(bar) : `${letterOf(bar.dish)} ${barName(bar)}`;
  const shown = [text, ...(bar.dish === undefined ? [] : [letterOf(bar.dish)])].find(
    (each) => each.length * SIGN_WIDTH + 6 <= width,
  );
  const box = `<rect x="${left}" y="${y}" width="${width}" height="${LANE - 6}" rx="3" fill="${fill}" stroke="#1f2933"${dash ? ` stroke-dasharray="${dash}"` : ""}/>`;
  const halo = bar.fill === "full" ? "" : ' paint-order="stroke" stroke="#ffffff" stroke-width="3"';
  const label =
    shown === undefined
      ? ""
      : `<text x="${round(left + 4)}" y="${y + 14}" fill="${ink}"${halo}>${escapeXml(shown)}</text>`;
  return `<g><title>${escapeXml(`${text}, ${bar.startMinutes}–${bar.endMinutes}`)}</title>${box}${label}</g>`;
}

function drawLegend(rows: readonly TimelineRow[], y: number, { legend }: TimelineWords): string[] {
  const used = (Object.keys(FILLS) as TimelineBar["fill"][]).filter((fill) =>
    rows.some(({ bars }) => bars.some((bar) => bar.fill === fill)),
  );
  let x = LEFT;
  return used.map((each) => {
    const { fill, dash } = FILLS[each];
    const at = x;
    x += Math.ceil(legend[each].length * SIGN_WIDTH) + 44;
    return `<g><rect x="${at}" y="${y - 11}" width="20" height="14" rx="3" fill="${fill}" stroke="#1f2933"${dash ? ` stroke-dasharray="${dash}"` : ""}/><text x="${at + 26}" y="${y}" fill="#1f2933">${escapeXml(legend[each])}</text></g>`;
  });
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
