import type { CivilDate } from "../quantity/index.ts";
import type { SittingKind } from "./datedSittings.ts";
import { takesFood } from "./fitDish.ts";
import { namedFor } from "./keptWays.ts";
import type { Kitchen } from "./kitchen.ts";
import { foodsWithin } from "./statePutBy.ts";
import type { Tables } from "./tables.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** A plate of a week that is not for one of those who are to eat it, and why. */
export interface PlateAgainst {
  readonly date: CivilDate;
  readonly kind: SittingKind;
  readonly dish: string;
  readonly eater: string;
  /** The foods in it that the eater does not take, by diet, allergens or single foods. */
  readonly foods: readonly string[];
}

/** A plate that is eaten already: when, and by whom where that was said. */
interface EatenThen {
  readonly on: CivilDate;
  readonly sitting?: SittingKind;
  readonly eater?: string;
}

/**
 * What a week has on plates from a day on for eaters who do not take it, as the kitchen says now: an allergen, a diet or a food may have become
 * known after the week was planned. In order of time, without what is `eaten`. A food that no table has any more is told as well, since nobody knows what is in it.
 */
export function platesAgainst(
  { sittings, batches }: Pick<WeekPlan, "sittings" | "batches">,
  kitchen: Pick<Kitchen, "eaters" | "putBy">,
  tables: Pick<Tables, "foods" | "dishes">,
  today: CivilDate,
  eaten: readonly EatenThen[] = [],
): PlateAgainst[] {
  const within = batches.map((batch) => foodsOf(batch, kitchen, tables));
  return sittings.flatMap(({ date, kind, dish, eaters, batch }) =>
    eaters.flatMap((id): PlateAgainst[] => {
      const eater = kitchen.eaters.find((each) => each.id === id);
      const isOver = eaten.some((one) => one.on === date && one.sitting === kind && (one.eater ?? id) === id);
      if (date < today || isOver || eater === undefined) return [];
      const foods = (within[batch] ?? []).filter((food) => {
        const facts = tables.foods.get(food);
        return facts === undefined || !takesFood(eater, facts);
      });
      return foods.length === 0 ? [] : [{ date, kind, dish, eater: id, foods }];
    }),
  );
}

/** All that goes into a cooking, what is to taste among it; of what was put by all that may be in it. */
function foodsOf(
  batch: WeekPlan["batches"][number],
  { putBy }: Pick<Kitchen, "putBy">,
  { dishes }: Pick<Tables, "dishes">,
): string[] {
  const dish = dishes.find(({ id }) => id === batch.dish);
  if (batch.putBy !== undefined) {
    const boxes = putBy.filter(({ id }) => batch.uses.some(({ lot }) => lot === id));
    return dish === undefined
      ? []
      : [...new Set((boxes.length > 0 ? boxes : [{ foods: [] }]).flatMap((box) => foodsWithin(dish, box)))];
  }
  const used = batch.uses.map(({ food }) => food);
  const stated = (dish?.makings ?? []).filter(({ optional }) => !optional);
  const named = stated.flatMap((making) => {
    const options = [making, ...making.alternatives].map(({ food }) => food);
    return options.some((food) => used.includes(food)) ? [] : [namedFor(making, batch) ?? making.food];
  });
  return [...new Set([...used, ...named])];
}
