import type { Dish } from "halfloaf/dish";
import type { WorkSheet } from "halfloaf/kitchen";

/** What tells a step of a cooking from all others. */
export function keyOfStep({ dish, step }: { readonly dish: number; readonly step: string }): string {
  return `${dish} ${step}`;
}

/**
 * By step, the foods of the dish's makings that it is the first to name: what is measured out there. A food is with one step
 * alone, so that nobody puts it in twice. `dishes` are those of the sheet, by place; steps without such foods are not there.
 */
export function firstTaken(
  { ahead, lines }: Pick<WorkSheet, "ahead" | "lines">,
  dishes: readonly (Pick<Dish, "method"> | undefined)[],
): ReadonlyMap<string, readonly string[]> {
  const taken = new Map<string, readonly string[]>();
  const measured = dishes.map(() => new Set<string>());
  for (const line of [...ahead, ...lines.filter((each) => each.kind === "step")]) {
    const foods = dishes[line.dish]?.method.find(({ id }) => id === line.step)?.foods ?? [];
    const fresh = foods.filter((food) => measured[line.dish]?.has(food) === false);
    for (const food of fresh) measured[line.dish]?.add(food);
    if (fresh.length > 0) taken.set(keyOfStep(line), fresh);
  }
  return taken;
}
