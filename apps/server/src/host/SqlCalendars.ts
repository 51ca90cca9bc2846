import type { StoreFault } from "@halfloaf/keep";
import type { CalendarStore, HostedCalendar } from "./HostStore.ts";
import type { Sql } from "./SqlDriver.ts";

const CALENDAR = `id, kitchen, made_by AS "madeBy", secret_hash AS "secretHash", manner, made_at_ms AS "madeAtMs", seen_at_ms AS "seenAtMs"`;
const COLUMNS = ["id", "kitchen", "made_by", "secret_hash", "manner", "made_at_ms", "seen_at_ms"];

/** How statements reach the database: both give a fault where it can't be asked. */
export interface SqlAccess {
  read<Row>(text: string, ...values: readonly string[]): Promise<Row[] | StoreFault>;
  write<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given | StoreFault>;
  /** Holds a kitchen against others until the end of the transaction. */
  hold(sql: Sql, kitchen: string): Promise<unknown>;
}

/** The addresses of calendars in the tables of a database. */
export class SqlCalendars implements CalendarStore {
  readonly #access: SqlAccess;

  constructor(access: SqlAccess) {
    this.#access = access;
  }

  add(calendar: HostedCalendar, most: number) {
    return this.#access.write(async (sql) => {
      await this.#access.hold(sql, calendar.kitchen);
      const there = await readCalendars(sql, calendar.kitchen);
      if (there.length >= most) return "full" as const;
      await addCalendars(sql, [calendar]);
      return "done" as const;
    });
  }

  async find(kitchen: string, id: string) {
    const text = `SELECT ${CALENDAR} FROM calendars WHERE kitchen = ? AND id = ?`;
    const found = await this.#access.read<HostedCalendar>(text, kitchen, id);
    return "ok" in found ? found : found[0];
  }

  list(kitchen: string) {
    const text = `SELECT ${CALENDAR} FROM calendars WHERE kitchen = ? ORDER BY made_at_ms, id`;
    return this.#access.read<HostedCalendar>(text, kitchen);
  }

  remove(kitchen: string, id: string) {
    return this.#access.write(async (sql) => {
      const gone = await sql.run("DELETE FROM calendars WHERE kitchen = ? AND id = ?", kitchen, id);
      return gone > 0 ? ("done" as const) : ("missing" as const);
    });
  }

  noteSeen(kitchen: string, id: string, atMs: number) {
    return this.#access.write(async (sql) => {
      await sql.run("UPDATE calendars SET seen_at_ms = ? WHERE kitchen = ? AND id = ?", atMs, kitchen, id);
      return "done" as const;
    });
  }
}

/** All of a kitchen. */
export function readCalendars({ all }: Pick<Sql, "all">, kitchen: string): Promise<HostedCalendar[]> {
  return all(`SELECT ${CALENDAR} FROM calendars WHERE kitchen = ?`, kitchen);
}

export function addCalendars(sql: Sql, calendars: readonly HostedCalendar[]): Promise<void> {
  const lines = calendars.map(({ id, kitchen, madeBy, secretHash, manner, madeAtMs, seenAtMs }) => [
    id,
    kitchen,
    madeBy,
    secretHash,
    manner,
    madeAtMs,
    seenAtMs,
  ]);
  return sql.insert("calendars", COLUMNS, lines);
}
