import { realpathSync } from "node:fs";
import type { StoreFault } from "@halfloaf/keep";
import { DatabaseSync, type DatabaseSyncInstance, type StatementSyncInstance } from "@photostructure/sqlite";
import type { HostStore } from "./HostStore.ts";
import { LAYOUT_VERSION, type Sql, type SqlDriver, type SqlValue, writeLayout } from "./SqlDriver.ts";
import { SqlHost } from "./SqlHost.ts";

/** Result codes of SQLite that tell something of their own. Source: sqlite.org, "Result and Error Codes". */
const CODES = { busy: 5, locked: 6, full: 13 };

/** How long one process waits for another, in milliseconds. */
const WAIT_MS = 5_000;

/** The transaction that was begun last in each file: openings of one process would else block each other's way. */
const turns = new Map<string, Promise<unknown>>();

/**
 * Opens the store of a server in a file of SQLite, made where there is none. Throws where the file can't be opened or a newer
 * server wrote it: then there is nothing to serve.
 */
export function openSqliteHost(path: string): HostStore {
  const database = open(path);
  const { user_version: version } = database.prepare("PRAGMA user_version").get() as { user_version: number };
  if (version > LAYOUT_VERSION) {
    database.close();
    throw new Error(
      `${path} was written by a newer server: its layout is ${version}, this one knows ${LAYOUT_VERSION}`,
    );
  }
  const layout = writeLayout({ whole: "INTEGER", blob: "BLOB", end: " STRICT, WITHOUT ROWID" }, version);
  if (version < LAYOUT_VERSION)
    database.exec(`BEGIN IMMEDIATE; ${layout} PRAGMA user_version = ${LAYOUT_VERSION}; COMMIT`);
  return new SqlHost(new SqliteDriver(database, open(path), realpathSync(path)));
}

function open(path: string): DatabaseSyncInstance {
  const database = new DatabaseSync(path);
  database.exec(`PRAGMA busy_timeout = ${WAIT_MS}; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL`);
  return database;
}

/** One connection writes, one transaction after the other; another one reads, and sees only what is on disk. */
class SqliteDriver implements SqlDriver {
  readonly lanes = 1;
  readonly forUpdate = "";
  readonly #writing: DatabaseSyncInstance;
  readonly #reading: DatabaseSyncInstance;
  readonly #sql: Sql;
  readonly #file: string;

  constructor(writing: DatabaseSyncInstance, reading: DatabaseSyncInstance, file: string) {
    this.#file = file;
    this.#writing = writing;
    this.#reading = reading;
    this.#sql = toSql(writing);
    this.all = toSql(reading).all;
  }

  readonly all: Sql["all"];

  isOneOf = (column: string): string => `${column} IN (SELECT value FROM json_each(?))`;

  isOnePair = (first: string, second: string): string => {
    const slash = "instr(value, '/')";
    const halves = `substr(value, 1, ${slash} - 1), substr(value, ${slash} + 1)`;
    return `(${first}, ${second}) IN (SELECT ${halves} FROM json_each(?))`;
  };

  transact<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given> {
    const before = turns.get(this.#file) ?? Promise.resolve();
    const mine = before.then(() => this.#transactNow(act));
    turns.set(
      this.#file,
      mine.catch(() => {}),
    );
    return mine;
  }

  async #transactNow<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given> {
    this.#writing.exec("BEGIN IMMEDIATE");
    try {
      const given = await act(this.#sql);
      this.#writing.exec("COMMIT");
      return given;
    } catch (error) {
      if (this.#writing.isOpen && this.#writing.isTransaction) this.#writing.exec("ROLLBACK");
      throw error;
    }
  }

  faultOf(error: unknown): StoreFault | undefined {
    if (!this.#writing.isOpen) return { ok: false, reason: "closed", detail: "" };
    const code = (error as { errcode?: unknown }).errcode;
    if (typeof code !== "number") return undefined;
    const primary = code & 0xff;
    const isBusy = primary === CODES.busy || primary === CODES.locked;
    const detail = error instanceof Error ? error.message : String(error);
    return { ok: false, reason: primary === CODES.full ? "full" : isBusy ? "busy" : "failed", detail };
  }

  async close(): Promise<void> {
    await turns.get(this.#file);
    for (const database of [this.#reading, this.#writing]) if (database.isOpen) database.close();
  }
}

function toSql(database: DatabaseSyncInstance): Sql {
  const statements = new Map<string, StatementSyncInstance>();
  const prepare = (text: string) => {
    const known = statements.get(text) ?? database.prepare(text);
    statements.set(text, known);
    return known;
  };
  const bind = (value: SqlValue | readonly string[]): SqlValue =>
    typeof value === "object" && !(value instanceof Uint8Array) ? JSON.stringify(value) : value;
  return {
    all: async <Row>(text: string, ...values: readonly (SqlValue | readonly string[])[]) =>
      prepare(text).all(...values.map(bind)) as Row[],
    run: async (text, ...values) => Number(prepare(text).run(...values).changes),
    insert: async (table, columns, rows) => {
      const marks = columns.map(() => "?").join(", ");
      const statement = prepare(`INSERT INTO ${table} (${columns.join(", ")}) VALUES (${marks})`);
      for (const values of rows) statement.run(...values);
    },
  };
}
