import type { MenuPlan } from "../plan.ts";
import type { MenuFood, MenuPack, MenuProblem } from "../problem.ts";

/** A problem and its plan with packs added at the end; `packBefore` says which pack each one was. */
export interface ChangedPacks {
  readonly problem: MenuProblem;
  readonly plan: MenuPlan;
  readonly packBefore: readonly number[];
}

/**
 * A pack with another price from a day on. What was bought of it before was paid as it was: it stays a pack of its own,
 * sold until the day before. What a gram kept is worth never lies above what it now costs.
 */
export function changePrice(given: ChangedPacks, pack: number, priceMinor: number, today: number): ChangedPacks {
  const { problem, plan } = given;
  const old = problem.packs[pack] as MenuPack;
  const isPaid = (trip: number): boolean => (problem.trips[trip]?.day ?? 0) < today;
  const bought = plan.purchases.filter((each) => each.pack === pack && isPaid(each.trip));
  const count = bought.reduce((sum, each) => sum + each.count, 0);
  const fresh = { ...reprice(old, priceMinor), fromDay: Math.max(old.fromDay, today), limit: old.limit - count };
  const foods = problem.foods.map((food, at) => (at === old.food ? lowerWorth(problem, food, at, fresh) : food));
  if (today <= 0) {
    const packs = problem.packs.map((each, at) => (at === pack ? { ...fresh, fromDay: old.fromDay } : each));
    return { ...given, problem: { ...problem, packs, foods } };
  }
  const paid = { ...old, toDay: Math.min(old.toDay, today - 1) };
  const packs = [...problem.packs.map((each, at) => (at === pack ? paid : each)), fresh];
  const purchases = plan.purchases.map((each) =>
    each.pack === pack && !isPaid(each.trip) ? { ...each, pack: problem.packs.length } : each,
  );
  const packBefore = [...given.packBefore, given.packBefore[pack] as number];
  return { problem: { ...problem, packs, foods }, plan: { ...plan, purchases }, packBefore };
}

/** A price that is known is sure; an offer that is no longer to advantage falls away with the old price. */
function reprice({ offer, highMinor: _high, ...pack }: MenuPack, priceMinor: number): MenuPack {
  const holds = offer !== undefined && offer.priceMinor < offer.count * priceMinor;
  return { ...pack, priceMinor, ...(holds && { offer: { count: offer.count, priceMinor: offer.priceMinor } }) };
}

/** The food's worth scaled down where its cheapest pack got cheaper, so that buying to keep never pays. */
function lowerWorth({ packs }: MenuProblem, food: MenuFood, at: number, fresh: MenuPack): MenuFood {
  const own = packs.filter((pack) => pack.food === at);
  const before = Math.min(...own.map(pricePerG));
  const share = before > 0 ? Math.min(1, pricePerG(fresh) / before) : 1;
  return {
    ...food,
    creditMinorPerG: food.creditMinorPerG * share,
    creditOpenedMinorPerG: food.creditOpenedMinorPerG * share,
    wasteMinorPerG: food.wasteMinorPerG * share,
  };
}

function pricePerG({ priceMinor, massG, offer }: MenuPack): number {
  const each = offer ? Math.min(priceMinor, offer.priceMinor / offer.count) : priceMinor;
  return each / massG;
}

/** A pack that is sold until the day before a day. */
export function takeOffSale(given: ChangedPacks, pack: number, fromDay: number): ChangedPacks {
  const packs = given.problem.packs.map((each, at) =>
    at === pack ? { ...each, toDay: Math.min(each.toDay, fromDay - 1) } : each,
  );
  return { ...given, problem: { ...given.problem, packs } };
}
