import { KJ_PER_KCAL } from "../quantity/index.ts";
import type { Composition, Nutrient } from "./nutrient.ts";

/** Figures of one food that cannot all be true: which they are, and what one would expect of the first. */
export interface Contradiction {
  readonly code: "part-above-whole" | "energy-units" | "energy-of-components" | "sum-above-100" | "mass-above-100";
  readonly components: readonly Nutrient[];
  /** What the first component would be by the others: a figure, or the bound it lies beyond. */
  readonly expected: number;
  readonly received: number;
}

/** The whole, its parts and what rounding allows; a part that is unknown is passed over. */
const PARTS: readonly (readonly [Nutrient, readonly Nutrient[], number])[] = [
  ["carbohydrateByDifferenceG", ["carbohydrateAvailableG"], 0.1],
  ["carbohydrateByDifferenceG", ["sugarsG"], 0.5],
  ["sugarsG", ["freeSugarsG"], 0],
  ["fatG", ["saturatesG", "monounsaturatesG", "polyunsaturatesG"], 0.1],
  ["polyunsaturatesG", ["alaG"], 0.1],
  ["polyunsaturatesG", ["epaDhaG"], 0.1],
  ["proteinG", ["lysineG"], 0],
  ["vitaminARaeUg", ["retinolUg"], 1],
];

const PROXIMATES = ["waterG", "proteinG", "fatG", "carbohydrateByDifferenceG", "ashG", "alcoholG"] as const;
const ALCOHOL_KCAL_PER_G = 6.93;
/**
 * The least and most kcal that a gram gives in any food: protein of cocoa and of egg, fat of plants and of animals,
 * carbohydrate of cocoa and of grain. **Source**: Merrill and Watt 1973, USDA Agriculture Handbook 74, table 13 (from
 * memory), rounded outwards.
 */
const KCAL_PER_G = {
  proteinG: [1.8, 4.4],
  fatG: [8.3, 9.1],
  carbohydrateByDifferenceG: [1.3, 4.2],
} as const;
const ENERGY_SHARE = 0.05;
const ENERGY_SLACK_KCAL = 10;

/**
 * The figures of a composition per 100 g that contradict each other; none for a sound one. Unknown figures contradict
 * nothing. The bounds are wide: what is found is worth a look and may still be true, which only the source can say.
 * **Source**: common practice of composition tables (FAO/INFOODS guidelines for checking data, 2012, from memory), bounds our own.
 */
export function findContradictions(composition: Composition): Contradiction[] {
  return [...partsAboveWhole(composition), ...energies(composition), ...masses(composition)];
}

function* partsAboveWhole(composition: Composition): Generator<Contradiction> {
  for (const [whole, parts, slack] of PARTS) {
    const received = composition[whole];
    const known = parts.filter((part) => composition[part] !== undefined);
    const expected = sumOf(composition, known);
    if (received !== undefined && known.length > 0 && expected > received + slack) {
      yield { code: "part-above-whole", components: [whole, ...known], expected, received };
    }
  }
}

function* energies(composition: Composition): Generator<Contradiction> {
  const { energyKcal, energyKj, proteinG, fatG, carbohydrateByDifferenceG, alcoholG } = composition;
  if (energyKcal !== undefined && energyKj !== undefined) {
    const expected = energyKcal * KJ_PER_KCAL;
    if (Math.abs(energyKj - expected) > Math.max(5, expected * 0.02)) {
      yield { code: "energy-units", components: ["energyKj", "energyKcal"], expected, received: energyKj };
    }
  }
  if (energyKcal === undefined || proteinG === undefined || fatG === undefined) return;
  if (carbohydrateByDifferenceG === undefined) return;
  const known = PROXIMATES.filter((name) => name !== "alcoholG" && composition[name] !== undefined);
  // An unknown alcohol may be as much as the other proximates leave room for.
  const mostAlcoholG = alcoholG ?? Math.max(0, 100 - sumOf(composition, known));
  const energyAt = (bound: 0 | 1, ofAlcoholG: number): number =>
    proteinG * KCAL_PER_G.proteinG[bound] +
    fatG * KCAL_PER_G.fatG[bound] +
    carbohydrateByDifferenceG * KCAL_PER_G.carbohydrateByDifferenceG[bound] +
    ofAlcoholG * ALCOHOL_KCAL_PER_G;
  const [low, high] = [energyAt(0, alcoholG ?? 0), energyAt(1, mostAlcoholG)];
  const slack = Math.max(ENERGY_SLACK_KCAL, energyKcal * ENERGY_SHARE);
  if (energyKcal >= low - slack && energyKcal <= high + slack) return;
  const components = ["energyKcal", "proteinG", "fatG", "carbohydrateByDifferenceG"] as const;
  yield { code: "energy-of-components", components, expected: energyKcal > high ? high : low, received: energyKcal };
}

function* masses(composition: Composition): Generator<Contradiction> {
  const known = PROXIMATES.filter((name) => composition[name] !== undefined);
  const received = sumOf(composition, known);
  if (received > 103) yield { code: "sum-above-100", components: known, expected: 100, received };
  for (const [name, figure] of Object.entries(composition) as [Nutrient, number][]) {
    if (name.endsWith("G") && figure > 100) {
      yield { code: "mass-above-100", components: [name], expected: 100, received: figure };
    }
  }
}

function sumOf(composition: Composition, names: readonly Nutrient[]): number {
  return names.reduce((sum, name) => sum + (composition[name] as number), 0);
}
