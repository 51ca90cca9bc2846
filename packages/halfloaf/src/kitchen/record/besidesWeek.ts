import { addDays, type CivilDate } from "../../quantity/index.ts";
import { type LotState, MASS_TOLERANCE_G } from "../../stores/index.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { boughtEarly } from "./boughtEarly.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";
import { toLot } from "./toKitchen.ts";

/**
 * Food lots at hand of which an accepted week knows nothing: found, bought besides its lists, or bought before the trip that it
 * has them on, which is told with their name in the week. Each is as it is now with what
 * was lost of it since the week began, which is a change of its own; what was used of it is gone. What has gone off, or is not
 * known to keep where it is, is of no use to a plan, and what was split off another lot is part of that one to the week. Nothing
 * comes to a week that is over.
 */
export function besidesWeek(state: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  const { lots, planned } = state;
  if (today > addDays(week.from, week.days - 1)) return [];
  const early = boughtEarly(state, week, today);
  const nameOf = new Map([...early].map(([name, lot]) => [lot, name]));
  const known = new Set(
    week.lots.flatMap(({ id }) => (early.has(id) ? [] : [id, planned.get(keyOfPlanned(week.from, id)) ?? id])),
  );
  return [...lots.values()].flatMap((lot): WeekChange[] => {
    const { id, origin, keeps, leftG, since, broughtMinor } = lot;
    const stock = toLot(lot, today);
    const isToUse = leftG > MASS_TOLERANCE_G && keeps?.ok === true && keeps.on >= today;
    if (stock === undefined || !isToUse || known.has(id) || origin === "split") return [];
    const lost = lossesIn(lot, week);
    const massG = leftG + lost.massG;
    const paidMinor = origin === "bought" && since >= week.from ? broughtMinor : 0;
    const name = nameOf.get(id);
    const came: WeekChange = {
      kind: "came",
      stock: { ...stock, massG, costMinor: stock.costMinor + lost.costMinor },
      paidMinor,
      ...(name !== undefined && { planned: name }),
    };
    return lost.massG > MASS_TOLERANCE_G ? [came, { kind: "off", lot: id, massG: lost.massG }] : [came];
  });
}

/** What was thrown away or found missing of a lot on the days of a week until it ends. */
export function lossesIn(
  { outflows }: Pick<LotState, "outflows">,
  { from, days }: Pick<WeekPlan, "from" | "days">,
  until: CivilDate = addDays(from, days - 1),
): { readonly massG: number; readonly costMinor: number } {
  const lost = outflows.filter(
    ({ kind, on }) => (kind === "wasted" || kind === "missing") && on >= from && on <= until,
  );
  return {
    massG: lost.reduce((sum, out) => sum + out.massG, 0),
    costMinor: lost.reduce((sum, out) => sum + out.costMinor, 0),
  };
}
