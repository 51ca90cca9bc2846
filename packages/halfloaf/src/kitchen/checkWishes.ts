import type { Issue } from "../quantity/index.ts";
import { fitDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";
import { isMeant } from "./toWishes.ts";
import type { Wish } from "./wish.ts";

type Path = Issue["path"];

/**
 * Wishes that lead nowhere: names that are not there, no sitting that they speak of, more servings than there are such
 * sittings in a week, servings of dishes that nobody can have there.
 */
export function checkWishes(kitchen: Kitchen, tables: Tables): Issue[] {
  return kitchen.wishes.flatMap((wish, at) => {
    const path = ["wishes", at];
    const lost = checkNames(wish, path, kitchen, tables);
    return lost.length > 0 ? lost : checkReach(wish, path, kitchen, tables);
  });
}

function checkNames({ what, eaters = [] }: Wish, path: Path, kitchen: Kitchen, tables: Tables): Issue[] {
  const issues: Issue[] = eaters.flatMap((id, i) =>
    kitchen.eaters.some((eater) => eater.id === id)
      ? []
      : [{ code: "eater-unknown", path: [...path, "eaters", i], expected: "an eater of this kitchen", received: id }],
  );
  const { dish, main } = what;
  if (dish !== undefined && !tables.dishes.some(({ id }) => id === dish))
    issues.push({ code: "dish-unknown", path: [...path, "what", "dish"], expected: "a dish", received: dish });
  if (main !== undefined && !tables.foods.has(main))
    issues.push({
      code: "food-unknown",
      path: [...path, "what", "main"],
      expected: "a food of the table",
      received: main,
    });
  return issues;
}

function checkReach(wish: Wish, path: Path, kitchen: Kitchen, tables: Tables): Issue[] {
  const { what, on, at, eaters, least = 0 } = wish;
  const sittings = kitchen.sittings.flatMap((sitting) => {
    const days = new Set(sitting.on.filter((day) => on?.includes(day) ?? true)).size;
    const isMeantHere =
      (at?.includes(sitting.kind) ?? true) && (eaters?.some((id) => sitting.eaters.includes(id)) ?? true);
    return days > 0 && isMeantHere ? [{ ...sitting, days }] : [];
  });
  const perWeek = sittings.reduce((sum, { days }) => sum + days, 0);
  if (perWeek === 0)
    return [
      { code: "wish-no-sitting", path, expected: "a sitting of the kitchen that it speaks of", received: "none" },
    ];
  if (least > perWeek) {
    const expected = `at most the ${perWeek} sittings of a week that it speaks of`;
    return [{ code: "wish-beyond", path: [...path, "least"], expected, received: `${least}` }];
  }
  if (least === 0 || sittings.some((sitting) => hasDish(sitting, what, kitchen, tables))) return [];
  const received = JSON.stringify(what);
  return [{ code: "wish-unmet", path: [...path, "what"], expected: "a dish that can be had there", received }];
}

/** Whether some dish that is meant fits a sitting and its eaters, of foods that are sold or in the stores. */
function hasDish(
  { kind, eaters: ids }: Kitchen["sittings"][number],
  what: Wish["what"],
  kitchen: Kitchen,
  tables: Tables,
): boolean {
  const eaters = kitchen.eaters.filter(({ id }) => ids.includes(id));
  const had = new Set([...kitchen.packs, ...kitchen.stores].map(({ food }) => food));
  return tables.dishes.some((dish) => {
    if (!dish.fits.includes(kind) || kitchen.refusedDishes.includes(dish.id)) return false;
    // What is wrong with a dish of a food that is not there is told of the dish itself.
    const isKnown = dish.makings.every(({ food, alternatives }) =>
      [food, ...alternatives.map((each) => each.food)].every((id) => tables.foods.has(id)),
    );
    const fitted = isKnown ? fitDish(dish, tables.foods, kitchen.kit, eaters, (food) => had.has(food)) : undefined;
    return fitted !== undefined && !("reason" in fitted) && isMeant(fitted, what, tables.foods);
  });
}
