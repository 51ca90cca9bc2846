import { parseArgs } from "node:util";
import { useProcessorClock } from "../menu/useProcessorClock.ts";
import { compareMeals } from "./compareMeals.ts";
import { comparePeers, type PeerComparison } from "./comparePeers.ts";
import { loadPeers } from "./loadPeers.ts";
import { runMeal, sumUpMeals } from "./runMeals.ts";
import { runRetime } from "./runRetime.ts";
import { runOurs, runSet } from "./runSet.ts";
import { loadTrial } from "./trial.ts";

const HELP = `bench:work [--set DIR ...] [--limit SECONDS] [--meals N] [--meal-limit SECONDS] [--trial DIR]
           [--retime N] [--peers highs,minizinc] [--peer-limit SECONDS] [--sample N] [--minizinc DIR] [--clock wall] [--json]

  --set DIR      a folder of .sm or .SCH project files with their optimum.csv; may be repeated
  --limit        seconds for each project (10)
  --meals        number of made-up meals (70), and as many crowded ones; 0 = none
  --meal-limit   seconds for each meal (2)
  --retime N     cookings of two starter dishes whose rest is timed anew after a late step (60); 0 = none
  --trial DIR    a folder with an earlier trial solver to run on the same instances
  --peers        other solvers to run on a sample of each set of .sm files: highs, minizinc
  --peer-limit   seconds for each project, of ours and of each peer (10)
  --sample N     projects of each set that the peers get, spread over it (24)
  --minizinc DIR a folder whose node_modules hold the package minizinc; else those of this repository
  --clock        wall, or processor: the time this process has kept processors busy (peers in threads of their own are then
                 left out)
  --json         JSON instead of lines`;

const { values } = parseArgs({
  options: {
    set: { type: "string", multiple: true, default: [] },
    limit: { type: "string", default: "10" },
    meals: { type: "string", default: "70" },
    "meal-limit": { type: "string", default: "2" },
    retime: { type: "string", default: "60" },
    trial: { type: "string" },
    peers: { type: "string", default: "" },
    "peer-limit": { type: "string", default: "10" },
    sample: { type: "string", default: "24" },
    minizinc: { type: "string" },
    clock: { type: "string", default: "wall" },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});

if (values.help) {
  console.log(HELP);
} else {
  const report = await measure();
  if (values.json) console.log(JSON.stringify(report, null, 2));
  else
    for (const line of [...report.sets, ...report.peers, ...report.meals, ...report.retimed])
      console.log(JSON.stringify(line));
  const faults = [
    ...report.sets.flatMap(({ ours }) => ours.contradictions),
    ...report.peers.flatMap(({ ours, peers }) =>
      [ours, ...Object.values(peers)].flatMap((each) => each.contradictions),
    ),
    ...report.meals.flatMap(({ ours }) => Array(ours.faults).fill(0)),
  ];
  process.exitCode = faults.length === 0 ? 0 : 1;
}

async function measure() {
  const { clock } = values;
  if (clock === "processor") useProcessorClock();
  const trial = values.trial === undefined ? undefined : await loadTrial(values.trial);
  const limitMs = 1000 * Number(values.limit);
  const mealLimitMs = 1000 * Number(values["meal-limit"]);
  const sets = values.set.map((folder) => {
    const ours = runSet(folder, limitMs, runOurs);
    return { ours, ...(trial ? { trial: runSet(folder, limitMs, trial.solveProject) } : {}) };
  });
  const peers = await measurePeers();
  const seeds = Array.from({ length: Number(values.meals) }, (_, seed) => seed);
  if (seeds.length > 0) runMeal(1, false, mealLimitMs);
  const meals = [false, true].flatMap((isCrowded) => {
    if (seeds.length === 0) return [];
    const runs = seeds.map((seed) => runMeal(seed, isCrowded, mealLimitMs));
    const other = trial ? { trial: compareMeals(trial, runs, mealLimitMs) } : {};
    return [{ kind: isCrowded ? "crowded meals" : "meals", ours: sumUpMeals(runs), ...other }];
  });
  const retimed = Number(values.retime) > 0 ? [runRetime(Number(values.retime))] : [];
  return { clock, sets, peers, meals, retimed };
}

async function measurePeers() {
  const names = values.peers.split(",").filter((name) => name !== "");
  const { peers, messages } = await loadPeers(names, values.minizinc);
  for (const message of messages) console.error(message);
  const compared: PeerComparison[] = [];
  for (const folder of peers.length > 0 ? values.set : []) {
    const comparison = await comparePeers(folder, peers, 1000 * Number(values["peer-limit"]), Number(values.sample));
    if (comparison) compared.push(comparison);
    else console.error(`${folder} has maximal lags: its projects are left out of what the peers get`);
  }
  for (const { close } of peers) await close();
  return compared;
}
