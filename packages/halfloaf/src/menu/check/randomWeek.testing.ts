import fc from "fast-check";
import type {
  MenuBound,
  MenuCooking,
  MenuDish,
  MenuFood,
  MenuLimits,
  MenuLot,
  MenuPack,
  MenuProblem,
  MenuProfile,
  MenuSitting,
  MenuTrip,
  MenuWish,
} from "../problem.ts";

/** Draws single values; the same draws give the same week, so that a failing week shrinks. */
interface Draw {
  whole(min: number, max: number): number;
  chance(percent: number): boolean;
  pick<Item>(items: readonly Item[]): Item;
  /** Items in their order, each with the chance; never none. */
  some<Item>(items: readonly Item[], percent: number): Item[];
}

function createDraw(g: fc.GeneratorValue): Draw {
  const whole = (min: number, max: number): number => g(fc.integer, { min, max });
  const chance = (percent: number): boolean => whole(0, 99) >= 100 - percent;
  const pick = <Item>(items: readonly Item[]): Item => items[whole(0, items.length - 1)] as Item;
  const some = <Item>(items: readonly Item[], percent: number): Item[] => {
    const sure = whole(0, items.length - 1);
    return items.filter((_, at) => at === sure || chance(percent));
  };
  return { whole, chance, pick, some };
}

const LASTS = 9999;

/**
 * Small weeks with all that a problem can say: lasting and dated foods, several shops, offers, limits, packs for sale
 * on some days or reduced to clear, opened and unopened stock that must be used or is gone off, sittings packed or
 * without heat, eaters who are not always there, loads, cold stores, hard and soft bounds.
 */
export function arbitraryWeek(): fc.Arbitrary<MenuProblem> {
  return fc.gen().map((g) => drawWeek(createDraw(g)));
}

function drawWeek(draw: Draw): MenuProblem {
  const days = draw.whole(2, 5);
  const perDay = draw.whole(1, 3);
  const periodsPerDay = draw.chance(50) ? perDay : 1;
  const periodDay = Array.from({ length: days * periodsPerDay }, (_, period) => Math.floor(period / periodsPerDay));
  const shopCount = draw.whole(1, 3);
  const goods = Array.from({ length: draw.whole(2, 6) }, (_, food) => drawFood(draw, food, days, shopCount));
  const foods = goods.map(({ food }) => food);
  const own = Array.from({ length: draw.whole(4, 9) }, (_, dish) => drawDish(draw, dish, foods.length));
  const dishes = own.map((dish, at) =>
    at % 2 === 1 && draw.chance(40) ? joinFamily(dish, own, 2 * draw.whole(0, (at - 1) / 2)) : dish,
  );
  const seats = Array.from({ length: draw.whole(1, 3) }, () => ({
    eaters: draw.whole(1, 2),
    size: draw.pick([1, 1, 0.75, 1.25]),
  }));
  const attended = Array.from({ length: days * perDay }, () => draw.some(seats, 75));
  const boxes = perDay > 1 && draw.chance(20);
  const sittings = attended.map((present, index): MenuSitting => {
    const day = Math.floor(index / perDay);
    const slot = index % perDay;
    const packed = draw.chance(12);
    return {
      day,
      period: periodsPerDay === 1 ? day : index,
      portions: present.reduce((sum, { eaters, size }) => sum + eaters * size, 0),
      minutes: draw.pick([45, 60, 90]),
      heat: !packed && draw.chance(85),
      packed,
      dishes: draw.some(
        dishes.map((_, dish) => dish),
        80,
      ),
      variety: slot === perDay - 1,
      ...(index % perDay === 0 && boxes && { putBy: true as const }),
      ...(draw.chance(20) && { keep: { dish: draw.whole(0, dishes.length - 1), changeMinor: draw.whole(0, 90) } }),
    };
  });
  const isShared = draw.chance(40);
  const seated = isShared ? drawTogether(draw, sittings, perDay) : sittings;
  const trips = drawTrips(draw, periodDay, shopCount);
  const profiles = seats.map((seat) => drawProfile(draw, seat.eaters, days, attended, sittings, seat));
  return {
    days,
    periodDay,
    foods,
    dishes,
    sittings: seated,
    lots: foods.flatMap((_, index) => drawLots(draw, index, days)),
    packs: goods.flatMap(({ packs }, food) => packs.map((pack) => ({ ...pack, food }))),
    shopCount,
    trips,
    components: ["fibre", "salt"],
    profiles,
    limits: drawLimits(draw, days, sittings),
    worth: {
      minuteMinor: draw.whole(0, 5),
      leftoverMinutes: draw.whole(0, 3),
      ...(draw.chance(70) && { vesselMinutes: draw.whole(1, 4) }),
      shortfallFirstMinor: 100 * draw.whole(0, 4),
      shortfallRestMinor: 100 * draw.whole(4, 12),
      shortfallKnee: draw.pick([0.05, 0.1, 0.2]),
    },
    ...(draw.chance(40) && { wishes: drawWishes(draw, dishes.length, sittings) }),
    ...(isShared && { cookings: drawCookings(draw, dishes.length, sittings) }),
    ...(isShared && draw.chance(30) && { isApart: true as const }),
  };
}

/** Some sittings of a day are cooked for at once. */
function drawTogether(draw: Draw, sittings: readonly MenuSitting[], perDay: number): MenuSitting[] {
  return sittings.map((sitting, k) =>
    k % perDay < 2 && draw.chance(85) ? { ...sitting, together: sitting.day } : sitting,
  );
}

function drawCookings(draw: Draw, dishCount: number, sittings: readonly MenuSitting[]): MenuCooking[] {
  const dishes = Array.from({ length: dishCount }, (_, dish) => dish);
  return Array.from({ length: draw.whole(0, 6) }, (): MenuCooking => {
    const few = draw.some(dishes, 15).slice(0, 3);
    return {
      dishes: few.map((dish) => ({ dish, portions: draw.pick(sittings).portions })),
      elapsedMinutes: draw.whole(20, 100),
      washMinutes: draw.whole(0, 9),
    };
  });
}

function drawFood(draw: Draw, index: number, days: number, shopCount: number): { food: MenuFood; packs: MenuPack[] } {
  const lasting = draw.chance(35);
  const openedDays = lasting ? LASTS : draw.whole(0, 3);
  const unopenedDays = lasting ? LASTS : openedDays + draw.whole(1, 5);
  const packs = Array.from({ length: draw.whole(1, 3) }, (_, pack) =>
    // The first pack is mostly for sale without conditions, so that few weeks are impossible.
    drawPack(draw, index, days, shopCount, unopenedDays, pack === 0 && draw.chance(80)),
  );
  // A gram kept is worth less than a gram at its cheapest, or buying to keep would pay.
  const cheapest = Math.min(
    ...packs.map(({ massG, priceMinor, offer }) => (offer ? offer.priceMinor / offer.count : priceMinor) / massG),
  );
  const creditMinorPerG = (cheapest * draw.whole(0, 90)) / 100;
  const food: MenuFood = {
    id: `food-${index}`,
    openedDays,
    unopenedDays,
    creditMinorPerG,
    creditOpenedMinorPerG: (creditMinorPerG * draw.whole(0, 100)) / 100,
    wasteMinorPerG: (cheapest * draw.whole(0, 50)) / 100,
    ...(draw.chance(40)
      ? { cold: { place: draw.pick(["fridge", "freezer"] as const), litresPerG: draw.pick([0.001, 0.0015]) } }
      : {}),
  };
  return { food, packs };
}

function drawPack(
  draw: Draw,
  food: number,
  days: number,
  shopCount: number,
  keepsDays: number,
  always: boolean,
): MenuPack {
  const priceMinor = draw.whole(30, 400);
  const count = draw.whole(2, 3);
  const fromDay = !always && draw.chance(25) ? draw.whole(0, days - 1) : 0;
  const offerMinor = Math.ceil((count * priceMinor * draw.whole(60, 95)) / 100);
  const rises = draw.chance(30);
  const rise = (minor: number) => (rises ? { highMinor: minor + draw.whole(0, Math.ceil(minor / 4)) } : {});
  return {
    food,
    shop: draw.whole(0, shopCount - 1),
    massG: 50 * draw.whole(2, 16),
    priceMinor,
    ...rise(priceMinor),
    limit: !always && draw.chance(35) ? draw.whole(1, 4) : LASTS,
    fromDay,
    toDay: !always && draw.chance(25) ? draw.whole(fromDay, days - 1) : LASTS,
    ...(!always && draw.chance(25) ? { unopenedDays: draw.whole(0, Math.min(3, keepsDays)) } : {}),
    ...(draw.chance(10) && keepsDays < LASTS ? { openedDays: draw.whole(3, 6) } : {}),
    ...(draw.chance(25) ? { offer: { count, priceMinor: offerMinor, ...rise(offerMinor) } } : {}),
  };
}

function drawDish(draw: Draw, index: number, foodCount: number): MenuDish {
  // The first dishes can be served anywhere, so that few weeks are impossible from the start.
  const easy = index < 2;
  const foods = draw.some(
    Array.from({ length: foodCount }, (_, food) => food),
    25,
  );
  return {
    id: `dish-${index}`,
    makings: foods.map((food) => ({ food, massG: draw.pick([10, 35, 60, 80, 120, 200.5]) })),
    handsOn: { fixed: draw.whole(0, 15), perPortion: draw.whole(0, 3) },
    elapsed: { fixed: draw.whole(0, 25), perPortion: draw.whole(0, 4) },
    ...(draw.chance(50) && {
      loads: Array.from({ length: draw.whole(1, 2) }, () => ({
        fixed: draw.whole(0, 20),
        perPortion: draw.whole(0, 2),
      })),
    }),
    ...(draw.chance(70) && { vessels: draw.whole(0, 4) }),
    keepsDays: draw.whole(0, 3),
    needsHeat: !easy && draw.chance(50),
    servedCold: easy || draw.chance(60),
    travels: easy || draw.chance(60),
    main: draw.whole(0, 3),
    maxUses: easy ? 15 : draw.whole(1, 8),
    dislikeMinor: draw.whole(0, 40),
    energyKj: 100 * draw.whole(20, 30),
    components: [draw.whole(0, 12), draw.whole(0, 3)],
    ...(draw.chance(60) && { putBy: { creditMinor: draw.whole(0, 60), litres: draw.pick([0.2, 0.5]) } }),
  };
}

/** One dish in another way: it counts for variety and uses like the one it stands for. */
function joinFamily(dish: MenuDish, all: readonly MenuDish[], family: number): MenuDish {
  const { maxUses, main } = all[family] as MenuDish;
  return { ...dish, family, maxUses, main };
}

function drawLots(draw: Draw, index: number, days: number): MenuLot[] {
  return Array.from({ length: draw.pick([0, 0, 1, 1, 2]) }, (): MenuLot => {
    const lastDay = draw.chance(40) ? LASTS : draw.whole(-1, days + 1);
    const mustUse = lastDay >= 0 && draw.chance(7);
    const opened = draw.chance(50);
    const openedDays = !opened && draw.chance(30) ? { openedDays: draw.whole(0, 4) } : {};
    return { food: index, massG: draw.pick([30, 75, 150, 400, 612.5]), opened, ...openedDays, lastDay, mustUse };
  });
}

function drawTrips(draw: Draw, periodDay: readonly number[], shopCount: number): MenuTrip[] {
  const trips = periodDay.flatMap((day, period) =>
    Array.from({ length: shopCount }, (_, shop): MenuTrip[] => {
      if (!(period === 0 ? draw.chance(95) : draw.chance(30))) return [];
      const free = draw.chance(25);
      return [
        {
          shop,
          day,
          period,
          costMinor: free ? 0 : draw.whole(0, 200),
          minutes: free ? 0 : draw.whole(0, 30),
          ...(draw.chance(40) ? { carryG: 500 * draw.whole(3, 14) } : {}),
        },
      ];
    }).flat(),
  );
  return trips;
}

function drawProfile(
  draw: Draw,
  eaters: number,
  days: number,
  attended: readonly (readonly unknown[])[],
  sittings: readonly MenuSitting[],
  seat: unknown,
): MenuProfile {
  const own = attended.flatMap((present, index) => (present.includes(seat) ? [index] : []));
  const energyKj = Array.from(
    { length: days },
    (_, day) => 2500 * own.filter((index) => sittings[index]?.day === day).length,
  );
  const bounds = Array.from({ length: draw.whole(0, 3) }, (): MenuBound => {
    const component = draw.whole(0, 1);
    const kind = draw.pick(["at-least", "at-most"] as const);
    const hard = draw.chance(20);
    const perSitting = (component === 0 ? 6 : 1.5) * (hard ? (kind === "at-least" ? 0.7 : 1.3) : 1);
    return { component, kind, amount: Math.max(0.5, perSitting * own.length), hard };
  });
  const leastEnergyKj = energyKj.map((wanted) => wanted * draw.pick([0, 0.7, 0.95]));
  return { eaters, sittings: own, energyKj, leastEnergyKj, bounds };
}

function drawWishes(draw: Draw, dishCount: number, sittings: readonly MenuSitting[]): MenuWish[] {
  const all = sittings.map((_, sitting) => sitting);
  const dishes = Array.from({ length: dishCount }, (_, dish) => dish);
  return Array.from({ length: draw.whole(1, 3) }, (): MenuWish => {
    const [few, end] = [draw.some(dishes, 40), draw.pick(["least", "most", "both"] as const)];
    const least = draw.whole(1, 2);
    return {
      dishes: few,
      sittings: draw.chance(50) ? all : draw.some(all, 40),
      ...(end !== "most" && { least }),
      ...(end !== "least" && { most: least + draw.whole(0, 2) }),
      ...(draw.chance(50) && { missMinor: draw.whole(0, 300) }),
    };
  });
}

function drawLimits(draw: Draw, days: number, sittings: readonly MenuSitting[]): MenuLimits {
  const largest = Math.max(...sittings.map(({ portions }) => portions));
  return {
    ...(draw.chance(30) ? { budgetMinor: 250 * draw.whole(4, 24) } : {}),
    handsOnMinutes: Array.from({ length: days }, () => draw.whole(40, 150)),
    energyTolerance: draw.pick([0.1, 0.2, 0.3, 0.5]),
    distinct: draw.whole(1, 2),
    mainMax: draw.whole(2, 5),
    batchPortions: largest * draw.whole(1, 4),
    maxTrips: draw.whole(2, 4),
    ...(draw.chance(30) ? { fridgeLitres: draw.whole(1, 6) } : {}),
    ...(draw.chance(30) ? { freezerLitres: draw.whole(1, 6) } : {}),
  };
}
