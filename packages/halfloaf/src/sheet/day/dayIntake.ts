import { type Choose, nutrientsOfDish } from "../../dish/index.ts";
import { NUTRIENT_NAMES } from "../../food/index.ts";
import { assess, type KnownIntakes, referencesFor } from "../../intake/index.ts";
import { chooseUsed, type EaterShare, eaterShares, type WeekPlan } from "../../kitchen/index.ts";
import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { DayIntake } from "./DaySheet.ts";

type Batch = WeekPlan["batches"][number];

/**
 * What each eater of the kitchen gets on one day, against the reference intakes for the part of the day's energy that is
 * eaten here. Guests are left out, since nothing is known of them.
 */
export function dayIntake(source: WeekSource, date: CivilDate): DayIntake[] {
  const { week, kitchen } = source;
  const day = daysBetween(week.from, date);
  const sittings = week.sittings.map((sitting) => ({
    ...sitting,
    day: daysBetween(week.from, sitting.date),
    minutes: sitting.elapsedMinutes,
  }));
  return eaterShares(kitchen, sittings, week.days).flatMap((share): DayIntake[] => {
    const eaten = share.sittings.flatMap((k) => (sittings[k]?.day === day ? [sittings[k].batch] : []));
    return eaten.length === 0 ? [] : [intakeOf(source, share, eaten, share.dayShare[day] ?? 0)];
  });
}

function intakeOf(source: WeekSource, share: EaterShare, batches: readonly number[], hereShare: number): DayIntake {
  const { kitchen, tables, names } = source;
  const { intakes, energyKj } = sumIntakes(source, batches, share.portions);
  const { id } = share.eater;
  const base = { eater: { id, name: names.eater(id) }, energyKj, hereShare: Math.min(1, hereShare) };
  if (share.needKj === undefined) return { ...base, lines: [], referred: share.referred ?? "unknown" };
  const found = referencesFor(share.eater, kitchen.authorities.intake, tables.references, share.needKj);
  if (found.kind !== "references") return { ...base, lines: [], referred: found.reason };
  const lines = assess(intakes, found.references, hereShare).map(
    ({ reference: { component, kind, source: from }, wanted, amount, knownShare, verdict }) => ({
      component,
      kind,
      reference: wanted,
      ...(amount !== undefined && { amount }),
      knownShare,
      verdict,
      source: from,
    }),
  );
  return { ...base, energyNeedKj: share.needKj * hereShare, lines };
}

/** Sums over the plates of one eater: so many standard portions of each batch. */
function sumIntakes(
  { week, tables }: WeekSource,
  batches: readonly number[],
  portions: number,
): { intakes: KnownIntakes; energyKj: number } {
  const plates = batches.flatMap((at) => {
    const batch = week.batches[at];
    const dish = tables.dishes.find(({ id }) => id === batch?.dish);
    return batch === undefined || dish === undefined
      ? []
      : [nutrientsOfDish(dish, tables.foods, tables.retain, chooseEaten(batch))];
  });
  const massG = plates.reduce((sum, { edibleG }) => sum + edibleG, 0);
  const figures = NUTRIENT_NAMES.map((name) => {
    const known = plates.map(({ perPortion, edibleG }) => ({ ...perPortion[name], edibleG }));
    const amounts = known.flatMap(({ amount }) => (amount === undefined ? [] : [amount]));
    const knownG = known.reduce((sum, { knownShare, edibleG }) => sum + knownShare * edibleG, 0);
    const amount = amounts.length === 0 ? undefined : amounts.reduce((sum, each) => sum + each, 0) * portions;
    return [name, { amount, knownShare: massG > 0 ? Math.min(1, knownG / massG) : 0 }] as const;
  });
  const greens = plates.reduce((sum, { vegetablesFruitG }) => sum + vegetablesFruitG, 0) * portions;
  const intakes = { ...Object.fromEntries(figures), vegetablesFruitG: { amount: greens, knownShare: 1 } };
  return { intakes, energyKj: Object.fromEntries(figures).energyKj?.amount ?? 0 };
}

/** What went into a batch; an optional making is left out unless it was used. */
function chooseEaten(batch: Batch): Choose {
  const used = new Set(batch.uses.map(({ food }) => food));
  const choose = chooseUsed(batch);
  return (making) => {
    const chosen = choose(making);
    return making.optional && !(chosen !== undefined && used.has(chosen.food)) ? undefined : chosen;
  };
}
