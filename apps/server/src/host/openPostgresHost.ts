import type { StoreFault } from "@halfloaf/keep";
import pg from "pg";
import type { HostStore } from "./HostStore.ts";
import { LAYOUT_VERSION, type Sql, type SqlDriver, type SqlValue, writeLayout } from "./SqlDriver.ts";
import { SqlHost } from "./SqlHost.ts";

/** SQLSTATE classes that tell something of their own. Source: PostgreSQL 15, appendix A, "PostgreSQL Error Codes". */
const CODES = { diskFull: "53100", busy: ["40001", "40P01", "55P03", "53300"] };

/** What of a fault is none of ours: the connection was lost, refused or never came about. */
const LOST = /ECONN|EPIPE|ETIMEDOUT|ENOTFOUND|ENOENT|EHOSTUNREACH|timeout|terminated|not queryable|Connection/i;

/** Any number that all servers know, so that only one at a time makes the tables. */
const LAYOUT_LOCK = 4_620_001;

/** Whole numbers come as numbers: none here is beyond what they hold exactly. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (id: number, format?: "text" | "binary") =>
    id === pg.types.builtins.INT8 ? (text: string) => Number(text) : pg.types.getTypeParser(id, format as "text"),
} as pg.CustomTypesConfig;

/**
 * Opens the store of a server in a database of PostgreSQL; its tables are made where there are none. Throws where the database
 * can't be reached or a newer server made its tables.
 */
export async function openPostgresHost(url: string, { lanes = 4 } = {}): Promise<HostStore> {
  const pool = new pg.Pool({ connectionString: url, max: lanes + 4, types, connectionTimeoutMillis: 5_000 });
  // A connection that is lost while idle is no defect: the next question opens another one.
  pool.on("error", () => {});
  const driver = new PostgresDriver(pool, lanes);
  try {
    await driver.transact(makeTables);
  } catch (error) {
    await pool.end();
    throw error;
  }
  return new SqlHost(driver);
}

async function makeTables(sql: Sql): Promise<void> {
  await sql.all("SELECT pg_advisory_xact_lock(?)", LAYOUT_LOCK);
  await sql.run("CREATE TABLE IF NOT EXISTS layout (version INTEGER NOT NULL)");
  const [layout] = await sql.all<{ version: number }>("SELECT version FROM layout");
  if (layout !== undefined && layout.version > LAYOUT_VERSION)
    throw new Error(`The tables are of layout ${layout.version}, this server knows ${LAYOUT_VERSION}`);
  if (layout?.version === LAYOUT_VERSION) return;
  await sql.run(writeLayout({ whole: "BIGINT", blob: "BYTEA", end: "" }, layout?.version ?? 0));
  await sql.run("DELETE FROM layout");
  await sql.insert("layout", ["version"], [[LAYOUT_VERSION]]);
}

class PostgresDriver implements SqlDriver {
  readonly forUpdate = " FOR UPDATE";
  readonly lanes: number;
  readonly #pool: pg.Pool;

  constructor(pool: pg.Pool, lanes: number) {
    this.#pool = pool;
    this.lanes = lanes;
  }

  all: Sql["all"] = (text, ...values) => toSql(this.#pool).all(text, ...values);

  isOneOf = (column: string): string => `${column} = ANY(?)`;

  isOnePair = (first: string, second: string): string => {
    const halves = "split_part(pair, '/', 1), split_part(pair, '/', 2)";
    return `(${first}, ${second}) IN (SELECT ${halves} FROM unnest(?::text[]) AS pair)`;
  };

  async transact<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given> {
    const client = await this.#pool.connect();
    let lost: Error | undefined;
    // Without a hearer the loss of the connection in the middle would end the process.
    const hear = (error: Error) => {
      lost = error;
    };
    client.on("error", hear);
    try {
      await client.query("BEGIN");
      const given = await act(toSql(client));
      await client.query("COMMIT");
      return given;
    } catch (error) {
      await client.query("ROLLBACK").catch((failed: Error) => {
        lost = failed;
      });
      throw error;
    } finally {
      client.off("error", hear);
      client.release(lost);
    }
  }

  faultOf(error: unknown): StoreFault | undefined {
    if (this.#pool.ending) return { ok: false, reason: "closed", detail: "" };
    const { code } = error as { code?: unknown };
    const detail = error instanceof Error ? error.message : String(error);
    if (code === CODES.diskFull) return { ok: false, reason: "full", detail };
    if (CODES.busy.includes(String(code))) return { ok: false, reason: "busy", detail };
    const isOfDatabase = error instanceof pg.DatabaseError || LOST.test(`${String(code)} ${detail}`);
    return isOfDatabase ? { ok: false, reason: "failed", detail } : undefined;
  }

  close(): Promise<void> {
    return this.#pool.end();
  }
}

/** PostgreSQL takes so many values in one statement. Source: its protocol counts them in 16 bits. */
const MOST_VALUES = 60_000;

function toSql(connection: pg.Pool | pg.PoolClient): Sql {
  const ask = (text: string, values: readonly (SqlValue | readonly string[])[]) => {
    let count = 0;
    const numbered = text.replaceAll("?", () => `$${++count}`);
    return values.length === 0
      ? connection.query(numbered)
      : connection.query(
          numbered,
          values.map((value) => (value instanceof Uint8Array ? Buffer.from(value) : value)),
        );
  };
  return {
    all: async <Row>(text: string, ...values: readonly (SqlValue | readonly string[])[]) =>
      (await ask(text, values)).rows as Row[],
    run: async (text, ...values) => (await ask(text, values)).rowCount ?? 0,
    insert: async (table, columns, rows) => {
      const marks = `(${columns.map(() => "?").join(", ")})`;
      const most = Math.floor(MOST_VALUES / columns.length);
      for (let from = 0; from < rows.length; from += most) {
        const some = rows.slice(from, from + most);
        const places = some.map(() => marks).join(", ");
        await ask(`INSERT INTO ${table} (${columns.join(", ")}) VALUES ${places}`, some.flat());
      }
    },
  };
}
