import { isLasting, type MenuFood, type MenuLot, type MenuPack, type MenuProblem } from "../problem.ts";
import { buildCoverTable, buildLimitedTable, type CoverItem, type CoverTable } from "./CoverTable.ts";

/** Packs of one food that are bought together in one shop, with the cheapest covers from them. */
export interface Source {
  readonly shop: number;
  readonly table: CoverTable;
  /** The same packs weighed by what is left of them at the end of the plan, still good; for foods that go off. */
  readonly endTable: CoverTable;
  /** Days a pack keeps from the day it is bought, opened or not. */
  readonly unopenedDays: number;
  /** Days a pack keeps once opened. */
  readonly openedDays: number;
  readonly fromDay: number;
  readonly toDay: number;
  /** Most packs of it in the plan. */
  readonly limit: number;
  /** True where every pack can be bought on any trip to the shop, without limit. */
  readonly regular: boolean;
  /** The most that offers can take off each item of the table, however many are bought; undefined = no offers. */
  readonly slackMinor: readonly number[] | undefined;
}

/** What the search knows of buying one food. */
export interface FoodSources {
  /** True where days play no part: neither the food nor any lot or pack of it goes off within the plan. */
  readonly lasting: boolean;
  readonly sources: readonly Source[];
  /** Shops (bit = shop) that sell it without conditions. */
  readonly regularShops: number;
  readonly hasSpecial: boolean;
  /** True where it goes off and offers can take anything off its packs. */
  readonly hasOffers: boolean;
  /** The least that a gram costs anywhere, offers taken; Infinity where it is not sold. */
  readonly leastMinorPerG: number;
  /** What a gram left of the packs bought is worth at best: no pack is bought that is not opened, unless it lasts. */
  readonly leftMinorPerG: number;
  /** Covers from all packs there are, wherever and whenever, weighed by what is left of them at best; undefined = that is not known exactly. */
  readonly anyTable: CoverTable | undefined;
  readonly regular: readonly { readonly shop: number; readonly items: readonly CoverItem[] }[];
  readonly reachG: number;
  /** Covers from the regular packs of sets of shops, by their bits; filled as they are asked for. */
  readonly byShops: (CoverTable | undefined)[];
}

const NO_LIMIT = 9999;

function itemsOf(pack: MenuPack, index: number, surplusMinorPerG: number): CoverItem[] {
  const item = (count: number, priceMinor: number, highMinor = priceMinor): CoverItem => ({
    pack: index,
    count,
    massG: pack.massG * count,
    priceMinor,
    highMinor,
    weighedMinor: priceMinor + surplusMinorPerG * pack.massG * count,
  });
  const single = item(1, pack.priceMinor, pack.highMinor);
  const { offer } = pack;
  return offer ? [single, item(offer.count, offer.priceMinor, offer.highMinor)] : [single];
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

function lastsThroughout(problem: MenuProblem, food: number, packs: readonly MenuPack[]): boolean {
  const { days, lots } = problem;
  return (
    isLasting(problem, food) &&
    lots.every((lot) => lot.food !== food || lastsToo(lot, days)) &&
    packs.every(({ unopenedDays = days, openedDays = days }) => unopenedDays >= days && openedDays >= days)
  );
}

function lastsToo({ fromPeriod = 0, lastDay, openedDays, mustUse }: MenuLot, days: number): boolean {
  return fromPeriod === 0 && lastDay >= days - 1 && (openedDays ?? days) >= days && !mustUse;
}

function pricesPerG({ priceMinor, massG, offer }: MenuPack): number[] {
  return [priceMinor / massG, ...(offer ? [offer.priceMinor / (offer.count * massG)] : [])];
}

/** What a gram left good of an opened lot or pack is worth after the last day. */
export function creditOfOpened(problem: MenuProblem, food: number): number {
  const { creditMinorPerG, creditOpenedMinorPerG } = problem.foods[food] as MenuFood;
  return isLasting(problem, food) ? creditMinorPerG : creditOpenedMinorPerG;
}

/** What offers can take off each item where it is bought often enough; undefined where they take off nothing. */
function reckonSlack(items: readonly CoverItem[], packs: readonly MenuPack[]): number[] | undefined {
  const each = items.map(({ pack }) => {
    const { offer, priceMinor } = packs[pack] as MenuPack;
    return offer ? Math.max(0, priceMinor - offer.priceMinor / offer.count) : 0;
  });
  return each.some((slack) => slack > 0) ? each : undefined;
}

/** What is left good of a food that goes off is worth this to the planner, opened as it mostly is. */
function reweigh(items: readonly CoverItem[], leftCreditMinorPerG: number): CoverItem[] {
  return items.map((item) => ({ ...item, weighedMinor: item.priceMinor - leftCreditMinorPerG * item.massG }));
}

function buildFood(problem: MenuProblem, food: number): FoodSources {
  const facts = problem.foods[food] as MenuFood;
  const reachG = mostUsedG(problem, food);
  const packs = [...problem.packs.entries()].filter(([, pack]) => pack.food === food && reachG > 0);
  const lasting = lastsThroughout(
    problem,
    food,
    packs.map(([, pack]) => pack),
  );
  const surplus = lasting ? -facts.creditMinorPerG : facts.wasteMinorPerG;
  const sources: Source[] = [];
  const regular = new Map<string, { shop: number; openedDays: number; items: CoverItem[] }>();
  const add = (table: CoverTable, facts: Omit<Source, "table" | "endTable" | "slackMinor">): void => {
    const slackMinor = lasting ? undefined : reckonSlack(table.items, problem.packs);
    // With a single pack there is nothing to choose but how many.
    const endTable =
      lasting || table.items.length < 2
        ? table
        : buildCoverTable(reweigh(table.items, creditOfOpened(problem, food)), reachG);
    // Written out so that all sources are objects of one shape, which the search reads faster.
    const { shop, unopenedDays, openedDays, fromDay, toDay, limit, regular } = facts;
    sources.push({ shop, table, endTable, unopenedDays, openedDays, fromDay, toDay, limit, regular, slackMinor });
  };
  for (const [index, pack] of packs) {
    const { shop, limit, fromDay, toDay } = pack;
    // An offer is a pack of its own where packs last; where they do not, each pack is opened by itself.
    const items = itemsOf(pack, index, surplus).slice(0, lasting ? 2 : 1);
    const openedDays = pack.openedDays ?? facts.openedDays;
    if (isRegular(problem, pack)) {
      const key = `${shop} ${openedDays}`;
      const known = regular.get(key);
      if (known) known.items.push(...items);
      else regular.set(key, { shop, openedDays, items });
    } else {
      const unopenedDays = pack.unopenedDays ?? facts.unopenedDays;
      const table = buildLimitedTable(items, reachG, limit);
      add(table, { shop, unopenedDays, openedDays, fromDay, toDay, limit, regular: false });
    }
  }
  for (const { shop, openedDays, items } of regular.values()) {
    const { unopenedDays } = facts;
    const span = { fromDay: 0, toDay: problem.days, limit: NO_LIMIT };
    add(buildCoverTable(items, reachG), { shop, unopenedDays, openedDays, ...span, regular: true });
  }
  const leftMinorPerG = lasting ? facts.creditMinorPerG : creditOfOpened(problem, food);
  const anyItems = packs.flatMap(([index, pack]) => itemsOf(pack, index, -leftMinorPerG));
  const anyTable = anyItems.length > 0 ? buildCoverTable(anyItems, reachG) : undefined;
  return {
    lasting,
    leftMinorPerG,
    anyTable: anyTable?.isExact ? anyTable : undefined,
    sources,
    regularShops: [...regular.values()].reduce((bits, { shop }) => bits | (1 << shop), 0),
    hasSpecial: sources.some((source) => !source.regular),
    hasOffers: sources.some((source) => source.slackMinor !== undefined),
    leastMinorPerG: packs.reduce((least, [, pack]) => Math.min(least, ...pricesPerG(pack)), Infinity),
    regular: [...regular.values()],
    reachG,
    byShops: [],
  };
}

/** Covers from the regular packs of a set of shops (bit = shop); undefined where none of them sells the food. */
export function coverFrom(food: FoodSources, shops: number): CoverTable | undefined {
  const chosen = shops & food.regularShops;
  const known = food.byShops[chosen];
  if (known || chosen === 0) return known;
  const items = food.regular.filter(({ shop }) => chosen & (1 << shop)).flatMap((one) => one.items);
  const table = buildCoverTable(items, food.reachG);
  food.byShops[chosen] = table;
  return table;
}

/** Sources by the packs they are of, with all else they depend on: problems that are asked about a week share them. */
const built = new WeakMap<
  MenuProblem["packs"],
  Pick<MenuProblem, "days" | "foods" | "dishes" | "lots"> & {
    readonly portions: number;
    readonly sources: FoodSources[];
  }
>();

/** Sources of every food of the problem; shops are numbered below 31. */
export function buildSources(problem: MenuProblem): FoodSources[] {
  const { days, foods, dishes, lots, packs, sittings } = problem;
  const portions = sittings.reduce((sum, sitting) => sum + sitting.portions, 0);
  const known = built.get(packs);
  const isSame =
    known?.days === days &&
    known.foods === foods &&
    known.dishes === dishes &&
    known.lots === lots &&
    known.portions === portions;
  if (known && isSame) return known.sources;
  const sources = foods.map((_, food) => buildFood(problem, food));
  built.set(packs, { days, foods, dishes, lots, portions, sources });
  return sources;
}
