import type { MenuProblem } from "../problem.ts";
import { exceeds, type PlanFault, showNumber } from "./PlanFault.ts";
import type { ReadPlan, ReadPurchase } from "./readPlan.ts";

/** What is wrong with trips and with what is bought on them. */
export function checkPurchases(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  return [
    ...plan.purchases.flatMap((purchase) => checkPurchase(plan, purchase)),
    ...checkPackLimits(problem, plan),
    ...checkTrips(problem, plan),
  ];
}

function checkPurchase(plan: ReadPlan, { at, tripIndex, trip, pack }: ReadPurchase): PlanFault[] {
  const faults: PlanFault[] = [];
  const path = ["purchases", at];
  if (!plan.trips.some(({ index }) => index === tripIndex)) {
    faults.push({ code: "purchase-trip", path, expected: "a trip that is made", received: `trip ${tripIndex}` });
  }
  if (pack.shop !== trip.shop) {
    const expected = `a trip to shop ${pack.shop}`;
    faults.push({ code: "purchase-shop", path, expected, received: `one to shop ${trip.shop}` });
  }
  if (trip.day < pack.fromDay || trip.day > pack.toDay) {
    const expected = `bought on a day from ${pack.fromDay} to ${pack.toDay}`;
    faults.push({ code: "purchase-day", path, expected, received: `day ${trip.day}` });
  }
  return faults;
}

function checkPackLimits(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  return problem.packs.flatMap(({ limit }, pack): PlanFault[] => {
    const count = plan.purchases.reduce((sum, bought) => sum + (bought.packIndex === pack ? bought.count : 0), 0);
    if (count <= limit) return [];
    return [{ code: "pack-limit", path: ["packs", pack], expected: `at most ${limit}`, received: String(count) }];
  });
}

function checkTrips(problem: MenuProblem, plan: ReadPlan): PlanFault[] {
  const { maxTrips } = problem.limits;
  const faults: PlanFault[] = [];
  if (plan.trips.length > maxTrips) {
    const received = String(plan.trips.length);
    faults.push({ code: "max-trips", path: ["limits", "maxTrips"], expected: `at most ${maxTrips} trips`, received });
  }
  for (const { at, index, trip } of plan.trips) {
    const { carryG } = trip;
    const loadG = plan.purchases.reduce(
      (sum, { tripIndex, pack, count }) => sum + (tripIndex === index ? pack.massG * count : 0),
      0,
    );
    if (carryG === undefined || !exceeds(loadG, carryG)) continue;
    const received = `${showNumber(loadG)} g`;
    faults.push({ code: "carry", path: ["trips", at], expected: `at most ${showNumber(carryG)} g`, received });
  }
  return faults;
}
