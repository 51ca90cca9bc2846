/** Figures at one value of what is varied; null where some seed had none. */
export interface GrowthPoint {
  readonly value: number;
  readonly firstS: number | null;
  readonly boundS: number | null;
  readonly movesPerS: number | null;
}

/** One thing varied, all else held. */
export interface GrowthAxis {
  readonly name: string;
  readonly points: readonly GrowthPoint[];
}

const PANEL = { width: 250, height: 190, left: 44, top: 34, gap: 24 } as const;
const PLOT = { width: PANEL.width - PANEL.left - 18, height: PANEL.height - PANEL.top - 38 } as const;
const LEGEND = 30;
/** Seconds at the foot and at the head of every panel; both scales are logarithmic. */
const LOW_S = 0.01;
const HIGH_S = 30;
const TICKS_S = [0.01, 0.1, 1, 10];

const SERIES = [
  { key: "firstS", label: "first plan", shape: "first" },
  { key: "boundS", label: "first bound", shape: "bound" },
] as const;

/** Readable on a light and on a dark page: colours follow the reader's, and shapes differ too. */
const STYLE = `
.ink { fill: #1f2933 } .rule { stroke: #c3cdd6 } .page { fill: #ffffff }
.first { stroke: #8a4b08; fill: #8a4b08 } .bound { stroke: #1f5f8b; fill: #1f5f8b }
@media (prefers-color-scheme: dark) {
  .ink { fill: #e4e9ee } .rule { stroke: #46535f } .page { fill: #161c22 }
  .first { stroke: #f0a860; fill: #f0a860 } .bound { stroke: #7fc1ec; fill: #7fc1ec }
}
.line { fill: none; stroke-width: 2 } .bound.line { stroke-dasharray: 5 4 }`;

/** A plot of seconds over each thing varied, one panel each, both scales logarithmic. */
export function growthSvg(axes: readonly GrowthAxis[]): string {
  const columns = 2;
  const width = columns * PANEL.width + PANEL.gap;
  const height = LEGEND + Math.ceil(axes.length / columns) * PANEL.height;
  const panels = axes.map((axis, i) => {
    const x = (i % columns) * (PANEL.width + PANEL.gap);
    const y = LEGEND + Math.floor(i / columns) * PANEL.height;
    return `<g transform="translate(${x} ${y})">\n${panel(axis)}\n</g>`;
  });
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d" font-family="system-ui, sans-serif" font-size="11">`,
    '<title id="t">Seconds to the first plan and to the first bound as a problem grows</title>',
    `<desc id="d">${axes.map(describeAxis).join(" ")}</desc>`,
    `<style>${STYLE}\n</style>`,
    `<rect class="page" width="${width}" height="${height}"/>`,
    ...SERIES.map(legend),
    ...panels,
    "</svg>",
  ].join("\n")}\n`;
}

function describeAxis({ name, points }: GrowthAxis): string {
  const [first, last] = [points[0], points.at(-1)];
  const show = (value: number | null | undefined): string => (value == null ? "none" : `${value.toFixed(2)} s`);
  return `From ${first?.value} to ${last?.value} ${name}: first plan ${show(first?.firstS)} to ${show(last?.firstS)}, first bound ${show(first?.boundS)} to ${show(last?.boundS)}.`;
}

function legend({ label, shape }: (typeof SERIES)[number], i: number): string {
  const x = PANEL.left + i * 130;
  return `<path class="${shape} line" d="M${x} 16h26"/>${mark(shape, x + 13, 16)}<text class="ink" x="${x + 34}" y="20">${label}</text>`;
}

function mark(shape: string, x: number, y: number): string {
  return shape === "first"
    ? `<circle class="first" cx="${x}" cy="${y}" r="3"/>`
    : `<rect class="bound" x="${x - 3}" y="${y - 3}" width="6" height="6"/>`;
}

function panel({ name, points }: GrowthAxis): string {
  const values = points.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const across = (value: number): number => round(PANEL.left + PLOT.width * share(value, low, high));
  const up = (seconds: number): number => round(PANEL.top + PLOT.height * (1 - share(seconds, LOW_S, HIGH_S)));
  const foot = PANEL.top + PLOT.height;
  const rules = TICKS_S.flatMap((s) => [
    `<path class="rule" d="M${PANEL.left} ${up(s)}h${PLOT.width}"/>`,
    `<text class="ink" x="${PANEL.left - 6}" y="${up(s) + 4}" text-anchor="end">${s} s</text>`,
  ]);
  const labels = values.map(
    (v) => `<text class="ink" x="${across(v)}" y="${foot + 16}" text-anchor="middle">${v}</text>`,
  );
  const lines = SERIES.flatMap(({ key, shape }) => {
    const known = points.flatMap((point) =>
      point[key] === null ? [] : [[across(point.value), up(point[key])] as const],
    );
    const path = known.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("");
    return [`<path class="${shape} line" d="${path}"/>`, ...known.map(([x, y]) => mark(shape, x, y))];
  });
  const title = `<text class="ink" x="${PANEL.left}" y="${PANEL.top - 12}" font-weight="600">${name}</text>`;
  return [title, ...rules, ...labels, ...lines].join("\n");
}

/** Where a value stands between two others on a logarithmic scale, 0 to 1. */
function share(value: number, low: number, high: number): number {
  const clamped = Math.min(high, Math.max(low, value));
  return Math.log(clamped / low) / Math.log(high / low);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
