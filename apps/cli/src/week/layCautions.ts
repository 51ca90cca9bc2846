import type { WeekPlan } from "halfloaf/kitchen";
import { harmless } from "../output/harmless.ts";
import { wrap, wrapBehind } from "../output/layout.ts";
import { headingOf, type WeekPage } from "./WeekPage.ts";

/** More dishes than this are counted, not named: the card of each names them. */
const MOST_NAMED = 3;

/**
 * Cautions with who says so and the dishes they are about; one that goes for every dish names none. That label, rules and
 * care come first is said by the last line of the page.
 */
export function layCautions(page: WeekPage): string[] {
  const cautions = page.plan.cautions.filter(({ code }) => code !== "label-first");
  if (cautions.length === 0) return [];
  const lines = cautions.flatMap((caution) => {
    const text = `${harmless(caution.text)} [${harmless(caution.authority)}]${tellDishes(page, caution.dishes)}`;
    return wrapBehind("  - ", text, page.width);
  });
  const hint = "The card of a dish has all that are about it: halfloaf card DISH.";
  return [headingOf(page, "Cautions"), "", ...lines, "", ...wrap(hint, page.width)];
}

function tellDishes({ plan, names }: WeekPage, dishes: WeekPlan["cautions"][number]["dishes"]): string {
  const all = new Set(plan.batches.map(({ dish }) => dish)).size;
  if (dishes.length >= all) return " For every dish.";
  if (dishes.length > MOST_NAMED) return ` For ${dishes.length} of ${all} dishes.`;
  return ` For: ${dishes.map(names.dish).join("; ")}.`;
}
