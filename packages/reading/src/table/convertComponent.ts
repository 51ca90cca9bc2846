import type { NUTRIENTS, Nutrient } from "halfloaf/food";
import { toMassG } from "halfloaf/quantity";

/** The units of components. */
export type ComponentUnit = (typeof NUTRIENTS)[Nutrient]["unit"];

/** How tables write the units of components, in lower case. */
const SPELLINGS: ReadonlyMap<string, ComponentUnit> = new Map([
  ["g", "g"],
  ["mg", "mg"],
  ["ug", "ug"],
  ["mcg", "ug"],
  // The Greek letter and the sign of one millionth are two characters that look alike.
  ["\u00b5g", "ug"],
  ["\u03bcg", "ug"],
  ["kcal", "kcal"],
  ["kj", "kJ"],
]);

/** The unit that a table means by a text; undefined for any other, such as IU, which is no mass. */
export function toComponentUnit(text: string): ComponentUnit | undefined {
  return SPELLINGS.get(text.trim().toLowerCase());
}

const MICROGRAMS_PER_MG = 1000;

/** A figure in another unit; undefined where one of the two is an energy and they differ. */
export function convertComponent(figure: number, from: ComponentUnit, to: ComponentUnit): number | undefined {
  if (from === to) return figure;
  if (from === "kcal" || from === "kJ" || to === "kcal" || to === "kJ") return undefined;
  return figure * (sizeG(from) / sizeG(to));
}

function sizeG(unit: "g" | "mg" | "ug"): number {
  return unit === "ug" ? (toMassG(1, "mg") as number) / MICROGRAMS_PER_MG : (toMassG(1, unit) as number);
}

/** The most of a component that 100 g can hold: 100 g of a mass, and of energy what pure fat has, with some room. */
export function mostIn100g(unit: ComponentUnit): number {
  if (unit === "kcal") return 930;
  if (unit === "kJ") return 3900;
  // Some room for what is printed rounded.
  return convertComponent(101, "g", unit) as number;
}
