import type { EuAllergen, UsAllergen } from "../../food/index.ts";
import type { DeclaredItem } from "../../intake/index.ts";

/** Words of the costing card. */
export interface CardWords {
  readonly title: (dish: string) => string;
  readonly forPortions: (kitchen: string, portions: number, day: string) => string;
  readonly makings: string;
  readonly food: string;
  readonly purchased: string;
  readonly refuse: string;
  readonly edible: string;
  readonly cost: string;
  readonly from: string;
  readonly insteadOf: (food: string) => string;
  readonly seenAt: (pack: string, shop: string, day: string | undefined) => string;
  readonly atHand: string;
  readonly noPrice: string;
  readonly total: string;
  readonly atLeast: (text: string) => string;
  readonly plates: (list: string) => string;
  readonly yield: (portion: string, all: string, factor: string) => string;
  readonly notCosted: (foods: string) => string;
  readonly optional: (foods: string) => string;
  readonly estimated: string;
  readonly shops: string;
  readonly shop: string;
  readonly portion: string;
  readonly allPortions: string;
  readonly elsewhere: string;
  readonly cheapest: string;
  readonly nothing: string;
  readonly drivers: string;
  readonly work: string;
  readonly minutes: (handsOn: string, elapsed: string, ahead: string | undefined) => string;
  readonly declaration: string;
  readonly per100G: string;
  readonly perPortion: (mass: string) => string;
  readonly item: (item: DeclaredItem) => string;
  readonly ofWhich: (item: DeclaredItem) => string;
  readonly unknown: string;
  readonly declarationNote: (isRetained: boolean) => string;
  readonly ingredients: string;
  readonly contains: (allergens: string) => string;
  readonly allergens: string;
  /** The allergens of each list of the law. */
  readonly allergenNames: {
    readonly eu: Readonly<Record<EuAllergen, string>>;
    readonly us: Readonly<Record<UsAllergen, string>>;
  };
  readonly allergensByLaw: (law: "eu" | "us") => string;
  readonly none: string;
  readonly possibly: (allergens: string) => string;
  readonly keeps: (fridgeDays: number, freezerDays: number | undefined, authority: string) => string;
}
