import type { CoverTable } from "./CoverTable.ts";
import type { Source } from "./Sources.ts";

/** One purchase of a food that goes off: breakpoint `row` of a table, bought on a trip, opened from a period on. */
export interface Opening {
  readonly source: Source;
  readonly table: CoverTable;
  readonly row: number;
  readonly trip: number;
  readonly period: number;
}

/** Openings one after the other, in columns that are written over and over. */
export interface OpeningPath {
  length: number;
  /** Needs that nothing could be had for. */
  missing: number;
  readonly source: Source[];
  readonly table: CoverTable[];
  readonly row: number[];
  readonly trip: number[];
  readonly period: number[];
  /** True where not all of its packs are needed when it is first opened. */
  readonly lazy: boolean[];
}

export function createPath(): OpeningPath {
  return { length: 0, missing: 0, source: [], table: [], row: [], trip: [], period: [], lazy: [] };
}

export function push(
  path: OpeningPath,
  source: Source,
  table: CoverTable,
  row: number,
  trip: number,
  period: number,
  lazy: boolean,
): void {
  const at = path.length++;
  path.source[at] = source;
  path.table[at] = table;
  path.row[at] = row;
  path.trip[at] = trip;
  path.period[at] = period;
  path.lazy[at] = lazy;
}

export function copyPath(from: OpeningPath, to: OpeningPath): void {
  to.length = from.length;
  to.missing = from.missing;
  for (let i = 0; i < from.length; i++) {
    to.source[i] = from.source[i] as Source;
    to.table[i] = from.table[i] as CoverTable;
    to.row[i] = from.row[i] as number;
    to.trip[i] = from.trip[i] as number;
    to.period[i] = from.period[i] as number;
  }
}

export function openingsOf({ length, source, table, row, trip, period }: OpeningPath): Opening[] {
  return source.slice(0, length).map((from, i) => ({
    source: from,
    table: table[i] as CoverTable,
    row: row[i] as number,
    trip: trip[i] as number,
    period: period[i] as number,
  }));
}
