import {
  tellAmountOf,
  tellComponent,
  tellCount,
  tellDay,
  tellMass,
  tellMinutes,
  tellMoney,
  tellNumber,
} from "@halfloaf/words/en";
import type { KitchenProblem, StatedWish } from "halfloaf/kitchen";
import type { MenuPlan, MenuProblem } from "halfloaf/menu";
import type { PlanFault, PlanFaultCode } from "halfloaf/menu/check";
import { addDays } from "halfloaf/quantity";
import type { Fault } from "./Fault.ts";
import type { Names } from "./Names.ts";
import { quote, tellPath } from "./valueWords.ts";

/** What a fault of a plan points into. */
export interface PlanContext {
  readonly stated: KitchenProblem;
  readonly plan: MenuPlan;
  readonly currency: string;
  readonly names: Names;
}

interface Told {
  readonly sentence: string;
  readonly remedy: string;
}

type Tell = (fault: PlanFault, context: PlanContext) => Told;

/** A limit that a plan could not keep, in words: the limit, the day or sitting, and by how much. */
export function tellPlanFault(fault: PlanFault, context: PlanContext): Fault {
  const tell = TELL[fault.code];
  const told = tell?.(fault, context) ?? {
    sentence: `${fault.path.join(".")}: ${fault.received} instead of ${fault.expected}.`,
    remedy: "Loosen the limits of the kitchen.",
  };
  return { code: fault.code, path: [], value: fault.received, ...told };
}

const RAISE = (key: string): string => `Raise "${key}" in the limits of the kitchen.`;

/** Words by code. Codes of plans that no search gives are told by what the checker expected. */
const TELL: Readonly<Partial<Record<PlanFaultCode, Tell>>> = {
  budget: ({ expected, received }, { currency, stated }) => {
    const [most, paid] = [numberIn(expected), numberIn(received)];
    const rise = stated.standRisePct > 0 ? ` if estimated prices rose by ${stated.standRisePct} %` : "";
    const money = (minor: number) => `${tellMoney(Math.round(minor), currency)} ${currency}`;
    return {
      sentence: `Money: ${money(paid)} would be paid${rise}, the budget is ${money(most)}: ${money(paid - most)} too much.`,
      remedy: `${RAISE("budgetMinor")} Cheaper packs, or more of what is in the stores, help too.`,
    };
  },
  "hands-on": ({ path, expected, received }, context) => {
    const [most, spent] = [numberIn(expected), numberIn(received)];
    return {
      sentence: `Hands-on minutes: ${dayAt(context, path[2])} would take ${tellMinutes(spent)}, ${tellMinutes(most)} are at hand: ${tellNumber(spent - most)} min too much.`,
      remedy: RAISE("handsOnMinutes"),
    };
  },
  energy: ({ path, expected, received }, context) => {
    const [low = 0, high = 0] = (expected.match(/[\d.]+/g) ?? []).map(Number);
    const percent = (energyKj: number) => `${((200 * energyKj) / (low + high)).toFixed(1)} %`;
    return {
      sentence: `Energy: ${eatersOf(context, path[1])} would get ${percent(numberIn(received))} of what is wanted on ${dayAt(context, path[3])}, allowed are ${percent(low)} to ${percent(high)}.`,
      remedy: `${RAISE("energyTolerancePct")} More dishes for these sittings help too.`,
    };
  },
  bound: ({ path, expected, received }, context) => ({
    sentence: `Intake: ${eatersOf(context, path[1])} would get ${received} of ${componentAt(context, path)}, wanted is ${expected}.`,
    remedy: "More dishes that bring it, or less of it, help.",
  }),
  distinct: ({ expected, received }) => ({
    sentence: `Variety: only ${tellCount(Number(received), "different dish", "different dishes")} in the evenings, wanted are ${expected}.`,
    remedy: 'Lower "distinctEvenings" in the limits of the kitchen.',
  }),
  main: ({ expected, received }) => ({
    sentence: `Variety: one main ingredient would stand on the table ${tellCount(numberIn(received), "evening")}, wanted are ${expected}.`,
    remedy: RAISE("mainMax"),
  }),
  uses: ({ path, expected, received }, context) => ({
    sentence: `Variety: "${dishAt(context, path[1])}" would be served ${tellCount(Number(received), "time")}, wanted are ${expected}.`,
    remedy: RAISE("usesPerDish"),
  }),
  wish: (fault, context) => tellWish(fault, context),
  "max-trips": ({ expected, received }) => ({
    sentence: `Trips: ${received} would be made, wanted are ${expected}.`,
    remedy: RAISE("tripsPerWeek"),
  }),
  carry: ({ path, expected, received }, context) => ({
    sentence: `Weight: ${tripAt(context, path)} would bring ${tellMass(numberIn(received))} home, ${tellMass(numberIn(expected))} can be carried.`,
    remedy: 'Raise "carryKg" of the shop, or allow more trips.',
  }),
  fridge: (fault, context) => tellCold("fridge", "fridgeLitres", fault, context),
  freezer: (fault, context) => tellCold("freezer", "freezerLitres", fault, context),
  "must-use": ({ path, received }, context) => ({
    sentence: `To be used up: ${tellMass(numberIn(received))} of ${lotAt(context, path)} would be left.`,
    remedy: 'Take the lot out of "useUp", or allow dishes that use it.',
  }),
  "sitting-unserved": ({ path }, context) => ({
    sentence: `${sittingAt(context, Number(path[1]))} would have no dish.`,
    remedy: "Give it more minutes, heat, or more dishes and packs to choose from.",
  }),
  elapsed: ({ path, expected, received }, context) => ({
    sentence: `Minutes: ${path
      .slice(1)
      .map((batch) => batchAt(context, batch))
      .join(
        " and ",
      )}${path.length > 2 ? ", cooked at once," : ""} would take ${tellMinutes(Math.ceil(numberIn(received) - 1e-6))}, ${tellMinutes(numberIn(expected))} are at hand.`,
    remedy: 'Raise "minutes" of the sitting.',
  }),
  heat: ({ path }, context) => ({
    sentence: `Heat: ${batchAt(context, path[1])} must be heated, which can't be done there.`,
    remedy: 'Set "heat" of the sitting, or allow cold dishes for it.',
  }),
  packed: ({ path }, context) => ({
    sentence: `Packed: ${batchAt(context, path[1])} can't be taken along and eaten cold at ${servingAt(context, path)}.`,
    remedy: "Allow more dishes that travel for this sitting.",
  }),
  "leftover-cold": ({ path }, context) => ({
    sentence: `Heat: what is left of ${batchAt(context, path[1])} is not eaten cold, and can't be heated at ${servingAt(context, path)}.`,
    remedy: 'Set "heat" of the sitting, or allow cold dishes for it.',
  }),
  keeps: ({ path }, context) => ({
    sentence: `Keeping: what is left of ${batchAt(context, path[1])} no longer keeps at ${servingAt(context, path)}.`,
    remedy: "Allow more minutes, so that more can be cooked fresh.",
  }),
  "batch-size": ({ path, expected, received }, context) => ({
    sentence: `Pots: ${batchAt(context, path[1])} would be ${received}, the largest pot takes ${expected}.`,
    remedy: 'Raise "potPortions" of the kit.',
  }),
  "cooked-twice": ({ path }, context) => ({
    sentence: `${batchAt(context, path[1])} would be cooked twice on that day.`,
    remedy: "Allow more dishes for its sittings.",
  }),
  "making-short": ({ path, expected, received }, context) => ({
    sentence: `Buying: ${batchAt(context, path[1])} needs ${tellMass(numberIn(expected))} of ${foodIn(context, expected)}, only ${tellMass(numberIn(received))} could be had in time.`,
    remedy: "Allow an earlier or another trip, packs that keep longer, or dishes made from what is there.",
  }),
  "lot-late": ({ path, received }, context) => ({
    sentence: `Keeping: ${lotOfUse(context, path)} would be used on ${dayAt(context, numberIn(received))}, when it no longer keeps.`,
    remedy: "Allow more trips, or smaller packs.",
  }),
  "lot-early": ({ path }, context) => ({
    sentence: `Buying: ${lotOfUse(context, path)} would be needed before it is bought.`,
    remedy: "Allow an earlier trip.",
  }),
  "pack-limit": ({ path, expected, received }, context) => ({
    sentence: `Buying: ${tellCount(Number(received), "pack")} of ${context.stated.packs[Number(path[1])]?.label ?? "one kind"} would be bought, to be had are ${expected}.`,
    remedy: "Put other packs of this food on the list.",
  }),
};

function tellWish({ path, expected, received }: PlanFault, context: PlanContext): Told {
  const wish = context.stated.wishes[Number(path[1])];
  if (wish === undefined)
    return { sentence: `A wish is met ${tellCount(Number(received), "time")}.`, remedy: "Take the wish out." };
  const [from, to] = wish.days.map((day) => dayAt(context, day)) as [string, string];
  const when = from === to ? `on ${from}` : `from ${from} to ${to}`;
  return {
    sentence: `Wishes: ${meantDishes(wish.what, context.names)} would be served ${tellCount(Number(received), "time")} ${when}, wanted are ${expected}.`,
    remedy: `Change ${quote(tellPath([...wish.path]))} of the kitchen, or allow more dishes for these sittings.`,
  };
}

/** "soup" or "soup, fish": what the dishes of a wish have in common. */
export function meantDishes({ dish, main, ...others }: StatedWish["what"], names: Names): string {
  const named = [
    dish === undefined ? undefined : `"${names.dish(dish)}"`,
    main === undefined ? undefined : names.food(main),
  ];
  const all = [...named, ...Object.values(others)].filter((each) => each !== undefined);
  return all.length === 0 ? "boxes for later weeks" : all.join(", ");
}

function tellCold(place: string, key: string, { expected, received }: PlanFault, context: PlanContext): Told {
  const [most = 0, day = 0] = (expected.match(/[\d.]+/g) ?? []).map(Number);
  const litres = numberIn(received);
  return {
    sentence: `Room: the ${place} would hold ${tellNumber(litres)} litres on ${dayAt(context, day)}, it takes ${tellNumber(most)}: ${tellNumber(litres - most)} too much.`,
    remedy: `Raise "${key}" of the kit if there is more room, or allow more trips with less on each.`,
  };
}

function numberIn(text: string): number {
  return Number(/-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/.exec(text)?.[0] ?? Number.NaN);
}

function dayAt({ stated }: PlanContext, day: unknown): string {
  return tellDay(addDays(stated.from, Number(day)));
}

/** "Monday 30 November, evening (Ada, Bo)". */
export function sittingAt({ stated, names }: Pick<PlanContext, "stated" | "names">, k: number): string {
  const sitting = stated.sittings[k];
  if (sitting === undefined) return `sitting ${k}`;
  return `${tellDay(sitting.date)}, ${sitting.kind} (${sitting.eaters.map(names.eater).join(", ")})`;
}

/** The eaters of a profile by their names: "Ada and Bo". */
export function eatersOf({ stated, names }: Pick<PlanContext, "stated" | "names">, profile: unknown): string {
  const wanted = stated.problem.profiles[Number(profile)]?.sittings.join(" ");
  const eaters = stated.shares.filter((share) => share.needKj !== undefined && share.sittings.join(" ") === wanted);
  return eaters.map(({ eater }) => names.eater(eater.id)).join(" and ");
}

function componentAt({ stated: { problem } }: PlanContext, path: PlanFault["path"]): string {
  const bound = problem.profiles[Number(path[1])]?.bounds[Number(path[3])];
  const component = problem.components[bound?.component ?? -1] ?? "a component";
  return `${tellComponent(component)}${bound === undefined ? "" : ` (${tellAmountOf(component, bound.amount)})`}`;
}

function dishAt({ stated, names }: PlanContext, dish: unknown): string {
  return names.dish(stated.problem.dishes[Number(dish)]?.id ?? `dish ${dish}`);
}

function batchAt(context: PlanContext, batch: unknown): string {
  const found = context.plan.batches[Number(batch)];
  if (found === undefined) return `batch ${batch}`;
  return `"${dishAt(context, found.dish)}" on ${sittingAt(context, found.sittings[0] ?? -1)}`;
}

function servingAt(context: PlanContext, path: PlanFault["path"]): string {
  return sittingAt(context, context.plan.batches[Number(path[1])]?.sittings[Number(path[3])] ?? -1);
}

function tripAt({ stated, plan, names }: PlanContext, path: PlanFault["path"]): string {
  const trip = stated.trips[plan.trips[Number(path[1])] ?? -1];
  return trip === undefined ? "a trip" : `the trip to ${names.shop(trip.shop)} on ${tellDay(trip.date)}`;
}

function foodIn({ stated, names }: PlanContext, expected: string): string {
  const food = /of food (\d+)/.exec(expected)?.[1];
  return food === undefined ? "a making" : nameFood(stated.problem, names, Number(food));
}

function nameFood({ foods }: MenuProblem, names: Names, food: number): string {
  return names.food(foods[food]?.id ?? `food ${food}`);
}

function lotAt({ stated, plan, names }: PlanContext, path: PlanFault["path"]): string {
  const [list, position] = path;
  const lot = list === "lots" ? stated.lots[Number(position)] : undefined;
  const pack = list === "purchases" ? stated.packs[plan.purchases[Number(position)]?.pack ?? -1] : undefined;
  const food = lot?.food ?? pack?.food;
  return food === undefined ? "a lot" : names.food(food);
}

function lotOfUse(context: PlanContext, path: PlanFault["path"]): string {
  const lot = context.plan.uses[Number(path[1])]?.lot;
  if (lot === undefined) return "a lot";
  return lotAt(context, "stock" in lot ? ["lots", lot.stock] : ["purchases", lot.purchase, lot.copy]);
}
