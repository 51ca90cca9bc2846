import { counted, tellComponent, tellCount, tellDay, tellMass, tellMoney, tellNumber } from "@halfloaf/words/en";
import type { KitchenProblem } from "halfloaf/kitchen";
import type { LimitKind, LimitReading, MenuLimit } from "halfloaf/menu";
import { addDays } from "halfloaf/quantity";
import type { Names } from "./Names.ts";
import { eatersOf, meantDishes, sittingAt } from "./planFaultWords.ts";

/** What the limits of a kitchen's problem are told with. */
export interface LimitContext {
  readonly stated: KitchenProblem;
  readonly currency: string;
  readonly names: Names;
}

/** The key of the kitchen file by which each kind of limit is loosened. */
export const LIMIT_KEYS: Readonly<Record<LimitKind, string>> = {
  budget: "budgetMinor",
  "hands-on": "handsOnMinutes",
  elapsed: "minutes",
  energy: "energyTolerancePct",
  bound: "limits",
  uses: "usesPerDish",
  main: "mainMax",
  distinct: "distinctEvenings",
  wish: "wishes",
  trips: "tripsPerWeek",
  pot: "potPortions",
  carry: "carryKg",
  fridge: "fridgeLitres",
  freezer: "freezerLitres",
  "must-use": "useUp",
};

/** A limit loosened by an amount in its unit, never told as less than it is: "12 min more hands-on on Tuesday 1 December". */
export function tellLoosened(limit: MenuLimit, amount: number, context: LimitContext): string {
  const { stated, currency, names } = context;
  const whole = Math.ceil(amount - 1e-6);
  const tenth = tellNumber(Math.ceil(10 * amount - 1e-6) / 10);
  switch (limit.kind) {
    case "budget":
      return `${tellMoney(whole, currency)} ${currency} more budget`;
    case "hands-on":
      return `${whole} min more hands-on on ${tellDay(addDays(stated.from, limit.day))}`;
    case "elapsed":
      return `${whole} min more for ${sittingAt(context, limit.sitting)}`;
    case "energy":
      return `${tenthOfPercent(amount)} points more energy tolerance`;
    case "bound":
      return `a looser bound on ${componentOf(stated, limit)} for ${eatersOf(context, limit.profile)}`;
    case "uses":
      return `${tellCount(whole, "more use", "more uses")} of "${names.dish(stated.problem.dishes[limit.dish]?.id ?? "")}"`;
    case "main":
      return `${tellCount(whole, "more evening", "more evenings")} with ${mainOf(context, limit.main)}`;
    case "distinct":
      return `${tellCount(whole, "different dish", "different dishes")} fewer in the evenings`;
    case "wish": {
      const wish = stated.wishes[limit.wish];
      const what = wish === undefined ? "a wish" : meantDishes(wish.what, names);
      return `${tellCount(whole, "serving")} less strict on ${what}`;
    }
    case "trips":
      return tellCount(whole, "more trip");
    case "pot":
      return `room for ${tenth} more ${counted(Number(tenth), { one: "portion", other: "portions" })} in the pot`;
    case "carry": {
      const trip = stated.trips[limit.trip];
      const where = trip === undefined ? "" : ` from ${names.shop(trip.shop)} on ${tellDay(trip.date)}`;
      return `${tellMass(amount)} more carried${where}`;
    }
    case "fridge":
    case "freezer":
      return `${tenth} litres more room in the ${limit.kind}`;
    case "must-use":
      return `the ${names.food(stated.lots[limit.lot]?.food ?? "lot")} of the stores left over`;
  }
}

/** A limit that a plan goes beyond, with the day and the eaters it is about. */
export function tellExcess({ limit, excess }: LimitReading, context: LimitContext): string {
  const told = tellLoosened(limit, excess, context);
  if (limit.kind !== "energy") return told;
  return `${told} for ${eatersOf(context, limit.profile)} on ${tellDay(addDays(context.stated.from, limit.day))}`;
}

function tenthOfPercent(share: number): string {
  return tellNumber(Math.ceil(1000 * share - 1e-6) / 10);
}

function mainOf({ stated, names }: LimitContext, main: number): string {
  const dish = stated.problem.dishes.findIndex((one) => one.main === main);
  const food = stated.dishes[dish]?.dish.main;
  return food === undefined ? "one main ingredient" : `${names.food(food)} as main ingredient`;
}

function componentOf({ problem }: KitchenProblem, { profile, bound }: { profile: number; bound: number }): string {
  const component = problem.profiles[profile]?.bounds[bound]?.component;
  return tellComponent(problem.components[component ?? -1] ?? "a component");
}
