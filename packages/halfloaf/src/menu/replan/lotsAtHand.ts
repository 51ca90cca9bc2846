import type { MenuPlan, Use } from "../plan.ts";
import type { MenuFood, MenuLot, MenuPack, MenuProblem, MenuTrip } from "../problem.ts";
import { cookingDay } from "./cookedBefore.ts";
import type { Loss, LotName } from "./MenuChange.ts";

/** What is left of a lot on a day, as stock of that day, and which lot of the plan it is. */
export interface LotAtHand {
  readonly name: LotName;
  readonly lot: MenuLot;
}

/** Less than this is no stock (g). */
const DUST_G = 1e-4;

/** A key by which lots can be compared. */
export function keyOfLot(name: LotName): string {
  return "stock" in name ? `stock ${name.stock}` : `bought ${name.purchase} ${name.copy}`;
}

/**
 * The lots at hand when a day begins, if all went as planned but for the losses, each counted: stock and what was bought, on the trips
 * before or already on this day's (`made`, positions of purchases), each with the period it comes home in, its last day, opened
 * where it was used from before.
 */
export function lotsAtHand(
  problem: MenuProblem,
  plan: MenuPlan,
  today: number,
  losses: readonly Loss[],
  made: readonly number[] = [],
): LotAtHand[] {
  const usesOf = groupUses(problem, plan, today);
  const stock = problem.lots.map((lot, at): LotAtHand => ({ name: { stock: at }, lot }));
  const bought = plan.purchases.flatMap(({ trip, pack, count }, purchase) => {
    const { day, period } = problem.trips[trip] as MenuTrip;
    if (day >= today && !made.includes(purchase)) return [];
    const bought = toLot(problem, problem.packs[pack] as MenuPack, day);
    // What comes home today is not there for what is cooked before.
    const lot = day >= today ? { ...bought, fromPeriod: period } : bought;
    return Array.from({ length: count }, (_, copy): LotAtHand => ({ name: { purchase, copy }, lot }));
  });
  return [...stock, ...bought].flatMap(({ name, lot }) => {
    const uses = usesOf.get(keyOfLot(name)) ?? [];
    const own = losses.filter(({ lot: lost }) => keyOfLot(lost) === keyOfLot(name));
    const massG = lot.massG - uses.reduce((sum, { massG: each }) => sum + each, 0) - lostOf(own);
    const opened = uses.length > 0 && !lot.opened ? open(problem, plan, lot, uses) : lot;
    const end = Math.min(lot.lastDay, ...own.flatMap((loss) => loss.lastDay ?? []));
    if (massG <= DUST_G || end < today) return [];
    return [{ name, lot: { ...opened, massG, lastDay: Math.min(opened.lastDay, end) } }];
  });
}

/** Grams that are gone at once. */
function lostOf(losses: readonly Loss[]): number {
  const gone = losses.filter(({ lastDay }) => lastDay === undefined);
  return gone.reduce((sum, { massG = Number.POSITIVE_INFINITY }) => sum + massG, 0);
}

function groupUses(problem: MenuProblem, plan: MenuPlan, today: number): Map<string, Use[]> {
  const uses = new Map<string, Use[]>();
  for (const use of plan.uses) {
    const batch = plan.batches[use.batch];
    if (batch === undefined || cookingDay(problem, batch) >= today) continue;
    const key = keyOfLot(use.lot);
    uses.set(key, [...(uses.get(key) ?? []), use]);
  }
  return uses;
}

/** A pack as stock, with the opened life of its own that it may have. */
function toLot(problem: MenuProblem, { food, massG, openedDays, ...pack }: MenuPack, day: number): MenuLot {
  const lastDay = day + (pack.unopenedDays ?? problem.foods[food]?.unopenedDays ?? 0);
  return { food, massG, opened: false, lastDay, mustUse: false, ...(openedDays !== undefined && { openedDays }) };
}

function open(problem: MenuProblem, plan: MenuPlan, lot: MenuLot, uses: readonly Use[]): MenuLot {
  const first = Math.min(
    ...uses.map(({ batch }) => cookingDay(problem, plan.batches[batch] as MenuPlan["batches"][number])),
  );
  const openedDays = lot.openedDays ?? (problem.foods[lot.food] as MenuFood).openedDays;
  return { ...lot, opened: true, lastDay: Math.min(lot.lastDay, first + openedDays) };
}
