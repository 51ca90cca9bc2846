import type { MenuProblem } from "../problem.ts";
import { exceeds, type PlanFault, showNumber } from "./PlanFault.ts";
import type { ReadBatch, ReadPlan, Serving } from "./readPlan.ts";
import { readTogether } from "./readTogether.ts";

/** What is wrong with each cooking and each serving taken by itself. */
export function checkBatches(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  return [
    ...plan.batches.flatMap((batch) => [
      ...checkCooking(problem, batch),
      ...[batch.fresh, ...batch.leftovers].flatMap((serving) => checkServing(batch, serving)),
      ...batch.leftovers.flatMap((serving) => checkLeftover(batch, serving)),
    ]),
    ...checkCookedTwice(plan),
    ...checkTogether(problem, plan),
  ];
}

function checkCooking(problem: MenuProblem, batch: ReadBatch): PlanFault[] {
  const { at, dish, fresh, portions } = batch;
  const faults: PlanFault[] = [];
  if (dish.needsHeat && !fresh.sitting.heat) {
    const path = ["batches", at, "sittings", fresh.at];
    faults.push({ code: "heat", path, expected: "a place where something can be heated", received: "none" });
  }
  const elapsed = dish.elapsed.fixed + dish.elapsed.perPortion * portions;
  if (exceeds(elapsed, fresh.sitting.minutes)) {
    faults.push({
      code: "elapsed",
      path: ["batches", at],
      expected: `at most ${showNumber(fresh.sitting.minutes)} minutes`,
      received: `${showNumber(elapsed)} minutes`,
    });
  }
  const most = problem.limits.batchPortions;
  if (exceeds(portions, most)) {
    faults.push({
      code: "batch-size",
      path: ["batches", at],
      expected: `at most ${showNumber(most)} portions`,
      received: `${showNumber(portions)} portions`,
    });
  }
  return faults;
}

/** What every serving asks for, fresh or not. */
function checkServing(batch: ReadBatch, serving: Serving): PlanFault[] {
  const { dish, dishIndex } = batch;
  const { sitting } = serving;
  const path = ["batches", batch.at, "sittings", serving.at];
  const faults: PlanFault[] = [];
  if (!sitting.dishes.includes(dishIndex)) {
    faults.push({ code: "dish-unfit", path, expected: "a dish of the sitting", received: `dish ${dishIndex}` });
  }
  if (sitting.packed && !(dish.travels && dish.servedCold)) {
    const received = dish.travels ? "a dish that is not eaten cold" : "a dish that does not travel";
    faults.push({ code: "packed", path, expected: "a dish that travels and is eaten cold", received });
  }
  return faults;
}

function checkLeftover(batch: ReadBatch, serving: Serving): PlanFault[] {
  const { dish, fresh } = batch;
  const { sitting } = serving;
  const path = ["batches", batch.at, "sittings", serving.at];
  const faults: PlanFault[] = [];
  // On a packed sitting a dish that is not eaten cold is already a fault of its own.
  if (!dish.servedCold && !sitting.heat && !sitting.packed) {
    faults.push({ code: "leftover-cold", path, expected: "a dish that is eaten cold", received: "one that is not" });
  }
  const lastDay = fresh.sitting.day + dish.keepsDays;
  if (sitting.day > lastDay) {
    faults.push({
      code: "keeps",
      path,
      expected: `served on day ${lastDay} at the latest`,
      received: `day ${sitting.day}`,
    });
  }
  return faults;
}

function checkCookedTwice({ batches }: ReadPlan): PlanFault[] {
  return batches.flatMap((batch, position): PlanFault[] => {
    const { day } = batch.fresh.sitting;
    const isSame = (other: ReadBatch): boolean =>
      other.dishIndex === batch.dishIndex && other.fresh.sitting.day === day;
    const first = batches.findIndex(isSame);
    if (first === position) return [];
    const received = `dish ${batch.dishIndex} again on day ${day}`;
    return [{ code: "cooked-twice", path: ["batches", batch.at], expected: "each dish once a day", received }];
  });
}

/** What is cooked at once is done within the fewest minutes at hand of the sittings it is cooked for. */
function checkTogether(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  return readTogether(problem, plan).flatMap(({ batches, elapsedMinutes }): PlanFault[] => {
    const atHand = Math.min(...batches.map(({ fresh }) => fresh.sitting.minutes));
    if (!exceeds(elapsedMinutes, atHand)) return [];
    const expected = `at most ${showNumber(atHand)} minutes`;
    const received = `${showNumber(elapsedMinutes)} minutes`;
    return [{ code: "elapsed", path: ["batches", ...batches.map(({ at }) => at)], expected, received }];
  });
}
