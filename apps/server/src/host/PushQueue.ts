import type { StoreFault } from "@halfloaf/keep";
import { type HostedDevice, type HostedKitchen, isFault, type Push, type Pushed } from "./HostStore.ts";
import type { Sql, SqlDriver, SqlValue } from "./SqlDriver.ts";
import { settleActs } from "./settleActs.ts";

/** Most pushes that reach the disk together. */
const MOST_TOGETHER = 200;

interface Waiting {
  readonly push: Push;
  readonly tell: (pushed: Pushed | StoreFault) => void;
}

/** A log while pushes to it are settled. */
interface OpenLog {
  upTo: number;
  bytes: number;
  readonly standing: Map<string, string>;
}

/** Pushes that come at the same time reach the disk together, since each way to the disk takes milliseconds. */
export class PushQueue {
  readonly #driver: SqlDriver;
  readonly #write: <Given>(act: (sql: Sql) => Promise<Given>) => Promise<Given | StoreFault>;
  readonly #waiting: Waiting[] = [];
  readonly #rested: (() => void)[] = [];
  #underWay = 0;
  #isAwaited = false;

  constructor(driver: SqlDriver, write: <Given>(act: (sql: Sql) => Promise<Given>) => Promise<Given | StoreFault>) {
    this.#driver = driver;
    this.#write = write;
  }

  add(push: Push): Promise<Pushed | StoreFault> {
    return new Promise((tell) => {
      this.#waiting.push({ push, tell });
      this.#await();
    });
  }

  /** Waits until nothing is under way. */
  rest(): Promise<void> {
    return new Promise((done) => {
      this.#rested.push(done);
      this.#await();
    });
  }

  #await(): void {
    if (this.#isAwaited) return;
    this.#isAwaited = true;
    setImmediate(() => {
      this.#isAwaited = false;
      while (this.#underWay < this.#driver.lanes && this.#waiting.length > 0) void this.#bringToDisk();
      if (this.#underWay === 0) for (const done of this.#rested.splice(0)) done();
    });
  }

  async #bringToDisk(): Promise<void> {
    const together = this.#waiting.splice(0, MOST_TOGETHER);
    this.#underWay++;
    try {
      const outcomes = await this.#write((sql) => this.#appendAll(sql, together));
      for (const [at, { tell }] of together.entries()) tell(isFault(outcomes) ? outcomes : (outcomes[at] as Pushed));
    } finally {
      this.#underWay--;
      this.#await();
    }
  }

  async #appendAll(sql: Sql, together: readonly Waiting[]): Promise<Pushed[]> {
    const logs = await this.#openLogs(sql, together);
    const text = `SELECT id, kitchen FROM devices WHERE ${this.#driver.isOnePair("kitchen", "id")}`;
    const pairs = together.map(({ push }) => `${push.kitchen}/${push.device}`);
    const senders = await sql.all<HostedDevice>(text, pairs);
    const known = new Set(senders.map(({ id, kitchen }) => `${kitchen}/${id}`));
    const lines: SqlValue[][] = [];
    const pushed = together.map(({ push }): Pushed => {
      const log = logs.get(push.kitchen);
      if (log === undefined || !known.has(`${push.kitchen}/${push.device}`)) return { kind: "gone" };
      const { fresh, bytes, taken, over } = settleActs(push, log, log.standing);
      log.upTo += fresh.length;
      log.bytes += bytes;
      for (const { seq, id, device, text: content } of fresh) {
        log.standing.set(id, content);
        lines.push([push.kitchen, seq, id, device, content]);
      }
      return { kind: "kept", fresh, taken, over };
    });
    await sql.insert("log_rows", ["kitchen", "seq", "id", "device", "content"], lines);
    const touched = new Set(lines.map(([kitchen]) => String(kitchen)));
    for (const id of [...touched].sort()) {
      const { upTo, bytes } = logs.get(id) as OpenLog;
      await sql.run("UPDATE kitchens SET up_to = ?, bytes = ? WHERE id = ?", upTo, bytes, id);
    }
    return pushed;
  }

  /** Holds the logs, always in one order so that no two transactions wait for each other, and what stands there already. */
  async #openLogs(sql: Sql, together: readonly Waiting[]): Promise<Map<string, OpenLog>> {
    const kitchens = [...new Set(together.map(({ push }) => push.kitchen))];
    const { forUpdate, isOneOf, isOnePair } = this.#driver;
    const held = `SELECT id, log, up_to AS "upTo", bytes FROM kitchens WHERE ${isOneOf("id")} ORDER BY id${forUpdate}`;
    const logs = new Map<string, OpenLog>();
    for (const { id, upTo, bytes } of await sql.all<HostedKitchen>(held, kitchens))
      logs.set(id, { upTo, bytes, standing: new Map() });
    const pairs = together.flatMap(({ push }) => push.acts.flat().map(({ id }) => `${push.kitchen}/${id}`));
    const text = `SELECT kitchen, id, content FROM log_rows WHERE ${isOnePair("kitchen", "id")}`;
    for (const row of await sql.all<{ kitchen: string; id: string; content: string }>(text, pairs))
      logs.get(row.kitchen)?.standing.set(row.id, row.content);
    return logs;
  }
}
