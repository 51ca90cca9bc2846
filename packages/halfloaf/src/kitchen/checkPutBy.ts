import type { Issue } from "../quantity/index.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** Portions put by of dishes that are not there, in a place that the kitchen lacks or the dish does not keep in. */
export function checkPutBy({ putBy, stores, kit }: Kitchen, { dishes, foods }: Tables): Issue[] {
  return putBy.flatMap((one, at): Issue[] => {
    const path = ["putBy", at];
    const dish = dishes.find(({ id }) => id === one.dish);
    const lost = one.foods.flatMap((food, i): Issue[] =>
      foods.has(food)
        ? []
        : [{ code: "food-unknown", path: [...path, "foods", i], expected: "a food of the table", received: food }],
    );
    const again = stores.some(({ id }) => id === one.id)
      ? [{ code: "name-twice", path: [...path, "id"], expected: "a name used once", received: one.id }]
      : [];
    if (dish === undefined)
      return [
        ...again,
        ...lost,
        { code: "dish-unknown", path: [...path, "dish"], expected: "a dish", received: one.dish },
      ];
    const room = one.place === "fridge" ? kit.fridgeLitres : kit.freezerLitres;
    const keeps = one.place === "fridge" ? dish.keeps.fridgeDays : dish.keeps.freezerDays;
    const isKept = room > 0 && keeps !== undefined;
    const expected = "a place of the kit in which the dish keeps";
    const misplaced = isKept
      ? []
      : [{ code: "not-kept-there", path: [...path, "place"], expected, received: one.place }];
    return [...again, ...lost, ...misplaced];
  });
}
