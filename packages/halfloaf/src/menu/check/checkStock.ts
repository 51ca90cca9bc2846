import type { MenuProblem } from "../problem.ts";
import { dayOf, type LotStory } from "./openLots.ts";
import { exceedsMass, MASS_SLACK_G, type PlanFault, showNumber } from "./PlanFault.ts";
import type { ReadBatch, ReadPlan, ReadUse } from "./readPlan.ts";

/** What is wrong with how lots feed batches: too little, too much, too early, too late, left over. */
export function checkStock(problem: MenuProblem, plan: ReadPlan, lots: readonly LotStory[]): PlanFault[] {
  return [
    ...plan.batches.flatMap((batch) => checkMakings(problem, plan, batch)),
    ...lots.flatMap((lot) => [...checkLot(lot), ...lot.uses.flatMap((use) => checkUse(lot, use))]),
  ];
}

/** Each batch takes of each food what its makings ask for, and of other foods nothing. */
function checkMakings(problem: MenuProblem, plan: ReadPlan, batch: ReadBatch): PlanFault[] {
  const usedG = problem.foods.map(() => 0);
  for (const use of plan.uses) {
    if (use.batch !== batch) continue;
    const food = foodOf(problem, use);
    usedG[food] = (usedG[food] as number) + use.massG;
  }
  return usedG.flatMap((used, food): PlanFault[] => {
    const perPortionG = batch.dish.makings.reduce((sum, making) => sum + (making.food === food ? making.massG : 0), 0);
    const neededG = perPortionG * batch.portions;
    const short = exceedsMass(neededG, used);
    if (!short && !exceedsMass(used, neededG)) return [];
    return [
      {
        code: short ? "making-short" : "making-over",
        path: ["batches", batch.at],
        expected: `${showNumber(neededG)} g of food ${food}`,
        received: `${showNumber(used)} g`,
      },
    ];
  });
}

function foodOf(problem: MenuProblem, { lot }: ReadUse): number {
  return "stock" in lot ? (problem.lots[lot.stock]?.food as number) : lot.purchase.pack.food;
}

function checkLot({ path, massG, usedG, leftG, mustUse }: LotStory): PlanFault[] {
  const faults: PlanFault[] = [];
  if (exceedsMass(usedG, massG)) {
    const expected = `at most ${showNumber(massG)} g taken`;
    faults.push({ code: "lot-overdrawn", path, expected, received: `${showNumber(usedG)} g` });
  }
  if (mustUse && leftG > MASS_SLACK_G) {
    faults.push({ code: "must-use", path, expected: "all of it used", received: `${showNumber(leftG)} g left` });
  }
  return faults;
}

function checkUse(lot: LotStory, { at, batch }: ReadUse): PlanFault[] {
  if (batch === undefined) return [];
  const faults: PlanFault[] = [];
  const { period } = batch.fresh.sitting;
  if (period < lot.fromPeriod) {
    const expected = `used from period ${lot.fromPeriod} on`;
    faults.push({ code: "lot-early", path: ["uses", at], expected, received: `period ${period}` });
  }
  if (dayOf(batch) > lot.lastDay) {
    const expected = `used on day ${lot.lastDay} at the latest`;
    faults.push({ code: "lot-late", path: ["uses", at], expected, received: `day ${dayOf(batch)}` });
  }
  return faults;
}
