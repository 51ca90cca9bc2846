import type { ChosenFood, Dish } from "../../../dish/index.ts";
import type { WeekPlan } from "../../weekPlan.ts";
import type { CookWish } from "./cook.ts";

/**
 * A batch of an accepted week as a cooking, done as planned: with the foods that the week chose, on its day and for its
 * sitting, and what the week puts by of it into the freezer. Undefined where the week has no such batch, or where it is of another dish.
 */
export function toCookWish(week: Pick<WeekPlan, "batches" | "boxes">, batch: number, dish: Dish): CookWish | undefined {
  const planned = week.batches[batch];
  if (planned === undefined || planned.dish !== dish.id) return undefined;
  const boxes = (week.boxes ?? []).flatMap((box) => (box.batch === batch ? [box.portions] : []));
  const foods = new Set(planned.uses.map(({ food }) => food));
  return {
    dish,
    portions: planned.portions,
    on: planned.date,
    sitting: planned.kind,
    batch,
    ...(boxes.length > 0 && { boxes }),
    choose: (making) => {
      const options: ChosenFood[] = [making, ...making.alternatives];
      const chosen = options.find(({ food }) => foods.has(food));
      // What goes in to taste stands in no use of the week.
      return chosen ?? (making.optional ? undefined : making);
    },
  };
}
