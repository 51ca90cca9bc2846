import type { Kitchen } from "halfloaf/kitchen";
import type { RecordState } from "halfloaf/kitchen/record";

/** What would be nowhere without a food: a dish or a pack by its id, grams in the stores, an eater who avoids it. */
export type FoodUse =
  | { readonly kind: "dish"; readonly id: string }
  | { readonly kind: "pack"; readonly id: string }
  | { readonly kind: "lot"; readonly massG: number }
  | { readonly kind: "avoided"; readonly id: string };

/** All that keeps an own food from being removed. */
export function usesOf(
  food: string,
  { dishes, packs, eaters }: Pick<Kitchen, "dishes" | "packs" | "eaters">,
  { lots }: Pick<RecordState, "lots">,
): FoodUse[] {
  const massG = [...lots.values()].filter((lot) => lot.food === food).reduce((sum, { leftG }) => sum + leftG, 0);
  return [
    ...dishes
      .filter(
        ({ main, makings }) =>
          main === food ||
          makings.some((making) => making.food === food || making.alternatives.some((each) => each.food === food)),
      )
      .map(({ id }) => ({ kind: "dish" as const, id })),
    ...packs.filter((pack) => pack.food === food).map(({ id }) => ({ kind: "pack" as const, id })),
    ...(massG > 0 ? [{ kind: "lot" as const, massG }] : []),
    ...eaters.filter(({ avoids }) => avoids.foods.includes(food)).map(({ id }) => ({ kind: "avoided" as const, id })),
  ];
}
