import { familyOf, type MenuPack, type MenuProblem, type MenuTrip, type MenuWorth } from "../problem.ts";
import { priceWishes } from "./checkWishes.ts";
import { isGoodAtEnd, type LotStory, priceGram } from "./openLots.ts";
import type { PlanMoney } from "./PlanMoney.ts";
import type { ReadBatch, ReadPlan } from "./readPlan.ts";
import { sumHandsOn } from "./sumHandsOn.ts";
import { missShare, sumComponent } from "./sumIntake.ts";

/** Reckons what the well-formed parts of a plan cost. */
export function reckonMoney(problem: MenuProblem, plan: ReadPlan, lots: readonly LotStory[]): PlanMoney {
  const tillMinor = payTills(problem, plan, payPacks);
  const highTillMinor = payTills(problem, plan, payHigh);
  const tripMinor = sum(plan.trips.map(({ trip }) => trip.costMinor));
  const minutes = sum(sumHandsOn(problem, plan)) + sum(plan.trips.map(({ trip }) => trip.minutes));
  const vessels = sum(plan.batches.map(({ dish }) => dish.vessels ?? 0));
  const washUpMinutes = vessels * (problem.worth.vesselMinutes ?? 0);
  const minutesMinor = problem.worth.minuteMinor * (minutes + washUpMinutes);
  const dislikeMinor = sum(plan.batches.map(({ dish, leftovers }) => dish.dislikeMinor * (1 + leftovers.length)));
  const changesMinor = sum(plan.batches.map((batch) => priceChanges(problem, batch)));
  const shortfallMinor = priceShortfalls(problem, plan);
  const wishesMinor = priceWishes(problem, plan);
  const putByMinor = sum(plan.batches.map(valuePutBy));
  const wasteG = problem.foods.map((_, food) => weighWaste(problem, lots, food));
  const wastePenaltyMinor = sum(problem.foods.map((food, at) => food.wasteMinorPerG * (wasteG[at] as number)));
  const creditMinor = sum(lots.map((lot) => valueAtEnd(problem, lot) - lot.openingMinor));
  const charged =
    tillMinor +
    tripMinor +
    minutesMinor +
    dislikeMinor +
    changesMinor +
    shortfallMinor +
    wishesMinor +
    wastePenaltyMinor;
  return {
    tillMinor,
    highTillMinor,
    tripMinor,
    minutes,
    washUpMinutes,
    minutesMinor,
    dislikeMinor,
    changesMinor,
    shortfallMinor,
    wishesMinor,
    putByMinor,
    wasteG,
    wastePenaltyMinor,
    creditMinor,
    totalMinor: charged - creditMinor - putByMinor,
  };
}

function priceChanges(problem: MenuProblem, { dishIndex, fresh, leftovers }: ReadBatch): number {
  const family = familyOf(problem, dishIndex);
  const others = [fresh, ...leftovers].filter(
    ({ sitting }) => sitting.keep && familyOf(problem, sitting.keep.dish) !== family,
  );
  return sum(others.map(({ sitting }) => sitting.keep?.changeMinor as number));
}

function valuePutBy({ dish, fresh, leftovers }: ReadBatch): number {
  const boxes = [fresh, ...leftovers].filter(({ sitting }) => sitting.putBy);
  return (dish.putBy?.creditMinor ?? 0) * sum(boxes.map(({ sitting }) => sitting.portions));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function payTills(problem: MenuProblem, plan: ReadPlan, pay: (pack: MenuPack, count: number) => number): number {
  const paid = problem.trips.flatMap((_: MenuTrip, trip) =>
    problem.packs.map((pack, index) => {
      const bought = plan.purchases.filter((one) => one.tripIndex === trip && one.packIndex === index);
      return pay(pack, sum(bought.map(({ count }) => count)));
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

/** The same where prices come out high; whether an offer is to advantage is decided by the prices expected. */
function payHigh({ priceMinor, highMinor = priceMinor, offer }: MenuPack, count: number): number {
  if (offer === undefined || offer.priceMinor >= offer.count * priceMinor) return count * highMinor;
  const times = Math.floor(count / offer.count);
  return times * (offer.highMinor ?? offer.priceMinor) + (count - times * offer.count) * highMinor;
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
