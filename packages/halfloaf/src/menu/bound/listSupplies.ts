import { isLasting, type MenuFood, type MenuLot, type MenuPack, type MenuProblem } from "../problem.ts";

/**
 * One way to have grams of a food: a lot of the start, a pack for sale, or a bundle of an offer.
 *
 * A unit that is opened costs `priceMinor` and what is left of it is worth at most `leftMinorPerG` at the end
 * (negative where it must go off). So n units of which g grams are used cost at least
 *
 *     n (priceMinor - leftMinorPerG massG) + leftMinorPerG g
 *
 * For a lot the price is its opening value given up. A lot that stands there in any case has `given`.
 */
export interface Supply {
  readonly food: number;
  readonly massG: number;
  /** What opening a unit costs when nothing of it is used: price less the worth of a whole unit left. */
  readonly unitMinor: number;
  readonly leftMinorPerG: number;
  /** Paid at the till for a unit where prices come out high. */
  readonly tillMinor: number;
  /** Most units. */
  readonly most: number;
  readonly given: boolean;
  /** Grams that must be used, of a lot. */
  readonly mustUseG: number;
  readonly pack?: number;
  /** Packs in a unit; 0 for a lot. */
  readonly packs: number;
  /** Trips it can be bought on; empty for a lot. */
  readonly trips: readonly number[];
}

/** The supplies of all foods, and what is spent on stock whatever the plan does. */
export interface Supplies {
  readonly ofFood: readonly (readonly Supply[])[];
  readonly constantMinor: number;
}

/** Lists for each food how it can be had. */
export function listSupplies(problem: MenuProblem): Supplies {
  const ofFood = problem.foods.map((): Supply[] => []);
  let constantMinor = 0;
  for (const lot of problem.lots) {
    const { supply, untouchedMinor } = fromLot(problem, lot);
    constantMinor += untouchedMinor;
    ofFood[lot.food]?.push(supply);
  }
  problem.packs.forEach((pack, index) => {
    for (const supply of fromPack(problem, pack, index)) ofFood[pack.food]?.push(supply);
  });
  return { ofFood, constantMinor };
}

function creditOf(problem: MenuProblem, food: number, opened: boolean): number {
  const { creditMinorPerG, creditOpenedMinorPerG } = problem.foods[food] as MenuFood;
  return isLasting(problem, food) || !opened ? creditMinorPerG : creditOpenedMinorPerG;
}

/**
 * A lot's supply with what it costs if nothing is done with it. The unit's price is relative to that: an opened or
 * lasting lot is given, an unopened one costs what opening it loses.
 */
function fromLot(problem: MenuProblem, lot: MenuLot): { supply: Supply; untouchedMinor: number } {
  const { food, massG } = lot;
  const { wasteMinorPerG } = problem.foods[food] as MenuFood;
  const keeps = lot.lastDay >= problem.days - 1;
  const openingMinor = massG * creditOf(problem, food, lot.opened);
  const untouchedLeft = keeps ? creditOf(problem, food, lot.opened) : -wasteMinorPerG;
  const openedLeft = keeps ? Math.max(creditOf(problem, food, true), -wasteMinorPerG) : -wasteMinorPerG;
  const unitMinor = massG * (untouchedLeft - openedLeft);
  const given = lot.opened || unitMinor === 0;
  const usable = lot.lastDay >= 0 ? massG : 0;
  const supply: Supply = {
    food,
    massG: usable,
    unitMinor: given ? 0 : unitMinor,
    leftMinorPerG: openedLeft,
    tillMinor: 0,
    most: 1,
    given,
    mustUseG: lot.mustUse ? Math.min(usable, Math.max(0, massG - 0.001)) : 0,
    packs: 0,
    trips: [],
  };
  return { supply, untouchedMinor: openingMinor - untouchedLeft * massG };
}

/** Packs in a unit, what it costs and what the budget counts for it. */
interface Priced {
  readonly packs: number;
  readonly priceMinor: number;
  readonly highMinor: number;
}

function fromPack(problem: MenuProblem, pack: MenuPack, index: number): Supply[] {
  const food = problem.foods[pack.food] as MenuFood;
  const trips = problem.trips.flatMap((trip, t) =>
    trip.shop === pack.shop && trip.day >= pack.fromDay && trip.day <= pack.toDay ? [t] : [],
  );
  if (trips.length === 0 || pack.limit < 1) return [];
  const until =
    Math.max(...trips.map((t) => problem.trips[t]?.day as number)) + (pack.unopenedDays ?? food.unopenedDays);
  const keeps = until >= problem.days - 1;
  const leftMinorPerG = keeps
    ? Math.max(creditOf(problem, pack.food, true), -food.wasteMinorPerG)
    : -food.wasteMinorPerG;
  const unopened = keeps ? creditOf(problem, pack.food, false) : 0;
  const unit = ({ packs, priceMinor, highMinor }: Priced, left: number): Supply => ({
    food: pack.food,
    massG: pack.massG * packs,
    unitMinor: priceMinor - left * pack.massG * packs,
    leftMinorPerG: left,
    tillMinor: highMinor,
    most: Math.floor(pack.limit / packs),
    given: false,
    mustUseG: 0,
    pack: index,
    packs,
    trips,
  });
  return priceUnits(pack, unopened > Math.max(0, leftMinorPerG)).flatMap((priced) => {
    const { packs, priceMinor } = priced;
    if (pack.limit < packs) return [];
    const opened = unit(priced, leftMinorPerG);
    // Packs bought to be kept unopened pay where their credit is above their price.
    if (unopened <= Math.max(0, leftMinorPerG) || priceMinor >= unopened * pack.massG * packs) return [opened];
    return [opened, { ...unit(priced, unopened), massG: 0 }];
  });
}

/**
 * Single packs and bundles with their prices. Where the rest of a bundle is worth more unopened than opened, a pack of
 * it may be had for its share of the bundle's price: some of the bundle opened, the others kept.
 */
function priceUnits(pack: MenuPack, keepsWorth: boolean): Priced[] {
  const { priceMinor, highMinor = priceMinor, offer } = pack;
  const single = { packs: 1, priceMinor, highMinor };
  if (offer === undefined || offer.priceMinor >= offer.count * priceMinor || offer.count > pack.limit) return [single];
  const bundle = { packs: offer.count, priceMinor: offer.priceMinor, highMinor: offer.highMinor ?? offer.priceMinor };
  if (!keepsWorth) return [single, bundle];
  const least = Math.min(highMinor, bundle.highMinor / offer.count);
  return [{ packs: 1, priceMinor: offer.priceMinor / offer.count, highMinor: least }];
}
