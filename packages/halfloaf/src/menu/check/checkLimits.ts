import { familyOf, type MenuProblem, type MenuProfile } from "../problem.ts";
import { exceeds, type PlanFault, showNumber } from "./PlanFault.ts";
import type { PlanMoney } from "./PlanMoney.ts";
import type { ReadPlan } from "./readPlan.ts";
import { sumHandsOn } from "./sumHandsOn.ts";
import { missShare, sumComponent, sumEnergyKj } from "./sumIntake.ts";

/** What is wrong with the plan as a whole: money, minutes, what is eaten, variety. */
export function checkLimits(problem: MenuProblem, plan: ReadPlan, money: PlanMoney): PlanFault[] {
  return [
    ...checkBudget(problem, money),
    ...checkHandsOn(problem, plan),
    ...problem.profiles.flatMap((profile, index) => [
      ...checkEnergy(problem, plan, profile, index),
      ...checkHardBounds(plan, profile, index),
    ]),
    ...checkVariety(problem, plan),
    ...checkUses(problem, plan),
  ];
}

function checkBudget({ limits: { budgetMinor } }: MenuProblem, { highTillMinor, tripMinor }: PlanMoney): PlanFault[] {
  const paid = highTillMinor + tripMinor;
  if (budgetMinor === undefined || !exceeds(paid, budgetMinor)) return [];
  const expected = `at most ${showNumber(budgetMinor)}`;
  return [{ code: "budget", path: ["limits", "budgetMinor"], expected, received: showNumber(paid) }];
}

function checkHandsOn(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  const minutes = sumHandsOn(problem, plan);
  return problem.limits.handsOnMinutes.flatMap((most, day): PlanFault[] => {
    const spent = minutes[day] as number;
    if (!exceeds(spent, most)) return [];
    const path = ["limits", "handsOnMinutes", day];
    const expected = `at most ${showNumber(most)} minutes`;
    return [{ code: "hands-on", path, expected, received: `${showNumber(spent)} minutes` }];
  });
}

function checkEnergy(problem: MenuProblem, plan: ReadPlan, profile: MenuProfile, index: number): PlanFault[] {
  const { energyTolerance } = problem.limits;
  return profile.energyKj.flatMap((wanted, day): PlanFault[] => {
    if (wanted <= 0) return [];
    const energyKj = sumEnergyKj(plan, profile, day);
    const low = Math.max(wanted * (1 - energyTolerance), profile.leastEnergyKj?.[day] ?? 0);
    const high = wanted * (1 + energyTolerance);
    if (!exceeds((low - energyKj) / wanted, 0) && !exceeds((energyKj - high) / wanted, 0)) return [];
    const path = ["profiles", index, "energyKj", day];
    const expected = `${showNumber(low)} to ${showNumber(high)} kJ`;
    return [{ code: "energy", path, expected, received: `${showNumber(energyKj)} kJ` }];
  });
}

function checkHardBounds(plan: ReadPlan, profile: MenuProfile, index: number): PlanFault[] {
  return profile.bounds.flatMap((bound, at): PlanFault[] => {
    const amount = sumComponent(plan, profile, bound.component);
    if (!bound.hard || !exceeds(missShare(bound, amount), 0)) return [];
    const expected = `${bound.kind === "at-least" ? "at least" : "at most"} ${showNumber(bound.amount)}`;
    return [{ code: "bound", path: ["profiles", index, "bounds", at], expected, received: showNumber(amount) }];
  });
}

function checkVariety(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  const { distinct, mainMax } = problem.limits;
  const dishes = listServed(plan).flatMap(({ dish, variety }) => (variety ? [dish] : []));
  const faults: PlanFault[] = [];
  const different = new Set(dishes.map((dish) => familyOf(problem, dish))).size;
  if (different < distinct) {
    const received = String(different);
    faults.push({ code: "distinct", path: ["limits", "distinct"], expected: `at least ${distinct}`, received });
  }
  const mains = dishes.map((dish) => problem.dishes[dish]?.main as number);
  for (const main of new Set(mains)) {
    const count = mains.filter((other) => other === main).length;
    if (count <= mainMax) continue;
    const received = `${count} of main ingredient ${main}`;
    faults.push({ code: "main", path: ["limits", "mainMax"], expected: `at most ${mainMax}`, received });
  }
  return faults;
}

function checkUses(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  const served = listServed(plan);
  return problem.dishes.flatMap(({ maxUses }, index): PlanFault[] => {
    if (familyOf(problem, index) !== index) return [];
    const count = served.filter(({ dish }) => familyOf(problem, dish) === index).length;
    if (count <= maxUses) return [];
    const expected = `at most ${maxUses} sittings`;
    return [{ code: "uses", path: ["dishes", index, "maxUses"], expected, received: String(count) }];
  });
}

/** The dish of each serving, fresh or left over, and whether its sitting counts for variety. */
function listServed(plan: ReadPlan): { readonly dish: number; readonly variety: boolean }[] {
  return plan.batches.flatMap(({ dishIndex, fresh, leftovers }) =>
    [fresh, ...leftovers].map(({ sitting }) => ({ dish: dishIndex, variety: sitting.variety })),
  );
}
