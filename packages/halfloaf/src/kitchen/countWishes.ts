import type { MenuPlan, MenuWish } from "../menu/index.ts";
import { addDays } from "../quantity/index.ts";
import type { Kitchen } from "./kitchen.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";
import type { WeekPlan } from "./weekPlan.ts";

/** A wish of the kitchen for some of a plan's days, with how often it was served in them. */
export type CountedWish = NonNullable<WeekPlan["wishes"]>[number];

/**
 * The wishes of a kitchen as a plan comes to them, each for every week of the plan that it speaks of: what was wished for there
 * (a week that is cut short is asked for less) and how many servings there are. Rules of variety are none of them.
 */
export function countWishes(
  kitchen: Kitchen,
  { problem, wishes, from }: KitchenProblem,
  plan: MenuPlan,
): CountedWish[] {
  return wishes.flatMap(({ path: [list, at], days }, index): CountedWish[] => {
    const wish = list === "wishes" ? kitchen.wishes[at as number] : undefined;
    // The problem's own, since a week that was changed has other sittings.
    const menu = problem.wishes?.[index];
    if (wish === undefined || menu === undefined) return [];
    const { least: _least, most: _most, ...rest } = wish;
    return [
      {
        ...rest,
        from: addDays(from, days[0]),
        to: addDays(from, days[1]),
        ...(menu.least !== undefined && { least: menu.least }),
        ...(menu.most !== undefined && { most: menu.most }),
        served: countServings(menu, plan),
      },
    ];
  });
}

/** How many servings a wish has too few (below 0) or too many; 0 where it is met. */
export function missOfWish({ least = 0, most = Number.POSITIVE_INFINITY, served }: CountedWish): number {
  return served < least ? served - least : Math.max(0, served - most);
}

function countServings({ dishes, sittings }: MenuWish, plan: MenuPlan): number {
  const served = plan.batches.filter(({ dish }) => dishes.includes(dish)).flatMap((batch) => batch.sittings);
  return served.filter((sitting) => sittings.includes(sitting)).length;
}
