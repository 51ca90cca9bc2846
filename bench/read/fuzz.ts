import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type { FuzzNews } from "./fuzzWorker.ts";

const HELP = `bench:fuzz [--inputs N] [--seed N] [--only NUMBER] [--json]

  --inputs N     how many inputs, spread evenly over all readers (1000000)
  --seed N       another seed gives other inputs (1)
  --only NUMBER  reads the input of that number alone
  --json         JSON instead of lines

Ends with code 1 where a reader threw, took longer than 1 s, held more than 512 MB, touched a prototype, or passed on
markup or characters that are not seen.`;

const SILENCE_MS = 60_000;
const HEAP_MB = 512;

const { values } = parseArgs({
  options: {
    inputs: { type: "string", default: "1000000" },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});

if (values.help) console.log(HELP);
else run();

function run(): void {
  const only = values.only === undefined ? undefined : Number(values.only);
  const [from, to] = only === undefined ? [0, Number(values.inputs)] : [only, only + 1];
  const start = performance.now();
  // A process of its own, so that an input that hangs or fills the memory can be told and ended.
  const worker = fork(fileURLToPath(new URL("./fuzzWorker.ts", import.meta.url)), [values.seed, from, to].map(String), {
    execArgv: ["--import", "tsx", `--max-old-space-size=${HEAP_MB}`],
  });
  let last = from;
  let end: Extract<FuzzNews, { kind: "end" }> | undefined;
  let watch = setTimeout(giveUp, SILENCE_MS);
  function giveUp(): void {
    console.error(`hangs after input ${last}`);
    worker.kill("SIGKILL");
  }
  worker.on("message", (news: FuzzNews) => {
    clearTimeout(watch);
    if (news.kind === "end") end = news;
    else {
      last = news.number;
      watch = setTimeout(giveUp, SILENCE_MS);
      if (process.stderr.isTTY) process.stderr.write(`\r${last} of ${to}`);
    }
  });
  worker.on("close", (code) => {
    clearTimeout(watch);
    if (end === undefined) console.error(`ended with code ${code} after input ${last}`);
    else report(end, to - from, performance.now() - start);
    process.exitCode = end === undefined || end.breachCount > 0 ? 1 : 0;
  });
}

function report(
  { sums, breaches, breachCount, mostHeapBytes }: Extract<FuzzNews, { kind: "end" }>,
  inputs: number,
  ms: number,
): void {
  const round = (value: number) => Math.round(value * 100) / 100;
  const readers = Object.entries(sums).map(([reader, sum]) => ({
    reader,
    inputs: sum.inputs,
    meanMs: round(sum.totalMs / sum.inputs),
    worstMs: round(sum.worstMs),
    worstNumber: sum.worstNumber,
  }));
  const whole = {
    seed: values.seed,
    inputs,
    seconds: round(ms / 1000),
    mostHeapMb: round(mostHeapBytes / 2 ** 20),
    breaches: breachCount,
  };
  if (values.json) console.log(JSON.stringify({ ...whole, readers, first: breaches }, null, 2));
  else {
    console.log(JSON.stringify(whole));
    for (const reader of readers) console.log(JSON.stringify(reader));
    for (const breach of breaches) console.log(JSON.stringify(breach));
  }
}
