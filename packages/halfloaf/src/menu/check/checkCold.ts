import type { MenuProblem } from "../problem.ts";
import { dayOf, type LotStory } from "./openLots.ts";
import { exceeds, type PlanFault, showNumber } from "./PlanFault.ts";
import type { ReadPlan } from "./readPlan.ts";

/**
 * On which days the fridge or the freezer is too full. A lot takes room from the day it is there; a gram leaves at
 * the end of the day it is used, and whatever is left leaves at the end of the lot's last day. Portions put by are in the
 * freezer from their day on.
 */
export function checkCold(problem: MenuProblem, plan: ReadPlan, lots: readonly LotStory[]): PlanFault[] {
  const { fridgeLitres, freezerLitres } = problem.limits;
  return [
    ...checkPlace(problem, lots, () => 0, "fridge", "fridgeLitres", fridgeLitres),
    ...checkPlace(problem, lots, (day) => sumPutBy(plan, day), "freezer", "freezerLitres", freezerLitres),
  ];
}

function checkPlace(
  problem: MenuProblem,
  lots: readonly LotStory[],
  putByLitres: (day: number) => number,
  place: "fridge" | "freezer",
  limit: "fridgeLitres" | "freezerLitres",
  mostLitres: number | undefined,
): PlanFault[] {
  if (mostLitres === undefined) return [];
  const faults: PlanFault[] = [];
  for (let day = 0; day < problem.days; day++) {
    let litres = putByLitres(day);
    for (const lot of lots) {
      if (lot.food.cold?.place === place) litres += weighOnDay(lot, day) * lot.food.cold.litresPerG;
    }
    if (!exceeds(litres, mostLitres)) continue;
    const expected = `at most ${showNumber(mostLitres)} litres on day ${day}`;
    faults.push({ code: place, path: ["limits", limit], expected, received: `${showNumber(litres)} litres` });
  }
  return faults;
}

/** Litres of the portions put by up to a day. */
function sumPutBy({ batches }: ReadPlan, day: number): number {
  return batches.reduce((litres, { dish, fresh, leftovers }) => {
    const boxes = [fresh, ...leftovers].filter(({ sitting }) => sitting.putBy && sitting.day <= day);
    return litres + boxes.reduce((sum, { sitting }) => sum + sitting.portions * (dish.putBy?.litres ?? 0), 0);
  }, 0);
}

/** The most that is there of a lot on a day (g). */
function weighOnDay(lot: LotStory, day: number): number {
  if (day < lot.fromDay || day > lot.lastDay) return 0;
  const usedBeforeG = lot.uses.reduce((sum, { batch, massG }) => (batch && dayOf(batch) < day ? sum + massG : sum), 0);
  return Math.max(0, lot.massG - usedBeforeG);
}
