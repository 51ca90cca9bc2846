import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import type { KeptKitchen } from "@halfloaf/keep";
import { openKitchenFolder } from "@halfloaf/keep/node";
import { converge, deeds, meet } from "@halfloaf/keep/testing";
import fc from "fast-check";
import { Pen, type RecordEvent, RecordLedger } from "halfloaf/kitchen/record";
import { createRandomSource } from "halfloaf/quantity";
import { medianOf } from "../work/statistics.ts";
import { makeLife } from "./makeLife.ts";

const HELP = `What keeping a kitchen costs, in milliseconds.

  npm run -s bench:keep -- [--json] [--events N] [--repeats N] [--histories N] [--seed N]

  --events N     events of the kitchen that is derived and opened (20000)
  --repeats N    how often each is measured; medians are told (7)
  --histories N  random histories on three devices that must come to one state (10000)
  --seed N       seed of the life and of the histories (1)
`;

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    events: { type: "string", default: "20000" },
    repeats: { type: "string", default: "7" },
    histories: { type: "string", default: "10000" },
    seed: { type: "string", default: "1" },
    help: { type: "boolean", default: false },
  },
});

/** One figure with what it must not be above. */
interface Figure {
  readonly name: string;
  readonly ms: number;
  readonly mostMs: number;
}

const folder = mkdtempSync(join(tmpdir(), "halfloaf-bench-keep-"));
let made = 0;
const foods = new Map();

async function openNew(device: string): Promise<{ readonly kept: KeptKitchen; readonly path: string }> {
  const path = join(folder, `kitchen-${++made}`);
  return { kept: await openAt(path, device), path };
}

async function openAt(path: string, device: string): Promise<KeptKitchen> {
  const opened = await openKitchenFolder(path, { foods, device });
  if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
  return opened.kept;
}

async function measure(repeats: number, act: () => Promise<number> | number): Promise<number> {
  const times: number[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) times.push(await act());
  return medianOf(times);
}

function writeLife(count: number, seed: number): RecordEvent[] {
  const pen = new Pen({ device: "bench-1", nowMs: 1 }, 0, undefined);
  return makeLife(count, createRandomSource(seed), "lot").map((body) => pen.write(body)) as RecordEvent[];
}

/** Deriving the state of a kitchen from its events, and taking in one more. */
async function measureDerived(events: readonly RecordEvent[], repeats: number): Promise<Figure[]> {
  const from = (list: readonly RecordEvent[]) => {
    const ledger = new RecordLedger(foods, list);
    return { ledger, lots: ledger.state.lots.size };
  };
  const derived = await measure(repeats, () => timed(() => void from(events)));
  const one = await measure(repeats, () => {
    const { ledger } = from(events.slice(0, -1));
    return timed(() => {
      ledger.add(events.slice(-1));
      return void ledger.state;
    });
  });
  return [
    { name: `state of ${events.length} events`, ms: derived, mostMs: 50 },
    { name: "one event more", ms: one, mostMs: 50 },
  ];
}

/** Opening the folder of a kitchen that holds them, the first time and again. */
async function measureOpened(events: readonly RecordEvent[], repeats: number): Promise<Figure[]> {
  const { kept, path } = await openNew("laptop");
  await kept.merge(events);
  await kept.close();
  const times: number[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    const started = performance.now();
    const again = await openAt(path, "laptop");
    if (again.events.state.lots.size === 0) throw new Error("nothing was read");
    times.push(performance.now() - started);
    await again.close();
  }
  return [
    { name: `open ${events.length} events, first`, ms: times[0] ?? Number.NaN, mostMs: 300 },
    { name: `open ${events.length} events`, ms: medianOf(times), mostMs: 300 },
  ];
}

/** Two devices that were apart for 2,000 changes each bring each other up to date. */
async function measureMerged(repeats: number, seed: number): Promise<Figure> {
  const ms = await measure(repeats, async () => {
    const devices = [];
    for (const name of ["phone", "laptop"]) {
      const { kept } = await openNew(name);
      const life = makeLife(2_000, createRandomSource(seed + devices.length), name);
      for (let at = 0; at < life.length; at += 5) void kept.add(life.slice(at, at + 5));
      await kept.retry();
      devices.push(kept);
    }
    const [phone, laptop] = devices as [KeptKitchen, KeptKitchen];
    const took = timed(() => {
      meet(phone, laptop);
      if (phone.events.state.lots.size !== laptop.events.state.lots.size) throw new Error("they do not agree");
    });
    for (const kept of devices) await kept.close();
    return took;
  });
  return { name: "merge of two devices with 2,000 changes each", ms, mostMs: 200 };
}

function timed(act: () => void): number {
  const started = performance.now();
  act();
  return performance.now() - started;
}

async function agree(numRuns: number, seed: number): Promise<number> {
  await fc.assert(fc.asyncProperty(deeds, converge), { numRuns, seed, endOnFailure: true });
  return numRuns;
}

if (values.help) console.log(HELP);
else {
  const [events, repeats, histories, seed] = [values.events, values.repeats, values.histories, values.seed].map(
    Number,
  ) as [number, number, number, number];
  const life = writeLife(events, seed);
  const figures = [
    ...(await measureDerived(life, repeats)),
    ...(await measureOpened(life, repeats)),
    await measureMerged(repeats, seed),
  ];
  const agreed = await agree(histories, seed);
  rmSync(folder, { recursive: true, force: true });
  if (values.json) console.log(JSON.stringify({ seed, figures, histories: { agreed, seed } }, null, 2));
  else {
    for (const { name, ms, mostMs } of figures) console.log(`${name}: ${ms.toFixed(1)} ms (at most ${mostMs})`);
    console.log(`${agreed} random histories on three devices came to one state (seed ${seed})`);
  }
}
