import { tellMoment } from "@halfloaf/words/clock";
import { nameRow } from "@halfloaf/words/en";
import type { TimelineBar, TimelineRow } from "halfloaf/kitchen";
import { letterOf, listTicks } from "halfloaf/sheet";
import { wrapBehind } from "../output/layout.ts";
import { pad, textWidth } from "../output/textWidth.ts";
import type { WorkPage } from "./WorkPage.ts";

const TICKS = [5, 10, 15, 20, 30, 60, 120, 240, 480];
const MOST_COLUMNS_A_MINUTE = 3;
const LEAD = 2;
const GAP = 2;

/** The timeline as a picture of letters, one row for each thing that can do one job at a time. */
export function layTimeline(page: WorkPage): string[] {
  const { sheet, width, paint } = page;
  const names = sheet.rows.map(nameRow);
  const nameWidth = Math.max(...names.map(textWidth), 0);
  const left = LEAD + nameWidth + GAP;
  const scale = chooseScale(sheet.serveMinutes, width - left - 1);
  const rows = sheet.rows.map((row, at) => {
    const cells = drawRow(row, sheet.serveMinutes, scale);
    return `${" ".repeat(LEAD)}${pad(names[at] as string, nameWidth + GAP)}${cells}`.trimEnd();
  });
  const axis = drawAxis(page, scale, width - left).map((line) => `${" ".repeat(left)}${line}`.trimEnd());
  const dishes = sheet.dishes.flatMap(({ title }, at) => wrapBehind(`  ${letterOf(at)}  `, title, width));
  return [...axis, ...rows, "", ...wrapBehind("  ", tellSigns(sheet.rows), width).map(paint.quiet), ...dishes];
}

/** Columns for a minute, or minutes for a column; one of the two is 1. */
interface Scale {
  readonly columns: number;
  readonly minutes: number;
}

function chooseScale(total: number, room: number): Scale {
  const columns = Math.min(MOST_COLUMNS_A_MINUTE, Math.floor(room / Math.max(1, total)));
  return columns >= 1 ? { columns, minutes: 1 } : { columns: 1, minutes: Math.ceil(total / room) };
}

function drawAxis({ sheet }: WorkPage, { columns, minutes }: Scale, room: number): string[] {
  const labelWidth = tellMoment(sheet, sheet.serveMinutes).length + 2;
  const at = (minute: number) => Math.floor(minute / minutes) * columns;
  const step = TICKS.find((each) => (each / minutes) * columns >= labelWidth) ?? 1440;
  const marks = listTicks(sheet, step);
  let labels = "";
  let ticks = "";
  for (const minute of marks) {
    const label = tellMoment(sheet, minute);
    if (at(minute) + label.length > room) break;
    labels = pad(labels, at(minute)) + label;
    ticks = `${pad(ticks, at(minute))}|`;
  }
  return [labels, ticks];
}

function drawRow({ bars }: TimelineRow, total: number, { columns, minutes }: Scale): string {
  const cells = Array.from({ length: Math.ceil(total / minutes) }, (_, cell) => {
    const [from, to] = [cell * minutes, (cell + 1) * minutes];
    const here = bars.filter((bar) => bar.startMinutes < to && bar.endMinutes > from);
    return Array.from({ length: columns }, (__, column) => signOf(here, cell * columns + column)).join("");
  });
  return cells.join("");
}

/** Where two jobs run beside each other in one row, their signs take turns. */
function signOf(bars: readonly TimelineBar[], column: number): string {
  const bar = bars.find(({ fill }) => fill === "full" || fill === "wash") ?? bars[column % Math.max(1, bars.length)];
  if (bar === undefined) return " ";
  const letter = bar.dish === undefined ? "" : letterOf(bar.dish);
  return { full: letter, held: letter, eye: letter.toLowerCase(), wash: "w", warming: "~", waiting: "." }[bar.fill];
}

const SIGNS: readonly [TimelineBar["fill"], string][] = [
  ["full", "capital: both hands, or in use"],
  ["eye", "small: an eye on it"],
  ["wash", "w: washing up"],
  ["warming", "~: the oven warms up"],
  ["waiting", "dots: waits"],
];

function tellSigns(rows: readonly TimelineRow[]): string {
  const used = new Set(rows.flatMap(({ bars }) => bars.map(({ fill }) => fill)));
  return `${SIGNS.flatMap(([fill, text]) => (used.has(fill) ? [text] : [])).join("; ")}.`;
}
