import { statSync } from "node:fs";
import { openSqliteHost } from "@halfloaf/server/host";
import { ServerProcess } from "@halfloaf/server/testing/process";
import { Phone } from "./Phone.ts";
import { settleKitchen } from "./settle.ts";

/** Times in milliseconds. */
interface Spread {
  readonly count: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly worstMs: number;
}

/** How long ticks took, and what they cost. */
export interface TickCost {
  readonly devices: number;
  readonly seconds: number;
  /** From the tick to the server's word that it is on disk. */
  readonly kept: Spread;
  /** From the tick to each other phone of the kitchen. */
  readonly reached: Spread;
  readonly processorMsPerTick: number;
  readonly diskBytesPerTick: number;
}

const DEVICES = 4;

/** Seconds that they tick without being measured, until both processes have compiled what is used. */
const WARM_S = 5;

/** Lets so many devices, up to four in a kitchen, tick once a second each, at moments spread over the second. */
export async function measureTicks(folder: string, devices: number, seconds: number): Promise<TickCost> {
  const path = `${folder}/kitchens.sqlite`;
  const store = openSqliteHost(path);
  const members = [];
  while (members.length < devices) members.push(...(await settleKitchen(store, Math.min(DEVICES, devices))));
  await store.close();
  const server = await ServerProcess.start({ HALFLOAF_FOLDER: folder });
  const sentAt = new Map<string, number>();
  const [kept, reached]: [number[], number[]] = [[], []];
  const hear = (id: string) => {
    const sent = sentAt.get(id);
    if (sent !== undefined) reached.push(performance.now() - sent);
  };
  const phones = await Promise.all(members.slice(0, devices).map((member) => Phone.open(server.port, member, hear)));
  await tickAll(phones, WARM_S, (phone) => phone.tick(() => {}));
  await new Promise((resolve) => setTimeout(resolve, 1_000));
  const processorS = server.processorS;
  const bytes = diskBytes(path);
  await tickAll(phones, seconds, (phone) => {
    const sent = performance.now();
    sentAt.set(
      phone.tick(() => kept.push(performance.now() - sent)),
      sent,
    );
  });
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  const ticks = sentAt.size;
  const spent = server.processorS - processorS;
  for (const phone of phones) phone.close();
  await server.kill("SIGTERM");
  return {
    devices,
    seconds,
    kept: toSpread(kept, ticks),
    reached: toSpread(reached, ticks * (Math.min(DEVICES, devices) - 1)),
    processorMsPerTick: (spent * 1_000) / ticks,
    diskBytesPerTick: (diskBytes(path) - bytes) / ticks,
  };
}

async function tickAll(phones: readonly Phone[], seconds: number, tick: (phone: Phone) => void): Promise<void> {
  const started = performance.now();
  const turns = phones.length * seconds;
  for (let turn = 0; turn < turns; ) {
    const due = Math.min(turns, ((performance.now() - started) / 1_000) * phones.length);
    for (; turn < due; turn++) tick(phones[turn % phones.length] as Phone);
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
}

/** What was never answered counts as endless: a mean of those that came would hide it. */
function toSpread(times: readonly number[], expected: number): Spread {
  const all = [...times, ...Array(Math.max(0, expected - times.length)).fill(Number.POSITIVE_INFINITY)];
  all.sort((a, b) => a - b);
  const at = (share: number) => all[Math.min(all.length - 1, Math.floor(share * all.length))] ?? Number.NaN;
  return { count: times.length, p50Ms: at(0.5), p99Ms: at(0.99), worstMs: at(1) };
}

function diskBytes(path: string): number {
  return statSync(path).size;
}
