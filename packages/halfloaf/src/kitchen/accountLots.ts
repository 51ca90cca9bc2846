import type { MenuPlan, MenuProblem } from "../menu/index.ts";
import { priceOfCount } from "../price/index.ts";
import { splitByLargestRemainder } from "../quantity/index.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";

/** One lot through the plan: its grams and its cost, and how both were split over its movements. */
export interface LotThrough {
  readonly id: string;
  readonly food: number;
  readonly from: "stores" | "bought";
  readonly massG: number;
  readonly costMinor: number;
  /** Day it is first used, where that opens it; a lot opened before has none, and neither have separate pieces. */
  readonly openedDay?: number;
  /** Last day it may be used. */
  readonly lastDay: number;
  /** Grams and cost for each batch, in the order of the plan's uses. */
  readonly uses: readonly { readonly batch: number; readonly massG: number; readonly costMinor: number }[];
  readonly wastedG: number;
  readonly wastedMinor: number;
  readonly leftG: number;
  readonly leftMinor: number;
}

const DUST_G = 1e-4;

/** Cost of each copy of each purchase: what the till says for all of them, split so that the parts add up. */
function copyCosts(kitchen: KitchenProblem, plan: MenuPlan): number[][] {
  return plan.purchases.map(({ pack, count }) => {
    const facts = kitchen.packs[pack];
    if (!facts) throw new RangeError(`a purchase names pack ${pack}, which is none of the problem's`);
    return splitByLargestRemainder(
      priceOfCount(facts, count),
      Array.from({ length: count }, () => 1),
    );
  });
}

function batchDay(problem: MenuProblem, plan: MenuPlan, batch: number): number {
  const first = plan.batches[batch]?.sittings[0];
  return (first === undefined ? undefined : problem.sittings[first]?.day) ?? 0;
}

interface OpenLot {
  readonly id: string;
  readonly food: number;
  readonly from: "stores" | "bought";
  readonly massG: number;
  readonly costMinor: number;
  readonly keepsDay: number;
  readonly openedDays: number;
  /** False for what was open before, and for separate pieces, which are never opened as a whole. */
  readonly opensOnUse: boolean;
}

/** Lots in the order of stores, then purchases; each with the key by which uses name it. */
function listLots(kitchen: KitchenProblem, plan: MenuPlan): Map<string, OpenLot> {
  const { problem } = kitchen;
  const lots = new Map<string, OpenLot>();
  problem.lots.forEach((menu, at) => {
    const lot = kitchen.lots[at];
    if (!lot) return;
    lots.set(`stock ${at}`, {
      id: lot.id,
      food: menu.food,
      from: "stores",
      massG: menu.massG,
      costMinor: lot.costMinor,
      keepsDay: menu.lastDay,
      openedDays: menu.openedDays ?? problem.foods[menu.food]?.openedDays ?? 0,
      opensOnUse: !menu.opened,
    });
  });
  const costs = copyCosts(kitchen, plan);
  plan.purchases.forEach(({ trip, pack, count }, purchase) => {
    const menu = problem.packs[pack];
    const made = problem.trips[trip];
    const facts = kitchen.packs[pack];
    if (!menu || !made || !facts) return;
    const food = problem.foods[menu.food];
    for (let copy = 0; copy < count; copy++) {
      lots.set(`bought ${purchase} ${copy}`, {
        id: `${facts.id}-day-${made.day + 1}-${copy + 1}`,
        food: menu.food,
        from: "bought",
        massG: menu.massG,
        costMinor: costs[purchase]?.[copy] ?? 0,
        keepsDay: made.day + (menu.unopenedDays ?? food?.unopenedDays ?? 0),
        openedDays: menu.openedDays ?? food?.openedDays ?? 0,
        opensOnUse: facts.loose !== true,
      });
    }
  });
  return lots;
}

/** Position in time at which a batch is cooked. */
function batchOrder(plan: MenuPlan, batch: number): number {
  return plan.batches[batch]?.sittings[0] ?? 0;
}

/**
 * Cost of each use of a lot, and what stays with the rest: at every moment the part used and the part left split the
 * lot's cost by largest remainders. So nothing that comes later changes what a use has cost, and it is what the
 * stores' own movements will say.
 */
function splitCost(
  lot: OpenLot,
  uses: readonly { readonly batch: number; readonly massG: number }[],
  plan: MenuPlan,
): { readonly costs: readonly number[]; readonly restMinor: number } {
  const costs: number[] = [];
  let leftG = lot.massG;
  let restMinor = lot.costMinor;
  const inTurn = [...uses.keys()].sort(
    (a, b) => batchOrder(plan, uses[a]?.batch as number) - batchOrder(plan, uses[b]?.batch as number),
  );
  for (const at of inTurn) {
    leftG -= uses[at]?.massG as number;
    if (leftG < DUST_G) leftG = 0;
    const parts = splitByLargestRemainder(lot.costMinor, [lot.massG - leftG, leftG]);
    costs[at] = restMinor - (parts[1] as number);
    restMinor = parts[1] as number;
  }
  return { costs, restMinor };
}

/**
 * Follows every lot of a plan from the stores or the till to plates, waste and carry-over. Each lot's cost goes with
 * its grams, and the parts add up to the smallest coin.
 */
export function accountLots(kitchen: KitchenProblem, plan: MenuPlan): LotThrough[] {
  const { problem } = kitchen;
  const usesOf = new Map<string, { batch: number; massG: number }[]>();
  for (const { lot, batch, massG } of plan.uses) {
    const key = "stock" in lot ? `stock ${lot.stock}` : `bought ${lot.purchase} ${lot.copy}`;
    usesOf.set(key, [...(usesOf.get(key) ?? []), { batch, massG }]);
  }
  return [...listLots(kitchen, plan)].map(([key, lot]) => {
    const uses = usesOf.get(key) ?? [];
    const openedDay =
      uses.length > 0 ? Math.min(...uses.map(({ batch }) => batchDay(problem, plan, batch))) : undefined;
    const opens = openedDay !== undefined && lot.opensOnUse;
    const lastDay = opens ? Math.min(lot.keepsDay, openedDay + lot.openedDays) : lot.keepsDay;
    const rest = lot.massG - uses.reduce((sum, use) => sum + use.massG, 0);
    const restG = rest < DUST_G ? 0 : rest;
    const isGone = lastDay < problem.days - 1;
    const { costs, restMinor } = splitCost(lot, uses, plan);
    return {
      id: lot.id,
      food: lot.food,
      from: lot.from,
      massG: lot.massG,
      costMinor: lot.costMinor,
      ...(opens && { openedDay }),
      lastDay,
      uses: uses.map((use, i) => ({ ...use, costMinor: costs[i] as number })),
      wastedG: isGone ? restG : 0,
      wastedMinor: isGone ? restMinor : 0,
      leftG: isGone ? 0 : restG,
      leftMinor: isGone ? 0 : restMinor,
    };
  });
}
