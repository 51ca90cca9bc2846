import type { MenuPlan } from "../../menu/index.ts";
import { addDays, type CivilDate, splitByLargestRemainder } from "../../quantity/index.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { ChangedKitchenWeek } from "./changeWeek.ts";
import { idOfLot } from "./restoreWeek.ts";

type LotAccount = WeekPlan["lots"][number];

/**
 * A plan of a changed week with names, dates and sums. What went off before its time is booked as waste, at what the lot
 * cost by mass, and so is what is left of a lot that ends within the week, so that the accounts still add up to the smallest coin.
 */
export function writeWeek(
  kitchen: Kitchen,
  tables: Tables,
  { before, stated, week }: ChangedKitchenWeek,
  plan: MenuPlan,
  search: WeekPlan["search"],
): WeekPlan {
  const written = toWeekPlan(kitchen, tables, stated, plan, search);
  const losses = week.losses.map((loss) => ({ ...loss, id: idOfLot(loss.lot, stated, week.plan) }));
  const lastDay = stated.problem.days - 1;
  const lots = written.lots.map((lot) =>
    losses
      .filter(({ id }) => id === lot.id)
      .reduce((left, loss) => {
        if (loss.lastDay === undefined) return throwAway(left, loss.massG);
        const ended = endOn(left, addDays(stated.from, loss.lastDay));
        return loss.lastDay < lastDay ? throwAway(ended) : ended;
      }, lot),
  );
  const sum = (of: (lot: LotAccount) => number): number => lots.reduce((total, lot) => total + of(lot), 0);
  const boxedMinor = (written.boxes ?? []).reduce((total, { costMinor }) => total + costMinor, 0);
  const accounts = {
    ...written.accounts,
    wasteMinor: sum(({ wastedMinor }) => wastedMinor),
    carryOverMinor: sum(({ leftMinor }) => leftMinor) + boxedMinor,
  };
  const { besides } = before.week;
  return { ...written, lots, ...(besides && { besides }), accounts };
}

function endOn(lot: LotAccount, date: CivilDate): LotAccount {
  return lot.keepsUntil !== undefined && lot.keepsUntil <= date ? lot : { ...lot, keepsUntil: date };
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
