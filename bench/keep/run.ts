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
import { measureInBrowser } from "./measureInBrowser.ts";

const HELP = `What keeping a kitchen costs, in milliseconds by the wall clock and of the processor.

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

/** What something took. On a machine that others keep busy the processor's time says more than the wall clock's. */
interface Took {
  readonly ms: number;
  /** Of all threads of the process; absent for what another process did. */
  readonly cpuMs?: number;
}

/** One figure, a median, with what it must not be above. */
interface Figure extends Took {
  readonly name: string;
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

async function measure(repeats: number, act: () => Promise<Took> | Took): Promise<Took> {
  const all: Took[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) all.push(await act());
  return middleOf(all);
}

function middleOf(all: readonly Took[]): Took {
  const cpu = all.flatMap(({ cpuMs }) => cpuMs ?? []);
  const ms = medianOf(all.map((each) => each.ms));
  return cpu.length === 0 ? { ms } : { ms, cpuMs: medianOf(cpu) };
}

function writeLife(count: number, seed: number): RecordEvent[] {
  const pen = new Pen({ device: "bench-1", nowMs: 1 }, 0, undefined);
  return makeLife(count, createRandomSource(seed), "lot").map((body) => pen.write(body)) as RecordEvent[];
}

/** Deriving the state of a kitchen from its events, and taking in one more. */
async function measureDerived(events: readonly RecordEvent[], repeats: number): Promise<Figure[]> {
  const derive = (list: readonly RecordEvent[]) => {
    const ledger = new RecordLedger(foods, list);
    if (ledger.state.lots.size === 0) throw new Error("nothing was derived");
    return ledger;
  };
  const all = await measure(repeats, () => timed(() => void derive(events)));
  const one = await measure(repeats, () => {
    const ledger = derive(events.slice(0, -1));
    return timed(() => {
      ledger.add(events.slice(-1));
      return void ledger.state;
    });
  });
  return [
    { name: `state of ${events.length} events`, ...all, mostMs: 50 },
    { name: "one event more", ...one, mostMs: 50 },
  ];
}

/** Opening the folder of a kitchen that holds them, the first time and again. */
async function measureOpened(events: readonly RecordEvent[], repeats: number): Promise<Figure[]> {
  const { kept, path } = await openNew("laptop");
  await kept.merge(events);
  await kept.close();
  const all: Took[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    const stop = startClocks();
    const again = await openAt(path, "laptop");
    if (again.events.state.lots.size === 0) throw new Error("nothing was read");
    all.push(stop());
    await again.close();
  }
  return [
    { name: `open ${events.length} events, first`, ...(all[0] as Took), mostMs: 300 },
    { name: `open ${events.length} events`, ...middleOf(all), mostMs: 300 },
  ];
}

async function measureBrowser(count: number, seed: number, repeats: number): Promise<Figure[]> {
  const times = await measureInBrowser(count, seed, repeats);
  return times.length === 0
    ? []
    : [{ name: `open ${count} events in Chromium, page just loaded`, ...middleOf(times), mostMs: 600 }];
}

/** Two devices that were apart for 2,000 changes each bring each other up to date. */
async function measureMerged(repeats: number, seed: number): Promise<Figure> {
  const took = await measure(repeats, async () => {
    const devices = [];
    for (const name of ["phone", "laptop"]) {
      const { kept } = await openNew(name);
      const life = makeLife(2_000, createRandomSource(seed + devices.length), name);
      for (let at = 0; at < life.length; at += 5) void kept.add(life.slice(at, at + 5));
      await kept.retry();
      devices.push(kept);
    }
    const [phone, laptop] = devices as [KeptKitchen, KeptKitchen];
    const merged = timed(() => {
      meet(phone, laptop);
      if (phone.events.state.lots.size !== laptop.events.state.lots.size) throw new Error("they do not agree");
    });
    for (const kept of devices) await kept.close();
    return merged;
  });
  return { name: "merge of two devices with 2,000 changes each", ...took, mostMs: 200 };
}

/** Starts the clocks; gives what stops them. */
function startClocks(): () => Took {
  const [started, cpu] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(cpu);
    return { ms: performance.now() - started, cpuMs: (user + system) / 1000 };
  };
}

function timed(act: () => void): Took {
  const stop = startClocks();
  act();
  return stop();
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
    ...(await measureBrowser(events, seed, repeats)),
    await measureMerged(repeats, seed),
  ];
  const agreed = await agree(histories, seed);
  rmSync(folder, { recursive: true, force: true });
  if (values.json) console.log(JSON.stringify({ seed, figures, histories: { agreed, seed } }, null, 2));
  else {
    for (const { name, ms, cpuMs, mostMs } of figures) {
      const processor = cpuMs === undefined ? "" : `, ${cpuMs.toFixed(1)} of the processor`;
      console.log(`${name}: ${ms.toFixed(1)} ms${processor} (at most ${mostMs})`);
    }
    console.log(`${agreed} random histories on three devices came to one state (seed ${seed})`);
  }
}
