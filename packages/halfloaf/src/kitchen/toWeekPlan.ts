import { type Dish, nutrientsOfDish } from "../dish/index.ts";
import { NUTRIENT_NAMES, type Nutrient } from "../food/index.ts";
import { assess, type KnownIntakes, referencesFor } from "../intake/index.ts";
import type { MenuPlan } from "../menu/index.ts";
import { limitOfPack, type Pack, priceOfCount } from "../price/index.ts";
import { addDays } from "../quantity/index.ts";
import { cautionsOf } from "../safety/index.ts";
import { accountLots, type LotThrough } from "./accountLots.ts";
import { countVessels } from "./cooking/countVessels.ts";
import { listTogether, stateTogether } from "./cooking/stateTogether.ts";
import { countWishes } from "./countWishes.ts";
import type { EaterShare } from "./eaterShares.ts";
import { listTakenOtherwise } from "./keptWays.ts";
import type { Kitchen } from "./kitchen.ts";
import { withoutEmptyBoxes } from "./puttingBy.ts";
import { payRisen } from "./standRise.ts";
import { PUT_BY_CAUTION } from "./statePutBy.ts";
import type { Tables } from "./tables.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";
import { portionsOf, toPlates } from "./toPlates.ts";
import type { WeekPlan } from "./weekPlan.ts";

type Cooking = WeekPlan["batches"][number];
type Box = NonNullable<WeekPlan["boxes"]>[number];

/**
 * A plan of `menu/` with names, dates and sums, ready to be kept as a file, printed or shown. What it cooks at once takes the
 * minutes of its order of work, whether the search knew of it or not.
 */
export function toWeekPlan(
  kitchen: Kitchen,
  tables: Tables,
  searched: KitchenProblem,
  found: MenuPlan,
  search: WeekPlan["search"],
): WeekPlan {
  const plan = withoutEmptyBoxes(searched.problem, found);
  const stated = stateTogether(searched, plan, kitchen, tables);
  const lots = accountLots(stated, plan);
  const batches = cookTogether(
    plan.batches.map((_, batch) => toCooking(stated, plan, lots, batch)),
    { kitchen, stated, plan },
  );
  const { sittings, boxes } = toPlates(stated, plan, batches);
  const trips = plan.trips.map((trip) => toTrip(kitchen, stated, plan, trip));
  const lotAccounts = lots.map((lot) => toLotAccount(stated, lot));
  const wishes = countWishes(kitchen, stated, found);
  return {
    format: "halfloaf-week",
    version: 1,
    kitchen: kitchen.name,
    currency: kitchen.currency,
    from: stated.from,
    days: stated.problem.days,
    search,
    sittings,
    batches,
    trips,
    lots: lotAccounts,
    ...(boxes.length > 0 && { boxes }),
    accounts: addUp(stated, plan, batches, trips, lotAccounts, boxes),
    intake: stated.shares.map((share) => toIntake(kitchen, tables, stated, plan, share)),
    cautions: cautionsOfPlan(kitchen, tables, stated, plan),
    ...(wishes.length > 0 && { wishes }),
  };
}

function toCooking(stated: KitchenProblem, plan: MenuPlan, lots: readonly LotThrough[], batch: number): Cooking {
  const { dish, sittings } = plan.batches[batch] as MenuPlan["batches"][number];
  const facts = stated.problem.dishes[dish];
  const first = stated.sittings[sittings[0] as number];
  if (!facts || !first) throw new RangeError(`batch ${batch} names a dish or sitting that is not the problem's`);
  const portions = portionsOf(stated, sittings);
  const fitted = stated.dishes[dish];
  const putBy = fitted?.putBy;
  const taken = fitted === undefined ? [] : listTakenOtherwise(fitted);
  const uses = lots.flatMap((lot) =>
    lot.uses
      .filter((use) => use.batch === batch)
      .map((use) => ({
        lot: lot.id,
        food: stated.foods[lot.food]?.id ?? "",
        massG: use.massG,
        costMinor: use.costMinor,
      })),
  );
  return {
    dish: facts.id,
    date: first.date,
    kind: first.kind,
    portions,
    handsOnMinutes: facts.handsOn.fixed + facts.handsOn.perPortion * portions,
    elapsedMinutes: facts.elapsed.fixed + facts.elapsed.perPortion * portions,
    vessels: facts.vessels ?? 0,
    ...(putBy && { putBy }),
    ...(taken.length > 0 && { taken }),
    uses,
    costMinor: uses.reduce((sum, use) => sum + use.costMinor, 0),
  };
}

/**
 * The cookings with what each has of the one that it shares with others: the minutes of all of it, a part of the washing
 * between them, and the vessels that it adds to those of the batches before it.
 */
function cookTogether(
  alone: readonly Cooking[],
  { kitchen, stated, plan }: { readonly kitchen: Kitchen; readonly stated: KitchenProblem; readonly plan: MenuPlan },
): Cooking[] {
  const cooked = [...alone];
  for (const { batches, cooking } of listTogether(stated, plan)) {
    const heated: Dish[] = [];
    for (const at of batches) {
      const own = alone[at] as Cooking;
      const before = countVessels(heated, kitchen.kit);
      const fitted = stated.dishes[plan.batches[at]?.dish as number];
      if (fitted !== undefined && own.putBy === undefined) heated.push(fitted.dish);
      cooked[at] = {
        ...own,
        ...(cooking && {
          handsOnMinutes: own.handsOnMinutes + cooking.washMinutes / batches.length,
          elapsedMinutes: cooking.elapsedMinutes,
        }),
        vessels: own.putBy === undefined ? countVessels(heated, kitchen.kit) - before : (own.vessels ?? 0),
        together: batches.filter((other) => other !== at),
      };
    }
  }
  return cooked;
}

function toTrip(kitchen: Kitchen, stated: KitchenProblem, plan: MenuPlan, trip: number): WeekPlan["trips"][number] {
  const made = stated.trips[trip];
  const facts = stated.problem.trips[trip];
  if (!made || !facts) throw new RangeError(`trip ${trip} is none of the problem's`);
  const lines = plan.purchases
    .filter((purchase) => purchase.trip === trip)
    .map(({ pack, count }) =>
      toLine(stated.packs[pack] as Pack, count, (stated.problem.packs[pack]?.massG ?? 0) * count),
    );
  const sections = [...new Set(kitchen.packs.filter((pack) => pack.shop === made.shop).map((pack) => pack.section))];
  lines.sort((a, b) => sections.indexOf(a.section) - sections.indexOf(b.section));
  return {
    shop: made.shop,
    date: made.date,
    lines,
    tillMinor: lines.reduce((sum, line) => sum + line.priceMinor, 0),
    massG: lines.reduce((sum, line) => sum + line.massG, 0),
    fareMinor: facts.costMinor,
    minutes: facts.minutes,
  };
}

function toLine(pack: Pack, count: number, massG: number): WeekPlan["trips"][number]["lines"][number] {
  const limit = limitOfPack(pack);
  if (limit !== undefined && count > limit) throw new RangeError(`${count} of ${pack.id}, of which there are ${limit}`);
  const priceMinor = priceOfCount(pack, count);
  return {
    pack: pack.id,
    food: pack.food,
    label: pack.brand === undefined ? pack.label : `${pack.brand} ${pack.label}`,
    section: pack.section,
    count,
    massG,
    priceMinor,
    savedMinor: pack.priceMinor * count - priceMinor,
    estimate: pack.estimate === true,
    ...(pack.seen && { seenOn: pack.seen.on }),
  };
}

function toLotAccount(stated: KitchenProblem, lot: LotThrough): WeekPlan["lots"][number] {
  const usedMinor = lot.uses.reduce((sum, use) => sum + use.costMinor, 0);
  return {
    id: lot.id,
    food: stated.foods[lot.food]?.id ?? "",
    from: lot.from,
    massG: lot.massG,
    costMinor: lot.costMinor,
    ...(lot.openedDay !== undefined && { openedOn: addDays(stated.from, lot.openedDay) }),
    keepsUntil: addDays(stated.from, lot.lastDay),
    usedG: lot.uses.reduce((sum, use) => sum + use.massG, 0),
    usedMinor,
    wastedG: lot.wastedG,
    wastedMinor: lot.wastedMinor,
    leftG: lot.leftG,
    leftMinor: lot.leftMinor,
  };
}

function addUp(
  stated: KitchenProblem,
  plan: MenuPlan,
  batches: readonly Cooking[],
  trips: WeekPlan["trips"],
  lots: WeekPlan["lots"],
  boxes: readonly Box[],
): WeekPlan["accounts"] {
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const boxedMinor = sum(boxes.map(({ costMinor }) => costMinor));
  const lines = trips.flatMap((trip) => trip.lines);
  const vessels = sum(batches.map((batch) => batch.vessels ?? 0));
  return {
    openingMinor: sum(lots.filter((lot) => lot.from === "stores").map((lot) => lot.costMinor)),
    tillMinor: sum(trips.map((trip) => trip.tillMinor)),
    estimatedMinor: sum(lines.filter((line) => line.estimate).map((line) => line.priceMinor)),
    ...(stated.standRisePct > 0 && {
      risen: { pct: stated.standRisePct, tillMinor: sum(plan.purchases.map((one) => payRisen(stated.problem, one))) },
    }),
    faresMinor: sum(trips.map((trip) => trip.fareMinor)),
    platesMinor: sum(batches.map((batch) => batch.costMinor)) - boxedMinor,
    wasteMinor: sum(lots.map((lot) => lot.wastedMinor)),
    carryOverMinor: sum(lots.map((lot) => lot.leftMinor)) + boxedMinor,
    ...(stated.problem.limits.budgetMinor !== undefined && { budgetMinor: stated.problem.limits.budgetMinor }),
    handsOnMinutes: sum(batches.map((batch) => batch.handsOnMinutes)),
    washUp: { vessels, minutes: vessels * (stated.problem.worth.vesselMinutes ?? 0) },
  };
}

/** What one eater gets over the plan: their portions of every sitting they attend, each dish as it is cooked for them. */
function toIntake(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  plan: MenuPlan,
  share: EaterShare,
): WeekPlan["intake"][number] {
  const { days } = stated.problem;
  const wholeDays = share.dayShare.reduce((total, part) => total + part, 0);
  const eaten = plan.batches.flatMap(({ dish, sittings }) =>
    sittings.filter((k) => share.sittings.includes(k)).map(() => dish),
  );
  const { intakes, energyKj } = sumIntakes(tables, stated, eaten, share.portions);
  const base = { eater: share.eater.id, energyKj: energyKj / days, hereShare: Math.min(1, wholeDays / days) };
  if (share.needKj === undefined) return { ...base, lines: [], referred: share.referred ?? "unknown" };
  const found = referencesFor(share.eater, kitchen.authorities.intake, tables.references, share.needKj);
  if (found.kind !== "references") return { ...base, lines: [], referred: found.reason };
  const here = { ...base, energyNeedKj: (share.needKj * wholeDays) / days };
  if (wholeDays <= 0) return { ...here, lines: [] };
  return {
    ...here,
    lines: assess(intakes, found.references, wholeDays).map(({ reference, verdict, amount, knownShare }) => ({
      component: reference.component,
      kind: reference.kind,
      basis: reference.basis,
      referencePerDay: reference.amountPerDay,
      ...(amount !== undefined && { knownPerDay: amount / wholeDays }),
      knownShare,
      verdict,
      source: reference.source,
    })),
  };
}

function sumIntakes(
  tables: Tables,
  stated: KitchenProblem,
  eaten: readonly number[],
  portions: number,
): { intakes: KnownIntakes; energyKj: number } {
  const sums = new Map<Nutrient | "vegetablesFruitG", { amount: number; known: number }>();
  let massG = 0;
  for (const at of eaten) {
    const fitted = stated.dishes[at];
    if (!fitted) continue;
    const plate = nutrientsOfDish(fitted.dish, tables.foods, tables.retain, fitted.choose);
    massG += plate.edibleG;
    const add = (name: Nutrient | "vegetablesFruitG", amount: number, knownG: number): void => {
      const sum = sums.get(name) ?? { amount: 0, known: 0 };
      sums.set(name, { amount: sum.amount + amount, known: sum.known + knownG });
    };
    for (const name of NUTRIENT_NAMES) {
      const { amount, knownShare } = plate.perPortion[name];
      if (amount !== undefined) add(name, amount * portions, knownShare * plate.edibleG);
    }
    add("vegetablesFruitG", plate.vegetablesFruitG * portions, plate.edibleG);
  }
  const intakes = Object.fromEntries(
    [...sums].map(([name, { amount, known }]) => [
      name,
      { amount, knownShare: massG > 0 ? Math.min(1, known / massG) : 0 },
    ]),
  );
  return { intakes, energyKj: sums.get("energyKj")?.amount ?? 0 };
}

/** The cautions of all dishes cooked, each said once with the dishes it is about. */
function cautionsOfPlan(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  plan: MenuPlan,
): WeekPlan["cautions"] {
  const said = new Map<string, WeekPlan["cautions"][number]>();
  for (const at of new Set(plan.batches.map((batch) => batch.dish))) {
    const fitted = stated.dishes[at];
    if (!fitted) continue;
    const { dish, choose, putBy } = fitted;
    const own = dish.cautions.map((text) => ({ code: "dish", text, authority: "the dish's author" }));
    for (const { code, text, authority } of [
      ...cautionsOf(dish, tables.foods, tables.safety, kitchen.authorities.safety, choose),
      ...own,
      ...(putBy ? [PUT_BY_CAUTION] : []),
    ]) {
      const key = `${code} ${text} ${authority}`;
      const known = said.get(key);
      if (known === undefined) said.set(key, { code, dishes: [dish.id], text, authority });
      // A dish that is cooked in two ways is one dish here.
      else if (!known.dishes.includes(dish.id)) known.dishes.push(dish.id);
    }
  }
  return [...said.values()];
}
