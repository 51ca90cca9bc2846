import type { MenuProblem, MenuTrip } from "../problem.ts";
import { unitColumn } from "./addFoods.ts";
import { widen } from "./isWithin.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Trips and money at the till.
 *
 *     t[i]   1 where trip i is made;   n[f,i] <= most x (sum of t over the trips it can be bought on)
 *     ts[s]  trips to shop s, the sum of its t
 *     sum of t <= maxTrips,   mass bought in shop s <= sum of carryG t over its trips
 *     tills + trips <= budget
 *
 * Trips to one shop are alike but for their day, so that it says little whether one of them is made, and much how many are.
 */
export function addTrips(model: ModelBuilder, facts: WeeklyFacts): void {
  const { problem } = facts;
  const bind = problem.trips.some(isCostly) || problem.limits.maxTrips < problem.trips.length;
  if (bind) {
    problem.trips.forEach((trip, t) => {
      model.column(`t ${t}`, trip.costMinor + problem.worth.minuteMinor * trip.minutes, 1, true);
    });
    model.atMost(
      "trips",
      problem.limits.maxTrips,
      problem.trips.map((_, t) => [`t ${t}`, 1] as const),
    );
    addShops(model, problem);
    addAccess(model, facts);
  }
  addLoads(model, facts, bind);
  if (problem.limits.budgetMinor === undefined) return;
  const paid = facts.supplies.flatMap((supplies, food) =>
    supplies.flatMap((supply, i): [string, number][] =>
      supply.given ? [] : [[unitColumn(food, i), supply.tillMinor / 100]],
    ),
  );
  const trips = bind ? problem.trips.map((trip, t) => [`t ${t}`, trip.costMinor / 100] as const) : [];
  model.atMost("budget", widen(problem.limits.budgetMinor) / 100, [...paid, ...trips]);
}

function addShops(model: ModelBuilder, { trips, shopCount, limits }: MenuProblem): void {
  for (let shop = 0; shop < shopCount; shop++) {
    const there = trips.flatMap((trip, t) => (trip.shop === shop ? [[`t ${t}`, 1] as const] : []));
    if (there.length < 2) continue;
    const count = model.column(`ts ${shop}`, 0, Math.min(there.length, Math.floor(limits.maxTrips)), true);
    model.row(`shop ${shop}`, 0, 0, [...there, [count, -1]]);
  }
}

function isCostly(trip: MenuTrip): boolean {
  return trip.costMinor !== 0 || trip.minutes !== 0;
}

function addAccess(model: ModelBuilder, facts: WeeklyFacts): void {
  facts.supplies.forEach((supplies, food) => {
    const reachG = facts.reachG[food] as number;
    supplies.forEach((supply, i) => {
      if (supply.pack === undefined) return;
      const enough =
        supply.unitMinor < 0 || supply.massG === 0
          ? supply.most
          : Math.min(supply.most, Math.ceil(reachG / supply.massG));
      model.atMost(`sold ${food} ${i}`, 0, [
        [unitColumn(food, i), 1 / Math.max(1, enough)],
        ...supply.trips.map((t) => [`t ${t}`, -1] as const),
      ]);
    });
    if ((facts.users[food]?.length ?? 0) === 0) return;
    const trips = [...new Set(supplies.flatMap((supply) => supply.trips))];
    const lots = supplies.flatMap((supply, i): [string, number][] =>
      supply.pack === undefined && !supply.given ? [[unitColumn(food, i), -1]] : [],
    );
    model.atMost(`reach ${food}`, 0, [[`z ${food}`, 1], ...lots, ...trips.map((t) => [`t ${t}`, -1] as const)]);
  });
}

function addLoads(model: ModelBuilder, facts: WeeklyFacts, bind: boolean): void {
  const { problem } = facts;
  for (let shop = 0; shop < problem.shopCount; shop++) {
    const trips = problem.trips.map((trip, t) => ({ ...trip, t })).filter((trip) => trip.shop === shop);
    if (trips.length === 0 || trips.some(({ carryG }) => carryG === undefined)) continue;
    const load = facts.supplies.flatMap((supplies, food) =>
      supplies.flatMap((supply, i): [string, number][] => {
        const pack = supply.pack === undefined ? undefined : problem.packs[supply.pack];
        return pack?.shop === shop ? [[unitColumn(food, i), (pack.massG * supply.packs) / 1000]] : [];
      }),
    );
    const carry = trips.map(({ carryG, t }) => [`t ${t}`, -widen(carryG as number) / 1000] as const);
    const all = carry.reduce((sum, [, mass]) => sum - mass, 0);
    model.atMost(`carry ${shop}`, bind ? 0 : all, bind ? [...load, ...carry] : load);
  }
}
