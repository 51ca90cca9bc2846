import { checkPlan } from "../check/index.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuPack, MenuProblem, MenuTrip } from "../problem.ts";
import { type FoundPlan, searchAgain } from "./searchAgain.ts";
import { traceLots } from "./traceLots.ts";
import type { ReasonWish } from "./whyDish.ts";

/** The same menu with a food bought in some packs only. */
export interface PackOption {
  /** Packs of the food that are bought, with their numbers. */
  readonly packs: readonly { readonly pack: number; readonly count: number }[];
  /** Shops gone to for it that the plan does not go to, by their index. */
  readonly extraShops: readonly number[];
  /** What the tills ask for this food (minor units). */
  readonly tillMinor: number;
  /** Grams of the bought packs that are left good at the end, and that go off. */
  readonly leftG: number;
  readonly wasteG: number;
  /** What the whole plan costs more than as it is (minor units), trips and what is left reckoned in. */
  readonly extraMinor: number;
  readonly found: FoundPlan;
}

/** Why a food is bought in the packs that it is bought in. */
export interface WhyPack {
  readonly food: number;
  /** As the plan buys it. */
  readonly chosen: PackOption;
  /** With each other kind of pack alone, cheapest plan first. */
  readonly others: readonly PackOption[];
  /** Kinds of pack with which alone no plan with this menu was found, and the first thing in the way. */
  readonly impossible: readonly { readonly pack: number; readonly hindrance: PackHindrance }[];
}

/** No trip of the plan goes there while it is sold; the first comes after the food is first bought for; another limit. */
export type PackHindrance = "no-trip" | "too-late" | "limits";

/** With its dishes fixed there is little to search: only the trips. */
const USUAL_MOVES = 600;

/** The menu of a plan as it is, with one food bought in each other size or shop. Undefined where it is not bought. */
export function whyPack(
  problem: MenuProblem,
  plan: MenuPlan,
  food: number,
  { seed, moves = USUAL_MOVES }: ReasonWish,
): WhyPack | undefined {
  const bought = new Set(plan.purchases.map(({ pack }) => pack).filter((pack) => foodOf(problem, pack) === food));
  if (bought.size === 0) return undefined;
  const { money } = checkPlan(problem, plan);
  const base = { plan, moneyMinor: money.totalMinor };
  const chosen = toOption(problem, food, base, base);
  const kinds = problem.packs.flatMap((pack, at) => (pack.food === food ? [at] : []));
  const others: PackOption[] = [];
  const impossible: { pack: number; hindrance: PackHindrance }[] = [];
  for (const kind of kinds) {
    if (bought.size === 1 && bought.has(kind)) continue;
    const found = buyOnly(problem, plan, food, kind, { seed, moves });
    if (found) others.push(toOption(problem, food, base, found));
    else impossible.push({ pack: kind, hindrance: findHindrance(problem, plan, food, kind) });
  }
  return { food, chosen, others: others.sort((a, b) => a.extraMinor - b.extraMinor), impossible };
}

function foodOf(problem: MenuProblem, pack: number): number | undefined {
  return problem.packs[pack]?.food;
}

/** The plan's menu where of a food only one kind of pack is for sale, all other foods as ever. */
function buyOnly(
  problem: MenuProblem,
  plan: MenuPlan,
  food: number,
  kind: number,
  wish: { readonly seed: number; readonly moves: number },
): FoundPlan | undefined {
  const kept = problem.packs.flatMap((pack, at) => (pack.food !== food || at === kind ? [at] : []));
  const dishOf = new Map(plan.batches.flatMap(({ dish, sittings }) => sittings.map((k) => [k, dish] as const)));
  const sittings = problem.sittings.map((sitting, k) => {
    const dish = dishOf.get(k);
    return dish === undefined ? sitting : { ...sitting, dishes: [dish] };
  });
  const packs = kept.map((at) => problem.packs[at] as MenuPack);
  const { best } = searchAgain({ ...problem, sittings, packs }, { start: plan, ...wish });
  if (best === undefined) return undefined;
  const purchases = best.purchases.map((one) => ({ ...one, pack: kept[one.pack] as number }));
  const found = { ...best, purchases };
  const { faults, money } = checkPlan(problem, found);
  return faults.length > 0 ? undefined : { plan: found, moneyMinor: money.totalMinor };
}

function findHindrance(problem: MenuProblem, plan: MenuPlan, food: number, kind: number): PackHindrance {
  const { shop, fromDay, toDay } = problem.packs[kind] as MenuPack;
  const trips = plan.trips.map((trip) => problem.trips[trip] as MenuTrip);
  const periods = trips.flatMap((trip) =>
    trip.shop === shop && trip.day >= fromDay && trip.day <= toDay ? [trip.period] : [],
  );
  if (periods.length === 0) return "no-trip";
  const bought = traceLots(problem, plan).filter((lot) => lot.food === food && "purchase" in lot.lot);
  const cooked = bought.flatMap(({ uses }) =>
    uses.map(({ batch }) => problem.sittings[plan.batches[batch]?.sittings[0] as number]?.period ?? 0),
  );
  return Math.min(...periods) > Math.min(...cooked) ? "too-late" : "limits";
}

function toOption(problem: MenuProblem, food: number, base: FoundPlan, found: FoundPlan): PackOption {
  const own = found.plan.purchases.filter(({ pack }) => foodOf(problem, pack) === food);
  const counts = new Map<number, number>();
  for (const { pack, count } of own) counts.set(pack, (counts.get(pack) ?? 0) + count);
  const rests = traceLots(problem, found.plan).filter((lot) => lot.food === food && "purchase" in lot.lot);
  const weigh = (isWaste: boolean): number =>
    rests.reduce((sum, { leftG, goesOff }) => (goesOff === isWaste ? sum + leftG : sum), 0);
  const others = found.plan.purchases.filter(({ pack }) => foodOf(problem, pack) !== food);
  return {
    packs: [...counts].map(([pack, count]) => ({ pack, count })),
    extraShops: [...shopsOf(problem, found.plan)].filter((shop) => !shopsOf(problem, base.plan).has(shop)),
    tillMinor: tillOf(problem, found.plan) - tillOf(problem, { ...found.plan, purchases: others, uses: [] }),
    leftG: weigh(false),
    wasteG: weigh(true),
    extraMinor: found.moneyMinor - base.moneyMinor,
    found,
  };
}

/** What the tills ask; a plan without its uses is no plan, but pays the same. */
function tillOf(problem: MenuProblem, plan: MenuPlan): number {
  return checkPlan(problem, plan).money.tillMinor;
}

function shopsOf(problem: MenuProblem, plan: MenuPlan): Set<number> {
  return new Set(plan.trips.map((trip) => problem.trips[trip]?.shop ?? -1));
}
