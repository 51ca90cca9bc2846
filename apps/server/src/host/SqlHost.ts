import type { StoreFault } from "@halfloaf/keep";
import type { Role } from "@halfloaf/keep/sync";
import type {
  Changed,
  HostedDevice,
  HostedInvitation,
  HostedKitchen,
  HostedRow,
  HostStore,
  KitchenCopy,
  LogPage,
  Push,
  Pushed,
} from "./HostStore.ts";
import { isFault } from "./HostStore.ts";
import { PushQueue } from "./PushQueue.ts";
import { addCalendars, readCalendars, SqlCalendars } from "./SqlCalendars.ts";
import type { Sql, SqlDriver } from "./SqlDriver.ts";

const DEVICE = `id, kitchen, name, role, secret_hash AS "secretHash", made_at_ms AS "madeAtMs", seen_at_ms AS "seenAtMs"`;
const DEVICE_COLUMNS = ["id", "kitchen", "name", "role", "secret_hash", "made_at_ms", "seen_at_ms"];
const INVITATION = `id, kitchen, role, secret_hash AS "secretHash", made_by AS "madeBy", expires_at_ms AS "expiresAtMs"`;
const INVITATION_COLUMNS = ["id", "kitchen", "role", "secret_hash", "made_by", "expires_at_ms"];
const KITCHEN = `id, log, up_to AS "upTo", bytes`;
const ROW = "seq, id, device, content AS text";
const ROW_COLUMNS = ["kitchen", "seq", "id", "device", "content"];

/** Most rows that are read of a log at once. */
const MOST_ROWS_READ = 2_000;

/** The store of a server in the tables of a database: the same statements for every one. */
export class SqlHost implements HostStore {
  readonly #driver: SqlDriver;
  readonly #pushes: PushQueue;
  readonly calendars: SqlCalendars;

  constructor(driver: SqlDriver) {
    this.#driver = driver;
    this.#pushes = new PushQueue(driver, (act) => this.#write(act));
    this.calendars = new SqlCalendars({
      read: <Row>(text: string, ...values: readonly string[]) => this.#read(() => driver.all<Row>(text, ...values)),
      write: (act) => this.#write(act),
      hold: (sql, kitchen) => this.#hold(sql, kitchen),
    });
  }

  makeKitchen({ id, log }: Pick<HostedKitchen, "id" | "log">, keeper: HostedDevice) {
    return this.#write(async (sql) => {
      await sql.insert("kitchens", ["id", "log", "up_to", "bytes"], [[id, log, 0, 0]]);
      await addDevices(sql, [keeper]);
      return "done" as const;
    });
  }

  findKitchen(id: string) {
    return this.#first<HostedKitchen>(`SELECT ${KITCHEN} FROM kitchens WHERE id = ?`, id);
  }

  deleteKitchen(id: string) {
    return this.#write(async (sql) => {
      await deleteAll(sql, id);
      return "done" as const;
    });
  }

  forgetUnseen(sinceMs: number) {
    return this.#write(async (sql) => {
      const text = "SELECT kitchen FROM devices GROUP BY kitchen HAVING MAX(seen_at_ms) < ? ORDER BY kitchen";
      const unseen = await sql.all<{ kitchen: string }>(text, sinceMs);
      for (const { kitchen } of unseen) await deleteAll(sql, kitchen);
      return unseen.map(({ kitchen }) => kitchen);
    });
  }

  findDevice(kitchen: string, id: string) {
    return this.#first<HostedDevice>(`SELECT ${DEVICE} FROM devices WHERE kitchen = ? AND id = ?`, kitchen, id);
  }

  listDevices(kitchen: string) {
    const text = `SELECT ${DEVICE} FROM devices WHERE kitchen = ? ORDER BY made_at_ms, id`;
    return this.#read(() => this.#driver.all<HostedDevice>(text, kitchen));
  }

  noteSeen(kitchen: string, id: string, atMs: number) {
    return this.#write(async (sql) => {
      await sql.run("UPDATE devices SET seen_at_ms = ? WHERE kitchen = ? AND id = ?", atMs, kitchen, id);
      return "done" as const;
    });
  }

  removeDevice(kitchen: string, id: string) {
    return this.#changeDevice(kitchen, id, undefined, async (sql) => {
      await sql.run("DELETE FROM calendars WHERE kitchen = ? AND made_by = ?", kitchen, id);
      await sql.run("DELETE FROM devices WHERE kitchen = ? AND id = ?", kitchen, id);
    });
  }

  changeRole(kitchen: string, id: string, role: Role) {
    const text = "UPDATE devices SET role = ? WHERE kitchen = ? AND id = ?";
    return this.#changeDevice(kitchen, id, role, (sql) => sql.run(text, role, kitchen, id));
  }

  addInvitation({ id, kitchen, role, secretHash, madeBy, expiresAtMs }: HostedInvitation, nowMs: number) {
    return this.#write(async (sql) => {
      await sql.run("DELETE FROM invitations WHERE kitchen = ? AND expires_at_ms <= ?", kitchen, nowMs);
      await sql.insert("invitations", INVITATION_COLUMNS, [[id, kitchen, role, secretHash, madeBy, expiresAtMs]]);
      return "done" as const;
    });
  }

  findInvitation(id: string) {
    return this.#first<HostedInvitation>(`SELECT ${INVITATION} FROM invitations WHERE id = ?`, id);
  }

  listInvitations(kitchen: string, nowMs: number) {
    const text = `SELECT ${INVITATION} FROM invitations WHERE kitchen = ? AND expires_at_ms > ? ORDER BY expires_at_ms, id`;
    return this.#read(() => this.#driver.all<HostedInvitation>(text, kitchen, nowMs));
  }

  removeInvitation(kitchen: string, id: string) {
    return this.#write(async (sql) => {
      const gone = await sql.run("DELETE FROM invitations WHERE kitchen = ? AND id = ?", kitchen, id);
      return gone > 0 ? ("done" as const) : ("missing" as const);
    });
  }

  useInvitation(id: string, device: HostedDevice, nowMs: number) {
    return this.#write(async (sql) => {
      const used = await sql.run(
        "DELETE FROM invitations WHERE id = ? AND kitchen = ? AND expires_at_ms > ?",
        id,
        device.kitchen,
        nowMs,
      );
      if (used === 0) return "spent" as const;
      await addDevices(sql, [device]);
      return "done" as const;
    });
  }

  async claimWriter(kitchen: string, writer: string, device: string) {
    const text = "SELECT device AS owner FROM writers WHERE kitchen = ? AND writer = ?";
    const known = await this.#first<{ owner: string }>(text, kitchen, writer);
    if (known !== undefined) return known;
    return this.#write(async (sql) => {
      const claim = "INSERT INTO writers (kitchen, writer, device) VALUES (?, ?, ?) ON CONFLICT DO NOTHING";
      await sql.run(claim, kitchen, writer, device);
      return (await sql.all<{ owner: string }>(text, kitchen, writer))[0] as { owner: string };
    });
  }

  ownersOf(kitchen: string, writers: readonly string[]) {
    return this.#mapOf("SELECT writer AS id, device FROM writers", "writer", kitchen, writers);
  }

  sendersOf(kitchen: string, ids: readonly string[]) {
    return this.#mapOf("SELECT id, device FROM log_rows", "id", kitchen, ids);
  }

  append(push: Push): Promise<Pushed | StoreFault> {
    return this.#pushes.add(push);
  }

  readLog(kitchen: string, after: number, mostBytes: number): Promise<LogPage | StoreFault> {
    return this.#read(async () => {
      // The end is read first: rows after it may come meanwhile, never be missing before it.
      const ends = await this.#driver.all<HostedKitchen>(`SELECT ${KITCHEN} FROM kitchens WHERE id = ?`, kitchen);
      const text = `SELECT ${ROW} FROM log_rows WHERE kitchen = ? AND seq > ? ORDER BY seq LIMIT ${MOST_ROWS_READ}`;
      const found = await this.#driver.all<HostedRow>(text, kitchen, after);
      let bytes = 0;
      const rows = found.filter(({ text: { length } }, at) => {
        bytes += length;
        return at === 0 || bytes <= mostBytes;
      });
      return { rows, upTo: Math.max(ends[0]?.upTo ?? 0, rows.at(-1)?.seq ?? 0) };
    });
  }

  listIds(kitchen: string) {
    return this.#read(async () => {
      const rows = await this.#driver.all<{ id: string }>("SELECT id FROM log_rows WHERE kitchen = ?", kitchen);
      return rows.map(({ id }) => id);
    });
  }

  endsOf(kitchens: readonly string[]) {
    return this.#read(async () => {
      const text = `SELECT ${KITCHEN} FROM kitchens WHERE ${this.#driver.isOneOf("id")}`;
      const rows = await this.#driver.all<HostedKitchen>(text, kitchens);
      return new Map(rows.map(({ id, upTo }) => [id, upTo]));
    });
  }

  async *copyAll(): AsyncIterable<KitchenCopy | StoreFault> {
    const list = await this.#read(() => this.#driver.all<{ id: string }>("SELECT id FROM kitchens ORDER BY id"));
    if (isFault(list)) yield list;
    else
      for (const { id } of list) {
        const copy = await this.#read(() => this.#copy(id));
        if (copy !== undefined) yield copy;
      }
  }

  restore({ kitchen: { id }, devices, calendars, writers, rows }: KitchenCopy, log: string) {
    return this.#write(async (sql) => {
      await deleteAll(sql, id);
      const bytes = rows.reduce((sum, { text }) => sum + text.length, 0);
      await sql.insert("kitchens", ["id", "log", "up_to", "bytes"], [[id, log, rows.length, bytes]]);
      await addDevices(sql, devices);
      await addCalendars(sql, calendars);
      const claims = writers.map(([writer, device]) => [id, writer, device]);
      await sql.insert("writers", ["kitchen", "writer", "device"], claims);
      const lines = rows.map(({ id: row, device, text }, at) => [id, at + 1, row, device, text]);
      await sql.insert("log_rows", ROW_COLUMNS, lines);
      return "done" as const;
    });
  }

  ping() {
    return this.#read(async () => {
      await this.#driver.all("SELECT 1 AS one");
      return "done" as const;
    });
  }

  async close(): Promise<void> {
    await this.#pushes.rest();
    await this.#driver.close();
  }

  #changeDevice(kitchen: string, id: string, role: Role | undefined, change: (sql: Sql) => Promise<unknown>) {
    return this.#write(async (sql): Promise<Changed> => {
      // Whoever changes the devices of a kitchen holds the kitchen, so that two keepers can't remove each other.
      await this.#hold(sql, kitchen);
      const devices = await sql.all<HostedDevice>(`SELECT ${DEVICE} FROM devices WHERE kitchen = ?`, kitchen);
      const device = devices.find((each) => each.id === id);
      if (device === undefined) return "missing";
      const keepers = devices.filter((each) => each.role === "keeper");
      if (device.role === "keeper" && role !== "keeper" && keepers.length === 1) return "last-keeper";
      await change(sql);
      return "done";
    });
  }

  #hold(sql: Sql, kitchen: string): Promise<unknown> {
    return sql.all(`SELECT id FROM kitchens WHERE id = ?${this.#driver.forUpdate}`, kitchen);
  }

  async #copy(id: string): Promise<KitchenCopy | undefined> {
    const { all } = this.#driver;
    const [kitchen] = await all<HostedKitchen>(`SELECT ${KITCHEN} FROM kitchens WHERE id = ?`, id);
    if (kitchen === undefined) return undefined;
    const devices = await all<HostedDevice>(`SELECT ${DEVICE} FROM devices WHERE kitchen = ?`, id);
    const writers = await all<{ writer: string; device: string }>("SELECT * FROM writers WHERE kitchen = ?", id);
    const rows = await all<HostedRow>(`SELECT ${ROW} FROM log_rows WHERE kitchen = ? ORDER BY seq`, id);
    const calendars = await readCalendars({ all }, id);
    const claims = writers.map(({ writer, device }) => [writer, device] as const);
    return { kitchen, devices, calendars, writers: claims, rows };
  }

  #mapOf(select: string, column: string, kitchen: string, keys: readonly string[]) {
    return this.#read(async () => {
      const text = `${select} WHERE kitchen = ? AND ${this.#driver.isOneOf(column)}`;
      const rows = await this.#driver.all<{ id: string; device: string }>(text, kitchen, keys);
      return new Map(rows.map(({ id, device }) => [id, device]));
    });
  }

  #first<Row>(text: string, ...values: string[]): Promise<Row | undefined | StoreFault> {
    return this.#read(async () => (await this.#driver.all<Row>(text, ...values))[0]);
  }

  async #read<Given>(act: () => Promise<Given>): Promise<Given | StoreFault> {
    try {
      return await act();
    } catch (error) {
      const fault = this.#driver.faultOf(error);
      if (fault === undefined) throw error;
      return fault;
    }
  }

  #write<Given>(act: (sql: Sql) => Promise<Given>): Promise<Given | StoreFault> {
    return this.#read(() => this.#driver.transact(act));
  }
}

function addDevices(sql: Sql, devices: readonly HostedDevice[]): Promise<void> {
  return sql.insert(
    "devices",
    DEVICE_COLUMNS,
    devices.map(({ id, kitchen, name, role, secretHash, madeAtMs, seenAtMs }) => [
      id,
      kitchen,
      name,
      role,
      secretHash,
      madeAtMs,
      seenAtMs,
    ]),
  );
}

async function deleteAll(sql: Sql, kitchen: string): Promise<void> {
  for (const table of ["log_rows", "writers", "invitations", "calendars", "devices"])
    await sql.run(`DELETE FROM ${table} WHERE kitchen = ?`, kitchen);
  await sql.run("DELETE FROM kitchens WHERE id = ?", kitchen);
}
