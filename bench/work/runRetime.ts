import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import {
  type Happening,
  happenedAsPlanned,
  type Kitchen,
  parseKitchen,
  parseTables,
  retime,
  sittingKitchen,
  solveCooking,
  stopAfter,
  type Tables,
  type TimedCooking,
  toWorkProblem,
} from "halfloaf/kitchen";
import { maximumOf, medianOf } from "./statistics.ts";

/** Questions of the search after which it gives what it has, as the app asks. */
const MOST_QUESTIONS = 200;
/** Where in each cooking a step is late, and by how many minutes. */
const MOMENTS = [0.25, 0.5, 0.75];
const LATE_MINUTES = 5;

/** The rests of cookings of two starter dishes, timed anew after a late step. */
export interface RetimeReport {
  readonly rests: number;
  readonly medianMs: number;
  readonly greatestMs: number;
  readonly within50Ms: number;
  /** Share for which it is proven that nothing is served earlier. */
  readonly proven: number;
}

/** Times the rests of so many cookings of two starter dishes in the demo kitchens, the pairs spread over all dishes. */
export function runRetime(cookings: number): RetimeReport {
  const tables = readTables();
  const kitchens = loadDemoKitchens().flatMap(({ content }) => {
    const parsed = parseKitchen(content);
    return parsed.ok ? [parsed.value] : [];
  });
  const timed = Array.from({ length: cookings }, (_, k) =>
    cookPair(k, kitchens[k % kitchens.length] as Kitchen, tables),
  );
  const rests = timed.flatMap((each) => (each === undefined ? [] : MOMENTS.map((share) => timeRest(each, share))));
  const milliseconds = rests.map(({ ms }) => ms);
  return {
    rests: rests.length,
    medianMs: medianOf(milliseconds),
    greatestMs: maximumOf(milliseconds),
    within50Ms: milliseconds.filter((ms) => ms <= 50).length / rests.length,
    proven: rests.filter(({ isProven }) => isProven).length / rests.length,
  };
}

function readTables(): Tables {
  const parsed = parseTables(loadStarterTables());
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return parsed.value;
}

/** Undefined where a kitchen lacks the kit. */
function cookPair(k: number, kitchen: Kitchen, tables: Tables): TimedCooking | undefined {
  const { dishes } = tables;
  const pair = [dishes[(k * 29) % dishes.length], dishes[(k * 53 + 17) % dishes.length]];
  const wish = pair.flatMap((dish) => (dish === undefined ? [] : [{ dish, portions: dish.portions }]));
  const stated = toWorkProblem({ ...sittingKitchen(kitchen, tables), dishes: wish });
  if (!stated.ok) return undefined;
  const outcome = solveCooking(stated.cooking, { shouldStop: stopAfter(4000) });
  return outcome.kind === "timed" ? outcome.timed : undefined;
}

/** All went as planned up to a moment, but that what goes on then is late. */
function timeRest(timed: TimedCooking, share: number): { readonly ms: number; readonly isProven: boolean } {
  const now = Math.round(timed.plan.serveMinutes * share);
  const happened = happenedAsPlanned(timed, now).map((each): Happening => {
    if (each.kind !== "step" || each.doneMinutes !== undefined) return each;
    const end = each.begunMinutes + (timed.cooking.problem.steps[each.step]?.minutes as number);
    return { ...each, leftMinutes: end - now + LATE_MINUTES };
  });
  const began = performance.now();
  const again = retime(timed, happened, now, stopAfter(MOST_QUESTIONS));
  return { ms: performance.now() - began, isProven: again.timed.isProven };
}
