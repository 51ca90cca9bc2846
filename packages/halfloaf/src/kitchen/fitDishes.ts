import type { Dish, Making } from "../dish/index.ts";
import { chooseVariants, type FoodMerits, weighFoods } from "./chooseVariants.ts";
import type { DatedSitting } from "./datedSittings.ts";
import { type ChosenFoods, type FittedDish, findLackingKit, type Unfit, weighChosen } from "./fitDish.ts";
import { findKeptWay, type KeptCooking } from "./keptWays.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** The dishes of a kitchen as its sittings can have them. */
export interface FittedDishes {
  /** A dish stands here several times, one after the other, where it may be cooked with other foods or for other eaters. */
  readonly fitted: readonly FittedDish[];
  /** For each sitting, positions in `fitted`. */
  readonly servedAt: readonly (readonly number[])[];
  /** Dishes that no sitting can have, and why. */
  readonly unfit: readonly { readonly dish: string; readonly why: Unfit }[];
}

/** What a kept week asks of the dishes, besides what its kitchen does. */
export interface KeptFitting {
  readonly cooked: readonly KeptCooking[];
  /** Dishes that stand at a sitting in the way they were cooked, whatever its eaters take now; absent = none. */
  readonly servedAt?: (sitting: DatedSitting) => readonly KeptCooking[];
  /** The eaters as they are now, where that is otherwise than the kitchen has it: dishes are there for both. */
  readonly eatersNow?: readonly Eater[];
}

/**
 * Fits every dish to every sitting's eaters, in the ways that are worth cooking it (see `chooseVariants`) and those in which
 * it was cooked in a kept week; sittings whose eaters lead to the same foods share one fitted dish.
 */
export function fitDishes(
  kitchen: Kitchen,
  tables: Tables,
  sittings: readonly DatedSitting[],
  isToBeHad: (food: string) => boolean,
  { cooked: kept, servedAt: servedBefore = () => [], eatersNow }: KeptFitting = { cooked: [] },
): FittedDishes {
  const fitted: FittedDish[] = [];
  const servedAt: number[][] = sittings.map(() => []);
  const unfit: { dish: string; why: Unfit }[] = [];
  const days = 1 + Math.max(0, ...sittings.map(({ day }) => day));
  const merits = weighFoods(kitchen, tables, days);
  const companies = [kitchen.eaters, ...(eatersNow === undefined ? [] : [eatersNow])].map((eaters) =>
    sittings.map(({ eaters: ids }) => toCompany(ids, eaters)),
  );
  for (const dish of tables.dishes) {
    if (kitchen.refusedDishes.includes(dish.id)) continue;
    const variants = new DishVariants(dish, { kitchen, tables, isToBeHad, merits, kept }, fitted);
    sittings.forEach((sitting, k) => {
      if (sitting.putBy || !dish.fits.includes(sitting.kind)) return;
      const ways = companies.flatMap((of) => variants.find(of[k] as Company));
      servedAt[k]?.push(...new Set([...ways, ...variants.findKept(servedBefore(sitting))]));
    });
    if (variants.why && !variants.isFitted) unfit.push({ dish: dish.id, why: variants.why });
  }
  return { fitted, servedAt, unfit };
}

/** Those who sit down together, and a key that tells them from others. */
interface Company {
  readonly key: string;
  readonly eaters: readonly Eater[];
}

function toCompany(ids: readonly string[], all: readonly Eater[]): Company {
  const eaters = ids.flatMap((id) => all.find((eater) => eater.id === id) ?? []);
  return { key: JSON.stringify(eaters.map(({ diet, avoids }) => [diet, avoids])), eaters };
}

/** What dishes are fitted to. */
interface Fitting {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly isToBeHad: (food: string) => boolean;
  readonly merits: FoodMerits;
  readonly kept: readonly KeptCooking[];
}

/** The ways in which one dish is cooked, each found once. */
class DishVariants {
  /** Why some company can't have the dish. */
  why: Unfit | undefined;
  isFitted = false;
  private readonly dish: Dish;
  private readonly fitting: Fitting;
  private readonly fitted: FittedDish[];
  private readonly lacking: Unfit | undefined;
  private readonly byCompany = new Map<string, readonly number[]>();
  private readonly byFoods = new Map<string, number | undefined>();

  constructor(dish: Dish, fitting: Fitting, fitted: FittedDish[]) {
    this.dish = dish;
    this.fitting = fitting;
    this.fitted = fitted;
    this.lacking = findLackingKit(dish, fitting.kitchen.kit);
  }

  /** Positions in `fitted` of the dish for these eaters, added where they are new; none where they can't have it. */
  find({ key, eaters }: Company): readonly number[] {
    const known = this.byCompany.get(key) ?? this.fit(eaters);
    this.byCompany.set(key, known);
    return known;
  }

  /** Positions in `fitted` of the dish as it was cooked, for whomever; none where it was not, or can't be had so any more. */
  findKept(cooked: readonly KeptCooking[]): readonly number[] {
    return this.place(this.waysKept(cooked, []));
  }

  private fit(eaters: readonly Eater[]): readonly number[] {
    const { dish, fitting } = this;
    const { tables, isToBeHad, merits, kept } = fitting;
    const variants = this.lacking ?? chooseVariants(dish, tables.foods, eaters, isToBeHad, merits);
    if ("reason" in variants) {
      this.why = variants;
      return [];
    }
    return this.place([...variants, ...this.waysKept(kept, eaters)]);
  }

  private waysKept(cooked: readonly KeptCooking[], eaters: readonly Eater[]): ChosenFoods[] {
    const { dish, fitting } = this;
    const { tables, isToBeHad } = fitting;
    return cooked.flatMap((cooking) => {
      if (cooking.dish !== dish.id || cooking.putBy !== undefined) return [];
      return findKeptWay(dish, tables.foods, eaters, isToBeHad, cooking) ?? [];
    });
  }

  private place(ways: readonly ChosenFoods[]): readonly number[] {
    const { dish } = this;
    const { tables } = this.fitting;
    const positions = ways.flatMap((chosen) => {
      const key = keyOf(dish.makings, chosen);
      const at = this.byFoods.has(key) ? this.byFoods.get(key) : this.add(weighChosen(dish, tables.foods, chosen));
      this.byFoods.set(key, at);
      return at === undefined ? [] : [at];
    });
    return [...new Set(positions)];
  }

  private add(one: FittedDish | Unfit): number | undefined {
    if ("reason" in one) {
      this.why = one;
      return undefined;
    }
    this.isFitted = true;
    return this.fitted.push(one) - 1;
  }
}

/** The foods chosen, those to taste among them: they too are on the plate. */
function keyOf(makings: readonly Making[], chosen: ChosenFoods): string {
  return makings.map((making) => chosen.get(making)?.food ?? "").join(" ");
}
