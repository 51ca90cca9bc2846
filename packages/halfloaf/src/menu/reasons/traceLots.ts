import type { MenuPlan, Use } from "../plan.ts";
import { isLasting, type MenuFood, type MenuPack, type MenuProblem, type MenuTrip } from "../problem.ts";

/** A lot of the start or a bought pack on its way through a plan. */
export interface LotTrace {
  readonly lot: Use["lot"];
  readonly food: number;
  readonly massG: number;
  readonly uses: readonly { readonly batch: number; readonly massG: number }[];
  /** What is left of it; below a thousandth of a gram nothing. */
  readonly leftG: number;
  /** Last day it may be used, its opening reckoned in. */
  readonly lastDay: number;
  /** True where what is left is gone off before the plan ends. */
  readonly goesOff: boolean;
  /** True where no rest of it could be kept beyond the plan: what no sitting eats goes to waste. */
  readonly perishes: boolean;
}

const DUST_G = 1e-3;

/** Every lot and every bought pack of a plan, with the batches it goes into. */
export function traceLots(problem: MenuProblem, plan: MenuPlan): LotTrace[] {
  const stock = problem.lots.map(({ food, massG, lastDay, opened, ...own }, at) => {
    const openedDays = own.openedDays ?? (problem.foods[food] as MenuFood).openedDays;
    return trace(problem, plan, { stock: at }, { food, massG, lastDay, openedDays, isOpen: opened });
  });
  const bought = plan.purchases.flatMap(({ trip, pack, count }, purchase) => {
    const facts = problem.packs[pack] as MenuPack;
    const life = problem.foods[facts.food] as MenuFood;
    const { day } = problem.trips[trip] as MenuTrip;
    return Array.from({ length: count }, (_, copy) =>
      trace(
        problem,
        plan,
        { purchase, copy },
        {
          food: facts.food,
          massG: facts.massG,
          lastDay: day + (facts.unopenedDays ?? life.unopenedDays),
          openedDays: facts.openedDays ?? life.openedDays,
          isOpen: false,
        },
      ),
    );
  });
  return [...stock, ...bought];
}

interface LotFacts {
  readonly food: number;
  readonly massG: number;
  readonly lastDay: number;
  readonly openedDays: number;
  readonly isOpen: boolean;
}

function trace(problem: MenuProblem, plan: MenuPlan, lot: Use["lot"], facts: LotFacts): LotTrace {
  const uses = plan.uses.filter((use) => isSame(use.lot, lot)).map(({ batch, massG }) => ({ batch, massG }));
  const days = uses.map(({ batch }) => problem.sittings[plan.batches[batch]?.sittings[0] as number]?.day ?? 0);
  const opens = !facts.isOpen && days.length > 0;
  const lastDay = opens ? Math.min(facts.lastDay, Math.min(...days) + facts.openedDays) : facts.lastDay;
  const rest = facts.massG - uses.reduce((sum, { massG }) => sum + massG, 0);
  const leftG = rest < DUST_G ? 0 : rest;
  const goesOff = lastDay < problem.days - 1;
  return {
    lot,
    food: facts.food,
    massG: facts.massG,
    uses,
    leftG,
    lastDay,
    goesOff,
    perishes: goesOff && !isLasting(problem, facts.food),
  };
}

function isSame(a: Use["lot"], b: Use["lot"]): boolean {
  return "stock" in a
    ? "stock" in b && a.stock === b.stock
    : "copy" in b && a.purchase === b.purchase && a.copy === b.copy;
}
