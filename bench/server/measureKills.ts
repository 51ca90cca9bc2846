import { KeptKitchen } from "@halfloaf/keep";
import { KitchenSync, type Membership, type Socket, type SyncMark } from "@halfloaf/keep/sync";
import { openMemoryStore } from "@halfloaf/keep/testing/memory";
import { type HostStore, isFault, openPostgresHost, openSqliteHost } from "@halfloaf/server/host";
import { ServerProcess } from "@halfloaf/server/testing/process";
import { findPostgres, findRedis, startPostgres, startRedis } from "@halfloaf/server/testing/services";
import { toCanonicalText } from "halfloaf/kitchen/record";
import type { RandomSource } from "halfloaf/quantity";
import { WebSocket } from "ws";
import { settleKitchen } from "./settle.ts";

/** What came of devices that went on writing while what they write to was killed again and again. */
export interface KillOutcome {
  readonly setUp: string;
  readonly kills: Readonly<Record<string, number>>;
  /** Rows that were written, and those that the server told as kept. */
  readonly written: number;
  readonly acknowledged: number;
  /** Rows that were told as kept and are not in the store. */
  readonly lost: number;
  readonly doAgree: boolean;
}

/** What can be killed, and started again where it was. */
interface Victim {
  readonly name: string;
  kill(): Promise<void>;
  start(): Promise<void>;
}

interface SetUp {
  readonly name: string;
  readonly servers: readonly ServerProcess[];
  readonly victims: readonly Victim[];
  readonly members: readonly Membership[];
  /** Ids of all rows in the store. */
  listIds(): Promise<readonly string[]>;
  stop(): Promise<void>;
}

const DEVICES = 5;
const WRITE_MS = 200;

/** How long a victim that is alone lives at most before it is killed again, in milliseconds. */
const MOST_UP_MS = 4_000;

/** One server on SQLite. */
export async function setUpOne(folder: string): Promise<SetUp> {
  const open = () => openSqliteHost(`${folder}/kitchens.sqlite`);
  const members = await using(open(), (store) => settleKitchen(store, DEVICES));
  const server = await ServerProcess.start({ HALFLOAF_FOLDER: folder });
  return {
    name: "one server, SQLite",
    servers: [server],
    victims: [toVictim("server", server)],
    members,
    listIds: () => using(open(), (store) => listIds(store, members)),
    stop: () => server.kill("SIGTERM"),
  };
}

/** Two servers over PostgreSQL and Redis; undefined where they are not on this machine. */
export async function setUpTwo(): Promise<SetUp | undefined> {
  const [programs, program] = [findPostgres(), findRedis()];
  if (programs === undefined || program === undefined) return undefined;
  const [postgres, redis] = [await startPostgres(programs), await startRedis(program)];
  const open = () => openPostgresHost(postgres.url);
  const members = await using(await open(), (store) => settleKitchen(store, DEVICES));
  const environment = { DATABASE_URL: postgres.url, REDIS_URL: redis.url };
  const servers = [await ServerProcess.start(environment), await ServerProcess.start(environment)];
  return {
    name: "two servers, PostgreSQL and Redis",
    servers,
    victims: [
      ...servers.map((server) => toVictim("server", server)),
      { name: "Redis", kill: redis.kill, start: redis.start },
      { name: "PostgreSQL", kill: postgres.kill, start: postgres.start },
    ],
    members,
    listIds: async () => using(await open(), (store) => listIds(store, members)),
    stop: async () => {
      for (const server of servers) await server.kill("SIGTERM");
      await redis.stop();
      await postgres.stop();
    },
  };
}

/** Kills so many times what chance says, at a moment that chance says, while devices write; then looks what is there. */
export async function measureKills(setUp: SetUp, count: number, random: RandomSource): Promise<KillOutcome> {
  const acknowledged = new Set<string>();
  const writers = [];
  for (const [at, member] of setUp.members.entries())
    writers.push(await startWriter(member, at, setUp.servers, acknowledged));
  const kills: Record<string, number> = {};
  const starting = new Map<Victim, Promise<void>>();
  for (let kill = 0; kill < count; kill++) {
    // Others may be starting again meanwhile.
    const victim = setUp.victims[Math.floor(random() * setUp.victims.length)] as Victim;
    await starting.get(victim);
    await wait((random() * MOST_UP_MS) / setUp.victims.length);
    await victim.kill();
    kills[victim.name] = (kills[victim.name] ?? 0) + 1;
    if ((kill + 1) % 20 === 0)
      console.error(`${setUp.name}: ${kill + 1} kills, ${acknowledged.size} rows acknowledged`);
    const start = wait(random() * 200).then(() => victim.start());
    starting.set(
      victim,
      start.then(() => void starting.delete(victim)),
    );
  }
  await Promise.all(starting.values());
  for (const { stopWriting } of writers) stopWriting();
  const told = await agree(writers.map(({ kept, sync }) => ({ kept, sync })));
  const there = new Set(await setUp.listIds());
  for (const { sync } of writers) sync.stop();
  return {
    setUp: setUp.name,
    kills,
    written: told.rows,
    acknowledged: acknowledged.size,
    lost: [...acknowledged].filter((id) => !there.has(id)).length,
    doAgree: told.doAgree && told.rows === there.size,
  };
}

/** A whole device that adds a row every few milliseconds and goes to another server whenever its own is gone. */
async function startWriter(
  member: Membership,
  at: number,
  servers: readonly ServerProcess[],
  acknowledged: Set<string>,
): Promise<{ kept: KeptKitchen; sync: KitchenSync; stopWriting(): void }> {
  const kept = await KeptKitchen.open(openMemoryStore(), { foods: new Map(), device: `d${at}` });
  if ("ok" in kept) throw new Error(kept.reason);
  let [mark, turn, count]: [SyncMark | undefined, number, number] = [undefined, at, 0];
  const memory = {
    read: () => mark,
    write: (value: SyncMark) => {
      mark = value;
    },
  };
  const openSocket = () => watchAnswers(servers[turn++ % servers.length]?.port ?? 0, acknowledged);
  const sync = new KitchenSync(kept, { ...member, server: "http://any" }, { openSocket, memory });
  sync.start();
  await sync.settled();
  const timer = setInterval(() => {
    const body = { kind: "bought" as const, on: "2026-03-02", food: "oats-rolled", place: "dry-store" as const };
    void kept.add([{ ...body, lot: `lot-${at}-${++count}`, massG: 500, costMinor: 85 }]);
  }, WRITE_MS);
  return { kept, sync, stopWriting: () => clearInterval(timer) };
}

/** A socket that notes which rows were told as kept, before the device hears of it. */
function watchAnswers(port: number, acknowledged: Set<string>): Socket {
  const socket = new WebSocket(`ws://127.0.0.1:${port}/sync`, { perMessageDeflate: false });
  const pushed = new Map<number, readonly { id: string }[]>();
  socket.on("message", (data) => {
    const message = JSON.parse(data.toString()) as { say: string; ref: number; refused: unknown[] };
    if (message.say !== "answer") return;
    if (message.refused.length > 0) throw new Error(JSON.stringify(message.refused));
    for (const { id } of pushed.get(message.ref) ?? []) acknowledged.add(id);
  });
  const send = socket.send.bind(socket);
  socket.send = (text: string) => {
    const message = JSON.parse(text) as { say: string; ref: number; rows: { id: string }[] };
    if (message.say === "push") pushed.set(message.ref, message.rows);
    send(text);
  };
  return socket as unknown as Socket;
}

/** Waits until all devices are together and say the same, a minute at most. */
async function agree(devices: readonly { readonly kept: KeptKitchen; readonly sync: KitchenSync }[]) {
  const tell = (kept: KeptKitchen) => toCanonicalText([kept.rows(), [...kept.events.state.lots]]);
  for (let tries = 0; tries < 120; tries++) {
    await wait(500);
    if (devices.some(({ sync: { view } }) => view.state.kind !== "together" || view.unsent > 0)) continue;
    if (new Set(devices.map(({ kept }) => tell(kept))).size === 1) break;
  }
  const doAgree = new Set(devices.map(({ kept }) => tell(kept))).size === 1;
  return { doAgree, rows: devices[0]?.kept.rows().length ?? 0 };
}

function toVictim(name: string, server: ServerProcess): Victim {
  return { name, kill: () => server.kill(), start: () => server.start() };
}

async function listIds(store: HostStore, [member]: readonly Membership[]): Promise<readonly string[]> {
  const ids = await store.listIds(member?.kitchen ?? "");
  if (isFault(ids)) throw new Error(ids.detail);
  return ids;
}

async function using<Given>(store: HostStore, act: (store: HostStore) => Promise<Given>): Promise<Given> {
  const given = await act(store);
  await store.close();
  return given;
}

function wait(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
