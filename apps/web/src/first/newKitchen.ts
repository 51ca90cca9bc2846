import { SITTING_KINDS } from "halfloaf/dish";
import { checkKitchen, type Kitchen, parseKitchen, type Tables, type WeeklySitting } from "halfloaf/kitchen";
import { massOfPack, type Pack, type Shop } from "halfloaf/price";
import type { CivilDate, Issue, Parsed } from "halfloaf/quantity";
import type { StarterShops } from "../kitchen/loadStarter.ts";
import type { Answers, SittingAnswer, SittingKind } from "./Answers.ts";

const WEEK = [1, 2, 3, 4, 5];
const WEEKEND = [6, 7];

/** Shares of a day's energy in percent; our own choice, no source. */
const SHARES_PCT: Readonly<Record<SittingKind, number>> = { morning: 23, midday: 32, between: 12, evening: 33 };

/** Of all minutes at hand on a day, so much may need both hands; our own choice, no source. */
const HANDS_ON_SHARE = 0.6;

/** What a minute is worth to begin with, in minor units; our own choice, no source. */
const MINUTE_MINOR = 3;

/** What a kWh costs to begin with, in minor units; like starter prices an estimate, from memory of Europe in the 2020s. */
const KWH_MINOR = 30;

interface Beginning {
  readonly name: string;
  readonly shopNames: readonly string[];
  readonly day: CivilDate;
}

/** A kitchen of these answers with starter shops, packs and cupboard, or all that keeps it from being one. */
export function newKitchen(
  answers: Answers,
  starter: StarterShops,
  tables: Tables,
  { name, shopNames, day }: Beginning,
): Parsed<Kitchen> {
  const { eaters, kit, currency, budgetMinor, sittings, authority, english } = answers;
  const read = parseKitchen({
    format: "halfloaf-kitchen",
    version: 1,
    name,
    currency,
    startsOn: day,
    authorities: { intake: authority, safety: "strictest" },
    english,
    eaters,
    kit,
    shops: starter.shops.map((shop, at) => ({
      ...shop,
      name: shopNames[at] ?? shop.name,
      trip: withHands(shop.trip, eaters.length),
    })),
    packs: starter.packs,
    stores: listCupboard(answers, starter, tables, day),
    energySharePct: shareEnergy(sittings),
    sittings: SITTING_KINDS.flatMap((kind) =>
      listSittings(
        kind,
        sittings[kind],
        eaters.map(({ id }) => id),
      ),
    ),
    limits: {
      ...(budgetMinor !== undefined && { budgetMinor }),
      handsOnMinutes: listHandsOn(sittings),
      distinctEvenings: sittings.evening.isHere ? 4 : 0,
      tripsPerWeek: 3,
    },
    worth: { minuteMinor: MINUTE_MINOR },
    energyPrice: { kwhMinor: KWH_MINOR, estimate: true },
  });
  if (!read.ok) return read;
  const issues: Issue[] = checkKitchen(read.value, tables);
  return issues.length === 0 ? read : { ok: false, issues };
}

/** What one carries home in the starter shops, times those who could carry. */
function withHands(trip: Shop["trip"], eaters: number): Shop["trip"] {
  return trip.carryKg === undefined ? trip : { ...trip, carryKg: trip.carryKg * eaters };
}

function listSittings(kind: SittingKind, answer: SittingAnswer, eaters: readonly string[]): WeeklySitting[] {
  if (!answer.isHere) return [];
  const shared = { kind, eaters: [...eaters] };
  const week = { ...shared, on: WEEK, minutes: answer.weekMinutes, heat: true, packed: answer.isPacked };
  return [week, { ...shared, on: WEEKEND, minutes: answer.endMinutes, heat: true, packed: false }];
}

/** A main sitting that is not here is eaten elsewhere and keeps its share; what is between two is not eaten at all. */
function shareEnergy(sittings: Answers["sittings"]): Kitchen["energySharePct"] {
  const { between, ...main } = SHARES_PCT;
  return sittings.between.isHere ? { ...main, between } : main;
}

function listHandsOn(sittings: Answers["sittings"]): number[] {
  const here = Object.values(sittings).filter(({ isHere }) => isHere);
  const sum = (of: (answer: SittingAnswer) => number): number => here.reduce((all, answer) => all + of(answer), 0);
  const share = (minutes: number): number => Math.ceil((minutes * HANDS_ON_SHARE) / 5) * 5;
  const week = share(sum(({ weekMinutes }) => weekMinutes));
  const weekend = share(sum(({ endMinutes }) => endMinutes));
  return [...WEEK.map(() => week), ...WEEKEND.map(() => weekend)];
}

/** What is at hand, valued at the cheapest pack of it that is known. */
function listCupboard(
  { cupboard }: Answers,
  { cupboard: known, packs }: StarterShops,
  tables: Tables,
  day: CivilDate,
): unknown[] {
  return known
    .filter(({ food }) => cupboard.includes(food))
    .map(({ food, massG }) => ({
      id: `cupboard-${food}`,
      food,
      place: "dry-store",
      boughtOn: day,
      massG,
      costMinor: Math.round(massG * cheapestMinorPerG(food, packs, tables)),
    }));
}

function cheapestMinorPerG(food: string, packs: readonly Pack[], { foods }: Tables): number {
  const facts = foods.get(food);
  const prices = packs.flatMap((pack) => {
    const mass = pack.food === food && facts !== undefined ? massOfPack(pack, facts) : undefined;
    return mass?.ok ? [pack.priceMinor / mass.massG] : [];
  });
  return Math.min(...prices);
}
