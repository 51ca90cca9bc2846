import { isLasting, type MenuFood, type MenuPack, type MenuProblem } from "../problem.ts";
import { buildCoverTable, type CoverItem, type CoverTable } from "./CoverTable.ts";

/** Packs of one food that are bought together in one shop, with the cheapest covers from them. */
export interface Source {
  readonly shop: number;
  readonly table: CoverTable;
  /** Days a pack keeps from the day it is bought, opened or not. */
  readonly unopenedDays: number;
  /** Days a pack keeps once opened. */
  readonly openedDays: number;
  readonly fromDay: number;
  readonly toDay: number;
  /** True where every pack can be bought on any trip to the shop, without limit. */
  readonly regular: boolean;
}

/** What the search knows of buying one food. */
export interface FoodSources {
  /** True where days play no part: neither the food nor its stock goes off within the plan. */
  readonly lasting: boolean;
  readonly sources: readonly Source[];
  /** Lasting foods only: covers from the regular packs of each set of shops, by its bits (bit = shop). */
  readonly byShops: readonly (CoverTable | undefined)[];
  readonly hasOffers: boolean;
  /** Shops (bit = shop) that sell it without conditions. */
  readonly regularShops: number;
  readonly hasSpecial: boolean;
}

const NO_LIMIT = 9999;

function itemsOf(pack: MenuPack, index: number, surplusMinorPerG: number): CoverItem[] {
  const item = (count: number, priceMinor: number): CoverItem => ({
    pack: index,
    count,
    massG: pack.massG * count,
    priceMinor,
    weighedMinor: Math.max(0.01, priceMinor + surplusMinorPerG * pack.massG * count),
  });
  const single = item(1, pack.priceMinor);
  return pack.offer ? [single, item(pack.offer.count, pack.offer.priceMinor)] : [single];
}

function isRegular(problem: MenuProblem, pack: MenuPack): boolean {
  const always = pack.fromDay <= 0 && pack.toDay >= problem.days - 1;
  return always && pack.limit >= NO_LIMIT && pack.unopenedDays === undefined;
}

/** The largest mass of the food that any menu can use. */
function mostUsedG(problem: MenuProblem, food: number): number {
  let perPortion = 0;
  for (const dish of problem.dishes) {
    for (const making of dish.makings) if (making.food === food) perPortion = Math.max(perPortion, making.massG);
  }
  return problem.sittings.reduce((sum, sitting) => sum + sitting.portions * perPortion, 0);
}

function buildFood(problem: MenuProblem, food: number): FoodSources {
  const facts = problem.foods[food] as MenuFood;
  const lots = problem.lots.filter((lot) => lot.food === food);
  const lasting = isLasting(problem, food) && lots.every((lot) => lot.lastDay >= problem.days - 1 && !lot.mustUse);
  const reachG = mostUsedG(problem, food);
  const surplus = lasting ? -facts.creditMinorPerG : facts.wasteMinorPerG;
  const sources: Source[] = [];
  const regular = new Map<string, { shop: number; openedDays: number; items: CoverItem[] }>();
  problem.packs.forEach((pack, index) => {
    if (pack.food !== food || reachG === 0) return;
    const { shop, fromDay, toDay } = pack;
    const items = itemsOf(pack, index, surplus);
    const openedDays = pack.openedDays ?? facts.openedDays;
    if (isRegular(problem, pack)) {
      // An offer is a pack of its own where packs last; where they do not, each pack is opened by itself.
      const usable = lasting ? items : items.slice(0, 1);
      const key = `${shop} ${openedDays}`;
      const known = regular.get(key);
      if (known) known.items.push(...usable);
      else regular.set(key, { shop, openedDays, items: usable });
    } else {
      const table = buildCoverTable(items.slice(0, 1), reachG, pack.massG * pack.limit);
      const unopenedDays = pack.unopenedDays ?? facts.unopenedDays;
      sources.push({ shop, table, unopenedDays, openedDays, fromDay, toDay, regular: false });
    }
  });
  for (const { shop, openedDays, items } of regular.values()) {
    const { unopenedDays } = facts;
    const table = buildCoverTable(items, reachG);
    sources.push({ shop, table, unopenedDays, openedDays, fromDay: 0, toDay: problem.days, regular: true });
  }
  return {
    lasting,
    sources,
    byShops: lasting ? buildByShops([...regular.values()], reachG) : [],
    hasOffers: problem.packs.some((pack) => pack.food === food && pack.offer !== undefined),
    regularShops: [...regular.values()].reduce((bits, { shop }) => bits | (1 << shop), 0),
    hasSpecial: sources.some((source) => !source.regular),
  };
}

function buildByShops(
  regular: readonly { shop: number; items: readonly CoverItem[] }[],
  reachG: number,
): (CoverTable | undefined)[] {
  const shops = [...new Set(regular.map(({ shop }) => shop))];
  const tables: (CoverTable | undefined)[] = [];
  for (let chosen = 1; chosen < 1 << shops.length; chosen++) {
    const inSet = shops.filter((_, i) => chosen & (1 << i));
    const mask = inSet.reduce((bits, shop) => bits | (1 << shop), 0);
    tables[mask] = buildCoverTable(
      regular.filter(({ shop }) => inSet.includes(shop)).flatMap(({ items }) => items),
      reachG,
    );
  }
  return tables;
}

/** Covers for every food of the problem; shops are numbered below 31. */
export function buildSources(problem: MenuProblem): FoodSources[] {
  return problem.foods.map((_, food) => buildFood(problem, food));
}
