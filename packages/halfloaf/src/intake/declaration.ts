import type { Composition } from "../food/nutrient.ts";
import { DECLARED_ITEMS, type DeclaredFigure, type DeclaredItem, roundDeclared } from "./roundDeclared.ts";

/** Energy in a gram, kJ and kcal each by itself. **Source**: Regulation (EU) 1169/2011, Annex XIV. */
export const ANNEX_XIV = {
  fat: { kjPerG: 37, kcalPerG: 9 },
  carbohydrate: { kjPerG: 17, kcalPerG: 4 },
  fibre: { kjPerG: 8, kcalPerG: 2 },
  protein: { kjPerG: 17, kcalPerG: 4 },
  alcohol: { kjPerG: 29, kcalPerG: 7 },
} as const;

/** Salt in g that a g of sodium stands for. **Source**: Regulation (EU) 1169/2011, Annex I. */
export const SALT_PER_SODIUM = 2.5;

/** Energy by the factors of Annex XIV, not rounded. */
export interface DeclaredEnergy {
  readonly energyKj: number;
  readonly energyKcal: number;
}

/** One figure of a line; energy has two. Absent = unknown. */
export type DeclaredCell =
  | { readonly unit: "g"; readonly figure: DeclaredFigure }
  | { readonly unit: "kJ/kcal"; readonly kj: DeclaredFigure; readonly kcal: DeclaredFigure };

/** One line of a declaration; saturates and sugars are of which of the line before. */
export interface DeclarationLine {
  readonly item: DeclaredItem;
  readonly ofWhich: boolean;
  readonly per100G?: DeclaredCell;
  /** Absent where unknown, and in every line where no portion was given. */
  readonly perPortion?: DeclaredCell;
}

/**
 * The nutrition declaration of a food or dish from its composition per 100 g, with a portion in g beside it.
 *
 * Lines stand in the order of Annex XV; fibre, which is voluntary, only where asked for. A line whose figure is unknown
 * stands without one; energy is unknown where one of its parts is. A portion is reckoned before anything is rounded.
 * Throws where the mass of the portion is not above zero.
 * **Source**: Regulation (EU) 1169/2011, Articles 30 to 35 and Annexes I, XIV, XV.
 */
export function declare(
  composition: Composition,
  options: { readonly portionMassG?: number; readonly withFibre?: boolean } = {},
): readonly DeclarationLine[] {
  const { portionMassG, withFibre = true } = options;
  if (portionMassG !== undefined && !(Number.isFinite(portionMassG) && portionMassG > 0)) {
    throw new RangeError(`${portionMassG} g is no portion`);
  }
  const portions = portionMassG === undefined ? undefined : portionMassG / 100;
  return DECLARED_ITEMS.filter((item) => withFibre || item !== "fibre").map((item) => {
    const per100G = declareCell(composition, item, 1);
    const perPortion = portions === undefined ? undefined : declareCell(composition, item, portions);
    return {
      item,
      ofWhich: item === "saturates" || item === "sugars",
      ...(per100G && { per100G }),
      ...(perPortion && { perPortion }),
    };
  });
}

/**
 * Energy by the factors of Annex XIV, kJ and kcal each summed by itself and never converted from the other.
 * Undefined where fat, carbohydrate, fibre, protein or alcohol is unknown. Polyols and organic acids have no component
 * in the food table, so what they would give counts as carbohydrate or not at all.
 * **Source**: Regulation (EU) 1169/2011, Annex XIV.
 */
export function declaredEnergy(composition: Composition): DeclaredEnergy | undefined {
  const parts = [
    [ANNEX_XIV.fat, composition.fatG],
    [ANNEX_XIV.carbohydrate, availableCarbohydrateG(composition)],
    [ANNEX_XIV.fibre, composition.fibreG],
    [ANNEX_XIV.protein, composition.proteinG],
    [ANNEX_XIV.alcohol, composition.alcoholG],
  ] as const;
  let [energyKj, energyKcal] = [0, 0];
  for (const [{ kjPerG, kcalPerG }, massG] of parts) {
    if (massG === undefined) return undefined;
    energyKj += massG * kjPerG;
    energyKcal += massG * kcalPerG;
  }
  return { energyKj, energyKcal };
}

/**
 * Carbohydrate in the sense of the Regulation, which holds no fibre: the available carbohydrate, or carbohydrate by
 * difference less the fibre. Undefined where neither is known.
 */
export function availableCarbohydrateG(composition: Composition): number | undefined {
  const { carbohydrateAvailableG, carbohydrateByDifferenceG, fibreG } = composition;
  if (carbohydrateAvailableG !== undefined) return carbohydrateAvailableG;
  if (carbohydrateByDifferenceG === undefined || fibreG === undefined) return undefined;
  return Math.max(carbohydrateByDifferenceG - fibreG, 0);
}

/** Salt in g from sodium in mg; unknown where the sodium is. */
export function saltG({ sodiumMg }: Composition): number | undefined {
  return sodiumMg === undefined ? undefined : (sodiumMg * SALT_PER_SODIUM) / 1000;
}

function declareCell(composition: Composition, item: DeclaredItem, times: number): DeclaredCell | undefined {
  if (item === "energy") {
    const energy = declaredEnergy(composition);
    if (energy === undefined) return undefined;
    const [kj, kcal] = [energy.energyKj, energy.energyKcal].map((each) => roundDeclared("energy", each * times));
    return { unit: "kJ/kcal", kj: kj as DeclaredFigure, kcal: kcal as DeclaredFigure };
  }
  const massG = massOf(composition, item);
  return massG === undefined ? undefined : { unit: "g", figure: roundDeclared(item, massG * times) };
}

function massOf(composition: Composition, item: Exclude<DeclaredItem, "energy">): number | undefined {
  switch (item) {
    case "carbohydrate":
      return availableCarbohydrateG(composition);
    case "salt":
      return saltG(composition);
    default:
      return composition[`${item}G`];
  }
}
