import type { Amount } from "../quantity/amount.ts";
import { amountBounds } from "../quantity/amountBounds.ts";
import { toMassG, toVolumeMl } from "../quantity/convertUnit.ts";
import type { FoodFacts } from "./food.ts";

/** Least and most of a mass in g. */
export interface MassBounds {
  readonly low: number;
  readonly high: number;
}

/**
 * Why an amount of a food has no known mass: it is to taste, or the food lacks the density for its volume, has no
 * pieces, or has none of the size named.
 */
export type UnknownMass = "to-taste" | "density-unknown" | "pieces-unknown" | "size-unknown";

export type MassOfAmount =
  | { readonly ok: true; readonly edibleG: MassBounds }
  | { readonly ok: false; readonly reason: UnknownMass };

type Measures = Pick<FoodFacts, "densityGPerMl" | "pieces" | "refusePct">;

/**
 * The edible mass of an amount of a food.
 *
 * A volume goes by the food's density, pieces by the edible mass of the size named (the first size where none is).
 * With `as` "purchased" a mass or volume still holds the refuse, which is taken off; the mass of a piece is edible
 * already, so for pieces it changes nothing.
 */
export function massOfAmount(food: Measures, amount: Amount, as?: "purchased"): MassOfAmount {
  const bounds = amountBounds(amount);
  if (bounds === undefined) return { ok: false, reason: "to-taste" };
  const unitMass = bounds.unit === "piece" ? pieceMassG(food, bounds.size) : unitMassG(food, bounds.unit);
  if (typeof unitMass === "string") return { ok: false, reason: unitMass };
  const edible = (massG: number) =>
    as === "purchased" && bounds.unit !== "piece" ? edibleFromPurchased(food, massG) : massG;
  return { ok: true, edibleG: { low: edible(bounds.low * unitMass), high: edible(bounds.high * unitMass) } };
}

function unitMassG(food: Measures, unit: Parameters<typeof toMassG>[1]): number | UnknownMass {
  const massG = toMassG(1, unit);
  if (massG !== undefined) return massG;
  const volumeMl = toVolumeMl(1, unit);
  if (volumeMl === undefined || food.densityGPerMl === undefined) return "density-unknown";
  return volumeMl * food.densityGPerMl;
}

function pieceMassG(food: Measures, size: string | undefined): number | UnknownMass {
  if (food.pieces.length === 0) return "pieces-unknown";
  const piece = size === undefined ? food.pieces[0] : food.pieces.find((each) => each.size === size);
  return piece === undefined ? "size-unknown" : piece.massG;
}

/** The edible mass in g of a mass in g as purchased: what is left when the refuse is taken off. */
export function edibleFromPurchased(food: Pick<FoodFacts, "refusePct">, purchasedG: number): number {
  return (purchasedG * (100 - food.refusePct)) / 100;
}

/** The mass in g that must be purchased for an edible mass in g. */
export function purchasedFromEdible(food: Pick<FoodFacts, "refusePct">, edibleG: number): number {
  return (edibleG * 100) / (100 - food.refusePct);
}
