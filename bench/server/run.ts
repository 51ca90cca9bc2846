import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { createRandomSource } from "halfloaf/quantity";
import { type IdleCost, measureIdle } from "./measureIdle.ts";
import { type KillOutcome, measureKills, setUpOne, setUpTwo } from "./measureKills.ts";
import { measureTicks, type TickCost } from "./measureTicks.ts";

const HELP = `What a server bears, with its load on the same machine.

  npm run -s bench:server -- [--json] [--parts A,B] [--sockets N] [--devices N] [--seconds N] [--kills N] [--seed N]

  --parts A,B    of idle, ticks, pair, kills (all)
  --sockets N    sockets that do nothing (5000)
  --devices N    devices that tick once a second (500)
  --seconds N    how long they do (30)
  --kills N      kills of each set-up: one server on SQLite, two on PostgreSQL and Redis (200)
  --seed N       seed of what is killed when (1)
`;

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    parts: { type: "string", default: "idle,ticks,pair,kills" },
    sockets: { type: "string", default: "5000" },
    devices: { type: "string", default: "500" },
    seconds: { type: "string", default: "30" },
    kills: { type: "string", default: "200" },
    seed: { type: "string", default: "1" },
    help: { type: "boolean", default: false },
  },
});

/** One figure with what it must be below, or be. */
interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly most: number;
}

interface Told {
  readonly figures: Figure[];
  idle?: IdleCost;
  ticks?: TickCost;
  pair?: TickCost;
  readonly kills: (KillOutcome | string)[];
}

const root = mkdtempSync(join(tmpdir(), "halfloaf-bench-server-"));
let folders = 0;
function newFolder(): string {
  const folder = join(root, String(++folders));
  mkdirSync(folder);
  return folder;
}

async function measureAll(parts: readonly string[]): Promise<Told> {
  const told: Told = { figures: [], kills: [] };
  const seconds = Number(values.seconds);
  if (parts.includes("idle")) {
    const idle = await measureIdle(newFolder(), Number(values.sockets), 10);
    told.idle = idle;
    told.figures.push({
      name: `memory of ${idle.sockets} idle sockets`,
      value: idle.bytes / 1e9,
      unit: "GB",
      most: 1.2,
    });
  }
  if (parts.includes("ticks")) {
    const ticks = await measureTicks(newFolder(), Number(values.devices), seconds);
    told.ticks = ticks;
    const name = `of ${ticks.devices} devices ticking at 1 a second`;
    told.figures.push({ name: `kept, p99 ${name}`, value: ticks.kept.p99Ms, unit: "ms", most: 250 });
    told.figures.push({ name: `at the others, p99 ${name}`, value: ticks.reached.p99Ms, unit: "ms", most: 250 });
  }
  if (parts.includes("pair")) {
    const pair = await measureTicks(newFolder(), 2, seconds);
    told.pair = pair;
    told.figures.push({ name: "a tick at the other phone, worst", value: pair.reached.worstMs, unit: "ms", most: 150 });
  }
  if (parts.includes("kills")) await measureBoth(told);
  return told;
}

async function measureBoth(told: Told): Promise<void> {
  const random = createRandomSource(Number(values.seed));
  for (const setUp of [() => setUpOne(newFolder()), setUpTwo]) {
    const ready = await setUp();
    if (ready === undefined) {
      told.kills.push("skipped: PostgreSQL 15 and Redis are not on this machine");
      continue;
    }
    const outcome = await measureKills(ready, Number(values.kills), random);
    await ready.stop();
    told.kills.push(outcome);
    const name = `${outcome.setUp}, ${values.kills} kills`;
    told.figures.push({ name: `${name}: acknowledged rows lost`, value: outcome.lost, unit: "rows", most: 0 });
    told.figures.push({ name: `${name}: devices that disagree`, value: outcome.doAgree ? 0 : 1, unit: "", most: 0 });
  }
}

if (values.help) console.log(HELP);
else {
  const told = await measureAll(values.parts.split(","));
  rmSync(root, { recursive: true, force: true });
  const figures = told.figures.map((figure) => ({ ...figure, met: figure.value <= figure.most }));
  const machine = { cores: availableParallelism(), node: process.version };
  if (values.json) console.log(JSON.stringify({ machine, seed: Number(values.seed), ...told, figures }, null, 2));
  else
    for (const { name, value, unit, most, met } of figures)
      console.log(`${name}: ${value.toFixed(2)} ${unit} (at most ${most}, ${met ? "met" : "missed"})`);
}
