import type { MenuPack, MenuProblem, MenuTrip, MenuWorth } from "../problem.ts";
import { isGoodAtEnd, type LotStory, priceGram } from "./openLots.ts";
import type { PlanMoney } from "./PlanMoney.ts";
import type { ReadBatch, ReadPlan } from "./readPlan.ts";
import { sumHandsOn } from "./sumHandsOn.ts";
import { missShare, sumComponent } from "./sumIntake.ts";

/** Reckons what the well-formed parts of a plan cost. */
export function reckonMoney(problem: MenuProblem, plan: ReadPlan, lots: readonly LotStory[]): PlanMoney {
  const tillMinor = payTills(problem, plan);
  const tripMinor = sum(plan.trips.map(({ trip }) => trip.costMinor));
  const minutes = sum(sumHandsOn(problem, plan)) + sum(plan.trips.map(({ trip }) => trip.minutes));
  const minutesMinor = problem.worth.minuteMinor * minutes;
  const dislikeMinor = sum(plan.batches.map(({ dish, leftovers }) => dish.dislikeMinor * (1 + leftovers.length)));
  const changesMinor = sum(plan.batches.map(priceChanges));
  const shortfallMinor = priceShortfalls(problem, plan);
  const wasteG = problem.foods.map((_, food) => weighWaste(problem, lots, food));
  const wastePenaltyMinor = sum(problem.foods.map((food, at) => food.wasteMinorPerG * (wasteG[at] as number)));
  const creditMinor = sum(lots.map((lot) => valueAtEnd(problem, lot) - lot.openingMinor));
  const charged =
    tillMinor + tripMinor + minutesMinor + dislikeMinor + changesMinor + shortfallMinor + wastePenaltyMinor;
  return {
    tillMinor,
    tripMinor,
    minutes,
    minutesMinor,
    dislikeMinor,
    changesMinor,
    shortfallMinor,
    wasteG,
    wastePenaltyMinor,
    creditMinor,
    totalMinor: charged - creditMinor,
  };
}

function priceChanges({ dishIndex, fresh, leftovers }: ReadBatch): number {
  const others = [fresh, ...leftovers].filter(({ sitting }) => sitting.keep && sitting.keep.dish !== dishIndex);
  return sum(others.map(({ sitting }) => sitting.keep?.changeMinor as number));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function payTills(problem: MenuProblem, plan: ReadPlan): number {
  const paid = problem.trips.flatMap((_: MenuTrip, trip) =>
    problem.packs.map((pack, index) => {
      const bought = plan.purchases.filter((one) => one.tripIndex === trip && one.packIndex === index);
      return payPacks(pack, sum(bought.map(({ count }) => count)));
    }),
  );
  return sum(paid);
}

/** The price of so many packs of a kind bought on one trip. An offer is taken only where it is to advantage. */
function payPacks({ priceMinor, offer }: MenuPack, count: number): number {
  if (offer === undefined || offer.priceMinor >= offer.count * priceMinor) return count * priceMinor;
  const times = Math.floor(count / offer.count);
  return times * offer.priceMinor + (count - times * offer.count) * priceMinor;
}

function priceShortfalls(problem: MenuProblem, plan: ReadPlan): number {
  const prices = problem.profiles.flatMap((profile) =>
    profile.bounds.map((bound) => {
      if (bound.hard) return 0;
      const share = missShare(bound, sumComponent(plan, profile, bound.component));
      return profile.eaters * priceShare(problem.worth, share);
    }),
  );
  return sum(prices);
}

/** Up to the knee a share has the first price, what is beyond it the second. */
function priceShare(worth: MenuWorth, share: number): number {
  const first = Math.min(share, worth.shortfallKnee);
  return worth.shortfallFirstMinor * first + worth.shortfallRestMinor * (share - first);
}

function weighWaste(problem: MenuProblem, lots: readonly LotStory[], food: number): number {
  const gone = lots.filter((lot) => lot.foodIndex === food && !isGoodAtEnd(problem, lot));
  return sum(gone.map(({ leftG }) => leftG));
}

function valueAtEnd(problem: MenuProblem, lot: LotStory): number {
  return isGoodAtEnd(problem, lot) ? lot.leftG * priceGram(problem, lot.foodIndex, lot.opened) : 0;
}
