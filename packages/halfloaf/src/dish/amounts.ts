import { type FoodTable, type MassBounds, massOfAmount, purchasedFromEdible, type UnknownMass } from "../food/index.ts";
import type { Amount } from "../quantity/index.ts";
import type { Dish, Making } from "./dish.ts";

/** A food and so much of it: a making as it stands, or one of its alternatives. */
export interface ChosenFood {
  readonly food: string;
  readonly amount: Amount;
  readonly as?: "purchased" | undefined;
}

/** Says what goes in for a making: the making itself, one of its alternatives, or undefined to leave it out. */
export type Choose = (making: Making) => ChosenFood | undefined;

/** The dish as written: every making itself, the optional ones too. */
export const asWritten: Choose = (making) => making;

/** The dish as written but without its optional makings. */
export const withoutOptional: Choose = (making) => (making.optional ? undefined : making);

/** A mass in g: least, most and the middle between them. */
export interface Mass extends MassBounds {
  readonly middle: number;
}

interface AmountBase {
  /** Position in `dish.makings`. */
  readonly at: number;
  readonly making: Making;
  /** Id of the food chosen for the making. */
  readonly food: string;
}

/** How much of one making goes into one portion, or why that is not known. */
export type MakingAmount =
  | (AmountBase & { readonly ok: true; readonly edibleG: Mass; readonly purchasedG: Mass })
  | (AmountBase & { readonly ok: false; readonly reason: UnknownMass | "food-unknown" });

/** A making whose amount is known. */
export type KnownAmount = Extract<MakingAmount, { ok: true }>;

/** A making whose amount is not known. */
export type UnknownAmount = Extract<MakingAmount, { ok: false }>;

/**
 * What goes into one portion of a dish, in the order of its makings: the edible mass, and the mass as purchased that it
 * takes with the food's refuse. What `choose` leaves out is not listed; what is to taste, or lacks a measure, is listed as
 * unknown with the reason.
 */
export function makingsOf(
  dish: Pick<Dish, "makings" | "portions">,
  foods: FoodTable,
  choose: Choose = asWritten,
): MakingAmount[] {
  const amounts: MakingAmount[] = [];
  dish.makings.forEach((making, at) => {
    const chosen = choose(making);
    if (chosen !== undefined) amounts.push(amountOf(making, at, chosen, dish.portions, foods));
  });
  return amounts;
}

/** Written out at length: a kitchen's dishes in all their ways ask for tens of thousands of amounts. */
function amountOf(
  making: Making,
  at: number,
  { food: id, amount, as }: ChosenFood,
  portions: number,
  foods: FoodTable,
): MakingAmount {
  const food = foods.get(id);
  if (food === undefined) return { at, making, food: id, ok: false, reason: "food-unknown" };
  const mass = massOfAmount(food, amount, as);
  if (!mass.ok) return { at, making, food: id, ok: false, reason: mass.reason };
  const edibleG = toMass(mass.edibleG, (massG) => massG / portions);
  const purchasedG = toMass(edibleG, (massG) => purchasedFromEdible(food, massG));
  return { at, making, food: id, ok: true, edibleG, purchasedG };
}

function toMass({ low, high }: MassBounds, convert: (massG: number) => number): Mass {
  return { low: convert(low), high: convert(high), middle: convert((low + high) / 2) };
}

/** True for an amount that is known. */
export function isKnown(amount: MakingAmount): amount is KnownAmount {
  return amount.ok;
}

/** True for an amount that is not known. */
export function isUnknown(amount: MakingAmount): amount is UnknownAmount {
  return !amount.ok;
}
