import type { MenuPlan } from "../plan.ts";
import type { MenuFood, MenuProblem, MenuSitting, MenuTrip } from "../problem.ts";
import { type LotTrace, traceLots } from "./traceLots.ts";

/**
 * The most litres that a plan takes in the fridge or in the freezer on any day. A lot takes room from the day it is there to
 * its last one, less what was cooked from it on days before; portions put by are in the freezer from their day on.
 */
export function fillCold(problem: MenuProblem, plan: MenuPlan, place: "fridge" | "freezer"): number {
  const kept = traceLots(problem, plan).filter(({ food }) => problem.foods[food]?.cold?.place === place);
  const litresOn = (day: number): number =>
    kept.reduce((litres, lot) => litres + litresOfLot(problem, plan, lot, day), 0) +
    (place === "freezer" ? litresPutBy(problem, plan, day) : 0);
  return Math.max(0, ...Array.from({ length: problem.days }, (_, day) => litresOn(day)));
}

function litresOfLot(problem: MenuProblem, plan: MenuPlan, trace: LotTrace, day: number): number {
  const { lot, food, massG, uses, lastDay } = trace;
  const trip = "stock" in lot ? undefined : (plan.purchases[lot.purchase]?.trip as number);
  const fromDay = trip === undefined ? 0 : (problem.trips[trip] as MenuTrip).day;
  if (day < fromDay || day > lastDay) return 0;
  const usedG = uses.reduce((sum, use) => (cookedOn(problem, plan, use.batch) < day ? sum + use.massG : sum), 0);
  return Math.max(0, massG - usedG) * ((problem.foods[food] as MenuFood).cold?.litresPerG ?? 0);
}

function cookedOn({ sittings }: MenuProblem, { batches }: MenuPlan, batch: number): number {
  return sittings[batches[batch]?.sittings[0] as number]?.day ?? 0;
}

function litresPutBy({ sittings, dishes }: MenuProblem, { batches }: MenuPlan, day: number): number {
  return batches.reduce((litres, batch) => {
    const boxes = batch.sittings.map((at) => sittings[at] as MenuSitting).filter((box) => box.putBy && box.day <= day);
    const portions = boxes.reduce((sum, box) => sum + box.portions, 0);
    return litres + portions * (dishes[batch.dish]?.putBy?.litres ?? 0);
  }, 0);
}
