/** Lines of a nutrition declaration. */
export const DECLARED_ITEMS = [
  "energy",
  "fat",
  "saturates",
  "carbohydrate",
  "sugars",
  "fibre",
  "protein",
  "salt",
] as const;
export type DeclaredItem = (typeof DECLARED_ITEMS)[number];

/** A declared figure: the rounded number and how it is printed, without its unit. */
export interface DeclaredFigure {
  readonly value: number;
  readonly text: string;
}

/** Up to `zeroTo` the figure is 0; below `coarseFrom` it has `fineDecimals`, from there on `coarseDecimals`. */
interface Rule {
  readonly zeroTo: number;
  readonly coarseFrom: number;
  readonly fineDecimals: number;
  readonly coarseDecimals: number;
}

const MASS: Rule = { zeroTo: 0.5, coarseFrom: 10, fineDecimals: 1, coarseDecimals: 0 };

/** Rules by item, g; energy in kJ or kcal. */
const RULES: Readonly<Record<DeclaredItem, Rule>> = {
  energy: { zeroTo: 0, coarseFrom: 0, fineDecimals: 0, coarseDecimals: 0 },
  fat: MASS,
  saturates: { ...MASS, zeroTo: 0.1 },
  carbohydrate: MASS,
  sugars: MASS,
  fibre: MASS,
  protein: MASS,
  salt: { zeroTo: 0.0125, coarseFrom: 1, fineDecimals: 2, coarseDecimals: 1 },
};

/**
 * Rounds a figure as a declaration prints it: energy to 1 kJ or 1 kcal; from 10 g on to 1 g, below to 0.1 g, and up to
 * 0.5 g (saturates 0.1 g) to 0; salt from 1 g on to 0.1 g, below to 0.01 g, and up to 0.0125 g to 0. Halves go up.
 * Throws where the amount is negative or no number.
 * **Source**: European Commission, guidance on tolerances for nutrient values declared on a label, December 2012.
 */
export function roundDeclared(item: DeclaredItem, amount: number): DeclaredFigure {
  if (!(Number.isFinite(amount) && amount >= 0)) throw new RangeError(`${amount} is no amount of ${item}`);
  const { zeroTo, coarseFrom, fineDecimals, coarseDecimals } = RULES[item];
  if (amount <= zeroTo) return { value: 0, text: "0" };
  const fine = roundTo(amount, fineDecimals);
  // What rounds up to the coarse range is printed as the coarse range is: 9.97 g as 10 g, not as 10.0 g.
  const decimals = amount >= coarseFrom || fine >= coarseFrom ? coarseDecimals : fineDecimals;
  const value = roundTo(amount, decimals);
  return { value, text: value.toFixed(decimals) };
}

/** Nearest multiple of a power of ten, halves up; a sum like 1.005, held as 1.00499..., counts as the half it means. */
function roundTo(amount: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.round(Number((amount * scale).toPrecision(12))) / scale;
}
