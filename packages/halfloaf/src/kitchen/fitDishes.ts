import type { Dish, Making } from "../dish/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import { type ChosenFoods, chooseFoods, type FittedDish, findLackingKit, type Unfit, weighChosen } from "./fitDish.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** The dishes of a kitchen as its sittings can have them. */
export interface FittedDishes {
  /** A dish may stand here twice, cooked with other foods for other eaters. */
  readonly fitted: readonly FittedDish[];
  /** For each sitting, positions in `fitted`. */
  readonly servedAt: readonly (readonly number[])[];
  /** Dishes that no sitting can have, and why. */
  readonly unfit: readonly { readonly dish: string; readonly why: Unfit }[];
}

/** Fits every dish to every sitting's eaters; sittings whose eaters lead to the same foods share one fitted dish. */
export function fitDishes(
  kitchen: Kitchen,
  tables: Tables,
  sittings: readonly DatedSitting[],
  isToBeHad: (food: string) => boolean,
): FittedDishes {
  const fitted: FittedDish[] = [];
  const servedAt: number[][] = sittings.map(() => []);
  const unfit: { dish: string; why: Unfit }[] = [];
  const companies = sittings.map(({ eaters }) => eaters.join(" "));
  for (const dish of tables.dishes) {
    if (kitchen.refusedDishes.includes(dish.id)) continue;
    const variants = new DishVariants(dish, kitchen, tables, isToBeHad, fitted);
    sittings.forEach((sitting, k) => {
      if (!dish.fits.includes(sitting.kind)) return;
      const at = variants.find(companies[k] as string, sitting.eaters);
      if (at !== undefined) servedAt[k]?.push(at);
    });
    if (variants.why && !variants.isFitted) unfit.push({ dish: dish.id, why: variants.why });
  }
  return { fitted, servedAt, unfit };
}

/** The ways in which one dish is cooked, each found once. */
class DishVariants {
  /** Why some company can't have the dish. */
  why: Unfit | undefined;
  isFitted = false;
  private readonly dish: Dish;
  private readonly kitchen: Kitchen;
  private readonly tables: Tables;
  private readonly isToBeHad: (food: string) => boolean;
  private readonly fitted: FittedDish[];
  private readonly lacking: Unfit | undefined;
  private readonly byCompany = new Map<string, number | undefined>();
  private readonly byFoods = new Map<string, number | undefined>();

  constructor(
    dish: Dish,
    kitchen: Kitchen,
    tables: Tables,
    isToBeHad: (food: string) => boolean,
    fitted: FittedDish[],
  ) {
    this.dish = dish;
    this.kitchen = kitchen;
    this.tables = tables;
    this.isToBeHad = isToBeHad;
    this.fitted = fitted;
    this.lacking = findLackingKit(dish, kitchen.kit);
  }

  /** Position in `fitted` of the dish for these eaters, added where it is new; undefined where they can't have it. */
  find(company: string, eaters: readonly string[]): number | undefined {
    if (this.byCompany.has(company)) return this.byCompany.get(company);
    const at = this.fit(eaters);
    this.byCompany.set(company, at);
    return at;
  }

  private fit(ids: readonly string[]): number | undefined {
    const { dish, kitchen, tables } = this;
    const eaters = ids.map((id) => kitchen.eaters.find((eater) => eater.id === id) as Eater);
    const chosen = this.lacking ?? chooseFoods(dish, tables.foods, eaters, this.isToBeHad);
    if ("reason" in chosen) {
      this.why = chosen;
      return undefined;
    }
    const key = keyOf(dish.makings, chosen);
    if (this.byFoods.has(key)) return this.byFoods.get(key);
    const at = this.add(weighChosen(dish, tables.foods, chosen));
    this.byFoods.set(key, at);
    return at;
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
