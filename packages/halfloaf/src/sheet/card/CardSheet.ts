import type { Dish } from "../../dish/index.ts";
import type { EuAllergen, UsAllergen } from "../../food/index.ts";
import type { DeclarationLine } from "../../intake/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Named, SheetCaution } from "../day/DaySheet.ts";

/** One making for all portions of the card; masses in g at the middle of the amount, money in whole minor units. */
export interface CardLine {
  readonly food: Named;
  readonly cut?: string;
  /** The food it takes the place of, which is not to be had here. */
  readonly insteadOf?: Named;
  readonly purchasedG: number;
  /** Bought but not eaten. */
  readonly refuseG: number;
  readonly edibleG: number;
  /** Its part of the total; absent where no price is known. */
  readonly costMinor?: number;
  /** The pack whose price was taken; absent for stock at hand and where no price is known. */
  readonly pack?: { readonly label: string; readonly shop: Named; readonly seenOn?: CivilDate };
  /** The allergens that EU law asks to be emphasised; empty where there are none. */
  readonly allergens: readonly EuAllergen[];
}

/** What the dish costs with all of it bought at one shop, as far as that sells it. */
export interface ShopCost {
  readonly shop: Named;
  readonly totalMinor: number;
  /** The dearest portion. */
  readonly portionMinor: number;
  /** Makings that this shop does not sell, reckoned at the cheapest price anywhere. */
  readonly elsewhere: readonly Named[];
  readonly estimate: boolean;
}

/** A line of the declaration; `atLeast` where a part of it is not known. */
export interface CardDeclarationLine extends DeclarationLine {
  readonly atLeast: boolean;
}

/** The allergens of a dish by a list of the law. */
export interface CardAllergens<Allergen> {
  readonly sure: readonly Allergen[];
  /** Only in what is optional, or may take the place of a making. */
  readonly possible: readonly Allergen[];
}

/** The costing card of a dish as it is printed: plain data, the lines the parts of the total by largest remainder. */
export interface CardSheet {
  readonly kitchen: string;
  readonly currency: string;
  /** Day of the prices. */
  readonly on: CivilDate;
  readonly dish: Named;
  readonly portions: number;
  readonly lines: readonly CardLine[];
  /** Makings whose mass is not known, which are in no sum. */
  readonly unknown: readonly Named[];
  readonly optional: readonly Named[];
  /** Exactly the sum of the lines. */
  readonly totalMinor: number;
  /** What each portion costs, the dearest first; they add up to the total. */
  readonly platesMinor: readonly number[];
  /** True where an amount or a price is not known: the total then is the least it costs. */
  readonly atLeast: boolean;
  readonly estimate: boolean;
  /** Sums of the lines in g. */
  readonly purchasedG: number;
  readonly edibleG: number;
  /** Yield: cooked mass of a portion, as the dish's author states it, and of all portions over what went in. */
  readonly portionMassG: number;
  readonly yieldFactor: number;
  readonly shops: readonly ShopCost[];
  /** Whole minutes, rounded up. */
  readonly minutes: { readonly handsOn: number; readonly elapsed: number; readonly ahead: number };
  readonly declaration: readonly CardDeclarationLine[];
  /** True where losses of cooking were taken off. */
  readonly retained: boolean;
  readonly allergens: { readonly eu: CardAllergens<EuAllergen>; readonly us: CardAllergens<UsAllergen> };
  readonly keeps: Dish["keeps"];
  readonly cautions: readonly SheetCaution[];
}
