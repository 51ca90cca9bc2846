import type { StoreFault } from "@halfloaf/keep";

export type SqlValue = string | number | Uint8Array;

/** Statements within one connection; `?` stands for a value. */
export interface Sql {
  all<Row>(text: string, ...values: readonly (SqlValue | readonly string[])[]): Promise<Row[]>;
  /** How many rows were changed. */
  run(text: string, ...values: readonly SqlValue[]): Promise<number>;
  /** Adds rows, each with its values in the order of the columns. */
  insert(table: string, columns: readonly string[], rows: readonly (readonly SqlValue[])[]): Promise<void>;
}

/** A database that the tables of a server stand in, as far as databases differ. */
export interface SqlDriver {
  /** How many transactions may be under way at the same time. */
  readonly lanes: number;
  /** What holds a row read in a transaction against others until its end. */
  readonly forUpdate: string;
  /** The condition that a column is one of a list, which is given as one value. */
  isOneOf(column: string): string;
  /** The condition that two columns are one of a list of pairs, each written as one text with a slash between. */
  isOnePair(first: string, second: string): string;
  /** Reads outside of a transaction. */
  all: Sql["all"];
  /** All that `act` did is on disk once it is given, or nothing was done and the database's error is thrown. */
  transact<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given>;
  /** What an error of the database means for who asked; undefined where it is none of the database's. */
  faultOf(error: unknown): StoreFault | undefined;
  close(): Promise<void>;
}

/** The version of the tables; a store of a greater one is not opened. */
export const LAYOUT_VERSION = 2;

/** What differs between databases in the tables: names of types, and what stands at the end of each. */
interface LayoutDialect {
  readonly whole: string;
  readonly blob: string;
  readonly end: string;
}

/** The statements that bring tables of a version, 0 where there are none, to the one that this server knows. */
export function writeLayout(dialect: LayoutDialect, from: number): string {
  return [writeFirst, writeCalendars]
    .slice(from)
    .map((write) => write(dialect))
    .join("");
}

function writeCalendars({ whole, blob, end }: LayoutDialect): string {
  return `
  CREATE TABLE calendars (
    kitchen TEXT NOT NULL, id TEXT NOT NULL, made_by TEXT NOT NULL, secret_hash ${blob} NOT NULL, manner TEXT NOT NULL,
    made_at_ms ${whole} NOT NULL, seen_at_ms ${whole} NOT NULL, PRIMARY KEY (kitchen, id)
  )${end};`;
}

function writeFirst({ whole, blob, end }: LayoutDialect): string {
  return `
  CREATE TABLE kitchens (
    id TEXT PRIMARY KEY, log TEXT NOT NULL, up_to ${whole} NOT NULL, bytes ${whole} NOT NULL
  )${end};
  CREATE TABLE devices (
    kitchen TEXT NOT NULL, id TEXT NOT NULL, name TEXT NOT NULL, role TEXT NOT NULL, secret_hash ${blob} NOT NULL,
    made_at_ms ${whole} NOT NULL, seen_at_ms ${whole} NOT NULL, PRIMARY KEY (kitchen, id)
  )${end};
  CREATE TABLE invitations (
    id TEXT PRIMARY KEY, kitchen TEXT NOT NULL, role TEXT NOT NULL, secret_hash ${blob} NOT NULL, made_by TEXT NOT NULL,
    expires_at_ms ${whole} NOT NULL
  )${end};
  CREATE INDEX invitations_of_kitchen ON invitations (kitchen);
  CREATE TABLE writers (
    kitchen TEXT NOT NULL, writer TEXT NOT NULL, device TEXT NOT NULL, PRIMARY KEY (kitchen, writer)
  )${end};
  CREATE TABLE log_rows (
    kitchen TEXT NOT NULL, seq ${whole} NOT NULL, id TEXT NOT NULL, device TEXT NOT NULL, content TEXT NOT NULL,
    PRIMARY KEY (kitchen, seq)
  )${end};
  CREATE UNIQUE INDEX log_rows_by_id ON log_rows (kitchen, id);`;
}
