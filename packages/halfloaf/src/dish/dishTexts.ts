import * as v from "valibot";
import { Id } from "../food/food.ts";
import type { Dish } from "./dish.ts";

const text = v.pipe(v.string(), v.nonEmpty());

/**
 * What dishes say in another language than they were written in: by the id of each dish its title, its note and its steps by their
 * ids; `phrases` are texts that several dishes share (cautions, where a way of cooking is at home, how a making is cut), by what
 * the dishes say.
 */
export const DishTexts = v.strictObject({
  dishes: v.record(
    Id,
    v.strictObject({
      title: text,
      steps: v.record(Id, text),
      note: v.optional(text),
    }),
  ),
  phrases: v.record(text, text),
});
export type DishTexts = v.InferOutput<typeof DishTexts>;

/** The dishes with these texts laid over; all else of them is the same, and what has no text here stays as it was written. */
export function layDishTexts(dishes: readonly Dish[], { dishes: texts, phrases }: DishTexts): Dish[] {
  const tell = (phrase: string): string => phrases[phrase] ?? phrase;
  return dishes.map((dish) => {
    const told = texts[dish.id];
    if (told === undefined) return dish;
    const note = told.note ?? dish.note;
    return {
      ...dish,
      title: told.title,
      cooking: tell(dish.cooking),
      makings: dish.makings.map((making) => (making.cut === undefined ? making : { ...making, cut: tell(making.cut) })),
      method: dish.method.map((step) => ({ ...step, text: told.steps[step.id] ?? step.text })),
      cautions: dish.cautions.map(tell),
      ...(note !== undefined && { note }),
    };
  });
}
