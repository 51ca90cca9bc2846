import { tellDay } from "@halfloaf/words/en";
import { type DishToCook, listCookings, type SittingCooking, type SittingKind, type WeekPlan } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { findDish } from "../card/findDish.ts";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";

/** What is cooked, and the minutes at hand for it where they are known. */
export interface ToCook {
  readonly dishes: readonly DishToCook[];
  readonly atHandMinutes?: number;
}

/** The dishes of some words, each with so many portions or as many as it is written for. */
export function findDishes(
  words: readonly string[],
  portions: number | undefined,
  { tables }: OpenKitchen,
): Found<ToCook> {
  const found = words.map((word) => findDish(word, tables.dishes));
  const faults = found.flatMap((each) => (each.ok ? [] : [...each.faults]));
  if (faults.length > 0) return { ok: false, faults };
  const dishes = found.flatMap((each) => (each.ok ? [each.value] : []));
  return { ok: true, value: { dishes: dishes.map((dish) => ({ dish, portions: portions ?? dish.portions })) } };
}

/** All that a week has cooked at once for a kind of sitting of a day; plates to take along apart from the others. */
export function findSitting(
  week: WeekPlan,
  date: CivilDate,
  kind: SittingKind,
  isPacked: boolean,
  { kitchen, tables }: OpenKitchen,
): Found<ToCook> {
  const ofDay = listCookings(week, kitchen, tables).filter((cooking) => cooking.date === date);
  const ofKind = ofDay.filter(({ sitting }) => sitting === kind);
  const found = ofKind.find(({ packed }) => packed === isPacked) ?? (isPacked ? undefined : ofKind[0]);
  if (found !== undefined) return { ok: true, value: found };
  const others = ofDay.map(tellCooking);
  return refuse({
    code: "nothing-cooked",
    path: [],
    value: quote(kind),
    sentence: `On ${tellDay(date)} nothing is cooked for ${quote(kind)}${isPacked ? ", to take along" : ""}.`,
    remedy: others.length === 0 ? "Nothing is cooked on that day at all." : `Cooked on that day: ${others.join(", ")}.`,
  });
}

function tellCooking({ sitting, packed }: SittingCooking): string {
  return packed ? `${sitting}, to take along (--packed)` : sitting;
}
