import { needsHeat, nutrientsOfDish, type Retain } from "../dish/index.ts";
import type { Composition, Nutrient } from "../food/index.ts";
import type { MenuDish } from "../menu/index.ts";
import { sittingKitchen } from "./cooking/sittingKitchen.ts";
import { sittingMinutes } from "./cooking/sittingMinutes.ts";
import type { FittedDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** Components that a menu is steered by; the others are assessed but not planned for, as too few figures are known. */
export const PLANNED_COMPONENTS = [
  "proteinG",
  "fibreG",
  "saturatesG",
  "freeSugarsG",
  "sodiumMg",
  "potassiumMg",
  "calciumMg",
  "ironMg",
  "magnesiumMg",
  "zincMg",
  "vitaminARaeUg",
  "vitaminCMg",
  "vitaminEMg",
  "thiaminMg",
  "riboflavinMg",
  "niacinMg",
  "vitaminB6Mg",
  "folateDfeUg",
  "vitaminB12Ug",
  "vegetablesFruitG",
] as const satisfies readonly (Nutrient | "vegetablesFruitG")[];

const UNRATED_POINTS = 6;

/** A dish as the planner sees it, per standard portion, one that is put by without makings; `mains` and `foodAt` say what its indices mean. */
export function toMenuDish(
  one: FittedDish,
  kitchen: Kitchen,
  tables: Tables,
  foodAt: ReadonlyMap<string, number>,
  mains: readonly string[],
  days: number,
): MenuDish {
  const { dish, choose } = one;
  const massOf = new Map<number, number>();
  for (const { food, purchasedG } of one.putBy ? [] : one.makings) {
    const at = foodAt.get(food) as number;
    massOf.set(at, (massOf.get(at) ?? 0) + purchasedG.middle);
  }
  const nutrients = nutrientsOfDish(dish, tables.foods, tables.retain, choose);
  const points = kitchen.ratings.find(({ dish: id }) => id === dish.id)?.points ?? UNRATED_POINTS;
  const { handsOn, elapsed, loads, vessels } = sittingMinutes(dish, sittingKitchen(kitchen, tables), choose);
  return {
    id: dish.id,
    makings: [...massOf].map(([food, massG]) => ({ food, massG })),
    handsOn,
    elapsed,
    loads,
    vessels: vessels.reduce((sum, { count }) => sum + count, 0),
    // What is left over is kept in the fridge.
    keepsDays: kitchen.kit.fridgeLitres > 0 ? dish.keeps.fridgeDays : 0,
    needsHeat: needsHeat(dish),
    servedCold: dish.served.includes("cold"),
    travels: dish.travels,
    main: mains.indexOf(dish.main),
    maxUses: kitchen.limits.usesPerDish * Math.ceil(days / 7),
    dislikeMinor: kitchen.worth.dislikePointMinor * (10 - points),
    energyKj: nutrients.perPortion.energyKj.amount ?? 0,
    components: PLANNED_COMPONENTS.map((name) =>
      name === "vegetablesFruitG" ? nutrients.vegetablesFruitG : (nutrients.perPortion[name].amount ?? 0),
    ),
  };
}

/** The same retention, each food and code reckoned once: dishes share them. */
export function rememberRetained(retain: Retain): Retain {
  const known = new Map<string, Map<Composition, Composition>>();
  return (raw, code) => {
    const ofCode = known.get(code) ?? new Map<Composition, Composition>();
    known.set(code, ofCode);
    const left = ofCode.get(raw) ?? retain(raw, code);
    ofCode.set(raw, left);
    return left;
  };
}
