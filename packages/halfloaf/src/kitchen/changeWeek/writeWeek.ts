import type { MenuPlan } from "../../menu/index.ts";
import { splitByLargestRemainder } from "../../quantity/index.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { ChangedKitchenWeek } from "./changeWeek.ts";
import { idOfLot } from "./restoreWeek.ts";

type LotAccount = WeekPlan["lots"][number];

/**
 * A plan of a changed week with names, dates and sums. What went off before its time is booked as waste, at what the lot
 * cost by mass, so that the accounts still add up to the smallest coin.
 */
export function writeWeek(
  kitchen: Kitchen,
  tables: Tables,
  { stated, week }: Pick<ChangedKitchenWeek, "stated" | "week">,
  plan: MenuPlan,
  search: WeekPlan["search"],
): WeekPlan {
  const written = toWeekPlan(kitchen, tables, stated, plan, search);
  const lossOf = new Map(week.losses.map(({ lot, massG }) => [idOfLot(lot, stated, week.plan), massG]));
  const lots = written.lots.map((lot) => (lossOf.has(lot.id) ? throwAway(lot, lossOf.get(lot.id)) : lot));
  const sum = (of: (lot: LotAccount) => number): number => lots.reduce((total, lot) => total + of(lot), 0);
  const boxedMinor = (written.boxes ?? []).reduce((total, { costMinor }) => total + costMinor, 0);
  const accounts = {
    ...written.accounts,
    wasteMinor: sum(({ wastedMinor }) => wastedMinor),
    carryOverMinor: sum(({ leftMinor }) => leftMinor) + boxedMinor,
  };
  return { ...written, lots, accounts };
}

/** Grams of what is left of a lot become waste; all of them where no mass is named. */
function throwAway(lot: LotAccount, massG = lot.leftG): LotAccount {
  const lostG = Math.min(massG, lot.leftG);
  if (lostG <= 0) return lot;
  const restG = lot.leftG - lostG;
  const [lostMinor = 0, leftMinor = 0] = splitByLargestRemainder(lot.leftMinor, [lostG, restG]);
  return {
    ...lot,
    wastedG: lot.wastedG + lostG,
    wastedMinor: lot.wastedMinor + lostMinor,
    leftG: restG,
    leftMinor,
  };
}
