import type { DishNutrients } from "../../dish/index.ts";
import { type Composition, NUTRIENT_NAMES, type Nutrient } from "../../food/index.ts";
import { type DeclaredItem, declare } from "../../intake/index.ts";
import type { CardDeclarationLine } from "./CardSheet.ts";

/** Components that a line of the declaration is reckoned from. */
const PARTS: Readonly<Record<DeclaredItem, readonly Nutrient[]>> = {
  energy: ["fatG", "carbohydrateAvailableG", "fibreG", "proteinG", "alcoholG"],
  fat: ["fatG"],
  saturates: ["saturatesG"],
  carbohydrate: ["carbohydrateAvailableG"],
  sugars: ["sugarsG"],
  fibre: ["fibreG"],
  protein: ["proteinG"],
  salt: ["sodiumMg"],
};

/** What counts as all of the mass, for sums of fractions. */
const WHOLE_SHARE = 1 - 1e-9;

/**
 * The declaration of a cooked dish per 100 g and per portion of so many g. A line of which a part is not known says so: its
 * figure is the least there is. Salt counts as such also where a making is to taste or of unknown mass.
 * **Source**: Regulation (EU) 1169/2011, Articles 30 to 33 and Annex XV.
 */
export function declareDish(nutrients: DishNutrients, portionMassG: number): CardDeclarationLine[] {
  const per100G = Object.fromEntries(
    NUTRIENT_NAMES.flatMap((name) => {
      const { amount } = nutrients.perPortion[name];
      return amount === undefined ? [] : [[name, (amount / portionMassG) * 100]];
    }),
  ) as Composition;
  return declare(per100G, { portionMassG }).map((line) => ({
    ...line,
    atLeast:
      PARTS[line.item].some((name) => nutrients.perPortion[name].knownShare < WHOLE_SHARE) ||
      (line.item === "salt" && nutrients.unknown.length > 0),
  }));
}
