import { isLasting, type MenuFood, type MenuProblem } from "../problem.ts";
import type { ReadBatch, ReadPlan, ReadPurchase, ReadUse } from "./readPlan.ts";

/** What a plan does with one lot of the start, or with one bought pack, or with all packs of a purchase never touched. */
export interface LotStory {
  readonly path: readonly (string | number)[];
  readonly foodIndex: number;
  readonly food: MenuFood;
  readonly massG: number;
  /** First day and first period it is there. */
  readonly fromDay: number;
  readonly fromPeriod: number;
  /** True if it is open at the end of the plan. */
  readonly opened: boolean;
  /** Last day it may be used, shortened by its opening. */
  readonly lastDay: number;
  readonly uses: readonly ReadUse[];
  readonly usedG: number;
  /** What is left of it at the end, good or not. */
  readonly leftG: number;
  readonly mustUse: boolean;
  /** Worth of the whole lot at the start; 0 for bought packs. */
  readonly openingMinor: number;
}

/** Tells the story of every lot of the start and of every pack bought. */
export function openLots(problem: MenuProblem, plan: ReadPlan): LotStory[] {
  return [...openStock(problem, plan), ...plan.purchases.flatMap((purchase) => openPurchase(problem, plan, purchase))];
}

function openStock(problem: MenuProblem, plan: ReadPlan): LotStory[] {
  return problem.lots.map((lot, stock): LotStory => {
    const uses = plan.uses.filter((use) => "stock" in use.lot && use.lot.stock === stock);
    const food = problem.foods[lot.food] as MenuFood;
    const firstDay = findFirstDay(uses);
    const openedDays = lot.openedDays ?? food.openedDays;
    const keepsOpen = lot.opened || firstDay === undefined ? Number.POSITIVE_INFINITY : firstDay + openedDays;
    return {
      path: ["lots", stock],
      foodIndex: lot.food,
      food,
      massG: lot.massG,
      fromDay: 0,
      fromPeriod: lot.fromPeriod ?? 0,
      opened: lot.opened || firstDay !== undefined,
      lastDay: Math.min(lot.lastDay, keepsOpen),
      ...weighUses(lot.massG, uses),
      mustUse: lot.mustUse,
      openingMinor: lot.massG * priceGram(problem, lot.food, lot.opened),
    };
  });
}

/** One story for each copy that is used and one for all others together, which differ in nothing. */
function openPurchase(problem: MenuProblem, plan: ReadPlan, purchase: ReadPurchase): LotStory[] {
  const { at, trip, pack, count } = purchase;
  const food = problem.foods[pack.food] as MenuFood;
  const unopenedUntil = trip.day + (pack.unopenedDays ?? food.unopenedDays);
  const openedDays = pack.openedDays ?? food.openedDays;
  const usesOf = (copy: number): ReadUse[] =>
    plan.uses.filter(({ lot }) => "purchase" in lot && lot.purchase.at === at && lot.copy === copy);
  const tell = (copy: number, massG: number, uses: readonly ReadUse[]): LotStory => {
    const firstDay = findFirstDay(uses);
    return {
      path: ["purchases", at, copy],
      foodIndex: pack.food,
      food,
      massG,
      fromDay: trip.day,
      fromPeriod: trip.period,
      opened: firstDay !== undefined,
      lastDay: firstDay === undefined ? unopenedUntil : Math.min(unopenedUntil, firstDay + openedDays),
      ...weighUses(massG, uses),
      mustUse: false,
      openingMinor: 0,
    };
  };
  const used = new Set<number>();
  for (const { lot } of plan.uses) if ("purchase" in lot && lot.purchase.at === at) used.add(lot.copy);
  const stories = [...used].sort((a, b) => a - b).map((copy) => tell(copy, pack.massG, usesOf(copy)));
  const untouched = count - used.size;
  return untouched > 0 ? [...stories, tell(count - 1, untouched * pack.massG, [])] : stories;
}

/** The day on which a lot is first used; undefined where it is not, or only by batches that do not exist. */
function findFirstDay(uses: readonly ReadUse[]): number | undefined {
  const days = uses.flatMap(({ batch }) => (batch ? [dayOf(batch)] : []));
  return days.length > 0 ? Math.min(...days) : undefined;
}

function weighUses(massG: number, uses: readonly ReadUse[]): Pick<LotStory, "uses" | "usedG" | "leftG"> {
  const usedG = uses.reduce((sum, use) => sum + use.massG, 0);
  return { uses, usedG, leftG: Math.max(0, massG - usedG) };
}

/** Day on which a batch is cooked. */
export function dayOf(batch: ReadBatch): number {
  return batch.fresh.sitting.day;
}

/** What a gram of good stock is worth, in minor units. */
export function priceGram(problem: MenuProblem, food: number, opened: boolean): number {
  const { creditMinorPerG, creditOpenedMinorPerG } = problem.foods[food] as MenuFood;
  return isLasting(problem, food) || !opened ? creditMinorPerG : creditOpenedMinorPerG;
}

/** True if what is left of the lot may still be used on the last day of the plan. */
export function isGoodAtEnd(problem: MenuProblem, lot: LotStory): boolean {
  return lot.lastDay >= problem.days - 1;
}
