import * as v from "valibot";
import { type Composition, NUTRIENT_NAMES, type Nutrient } from "../food/nutrient.ts";
import { type Issue, type Parsed, parseWith } from "../quantity/issue.ts";

const text = v.pipe(v.string(), v.nonEmpty());

const Table = v.strictObject({
  title: text,
  source: text,
  note: v.optional(text),
  /** Components of each column; several where the source prints one factor for them. */
  columns: v.pipe(v.array(v.pipe(v.array(v.picklist(NUTRIENT_NAMES)), v.minLength(1))), v.minLength(1)),
  rows: v.pipe(
    v.array(
      v.strictObject({
        code: v.pipe(v.string(), v.regex(/^\d{4}$/, "four digits")),
        description: text,
        /** Percent left, one figure a column. */
        percent: v.array(v.pipe(v.number(), v.minValue(0), v.maxValue(100))),
        note: v.optional(text),
      }),
    ),
    v.minLength(1),
  ),
});

/** What one way of cooking leaves of what the raw food held. */
export interface RetentionRow {
  readonly description: string;
  /** Percent left, from 0 to 100; a component without one is kept whole. */
  readonly percent: Readonly<Partial<Record<Nutrient, number>>>;
  /** For example "USDA Table of Nutrient Retention Factors, Release 6 (2007), code 3455". */
  readonly source: string;
  readonly note?: string;
}

/** Retention factors by their code of four digits, and the components that cooking can take from. */
export interface RetentionTable {
  readonly rows: ReadonlyMap<string, RetentionRow>;
  readonly components: ReadonlySet<Nutrient>;
}

/**
 * Reads a table of retention factors as it comes from JSON. Every fault is given at once: rows with too few or too many
 * figures, a code or a component that stands twice.
 */
export function parseRetentionTable(input: unknown): Parsed<RetentionTable> {
  const parsed = parseWith(Table, input);
  if (!parsed.ok) return parsed;
  const { source, columns, rows } = parsed.value;
  const issues = [...findRepeats(columns), ...findRowFaults(rows, columns.length)];
  if (issues.length > 0) return { ok: false, issues };
  const byCode = rows.map(({ code, description, percent, note }) => {
    const factors = columns.flatMap((names, at) => names.map((name) => [name, percent[at] as number]));
    return [
      code,
      {
        description,
        percent: Object.fromEntries(factors) as RetentionRow["percent"],
        source: `${source}, code ${code}`,
        ...(note !== undefined && { note }),
      },
    ] as const;
  });
  return { ok: true, value: { rows: new Map(byCode), components: new Set(columns.flat()) } };
}

/**
 * What is left after cooking of the amounts that the raw food held, in the same units and for the same raw mass.
 *
 * Factors go on the amount of the raw ingredient, never on 100 g of the cooked food. A component without a factor
 * is kept whole, an unknown amount stays unknown. Of a code not in the table nothing is known: the components that
 * cooking can take from are then left out. Energy is left as it is, since no factor touches what gives it.
 */
export function applyRetention(amounts: Composition, code: string, table: RetentionTable): Composition {
  const row = table.rows.get(code);
  const left: Partial<Record<Nutrient, number>> = {};
  for (const name of NUTRIENT_NAMES) {
    const amount = amounts[name];
    if (amount === undefined || (row === undefined && table.components.has(name))) continue;
    left[name] = amount * ((row?.percent[name] ?? 100) / 100);
  }
  return left;
}

function findRepeats(columns: readonly (readonly Nutrient[])[]): Issue[] {
  const seen = new Set<Nutrient>();
  return columns.flatMap((names, column) =>
    names.flatMap((name, at) => {
      if (!seen.has(name)) {
        seen.add(name);
        return [];
      }
      return [
        { code: "unique", path: ["columns", column, at], expected: "a component not named before", received: name },
      ];
    }),
  );
}

function findRowFaults(rows: readonly { code: string; percent: readonly number[] }[], width: number): Issue[] {
  const seen = new Set<string>();
  return rows.flatMap(({ code, percent }, at) => {
    const issues: Issue[] = [];
    if (percent.length !== width) {
      const [expected, received] = [`${width} figures`, `${percent.length} figures`];
      issues.push({ code: "width", path: ["rows", at, "percent"], expected, received });
    }
    if (seen.has(code)) {
      issues.push({ code: "unique", path: ["rows", at, "code"], expected: "a code not used before", received: code });
    }
    seen.add(code);
    return issues;
  });
}
