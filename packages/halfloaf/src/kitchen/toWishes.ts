import { suitsDiet } from "../dish/index.ts";
import type { Food, FoodTable } from "../food/index.ts";
import type { MenuWish } from "../menu/index.ts";
import { weekday } from "../quantity/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { FittedDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Meant, VarietyRule, Wish } from "./wish.ts";

/** A wish or a rule of variety as stated for some of the days to plan. */
export interface StatedWish {
  readonly menu: MenuWish;
  /** Where it stands in the kitchen. */
  readonly path: readonly (string | number)[];
  /** What the dishes have in common; empty where boxes are to be put by. */
  readonly what: Meant;
  /** First and last day it is about, in days of the plan. */
  readonly days: readonly [number, number];
}

const WEEK = 7;

/** True if a dish, as it is cooked for its eaters, is one of those meant. */
export function isMeant({ dish, makings }: FittedDish, what: Meant, table: FoodTable): boolean {
  const foods = makings.flatMap(({ food }) => table.get(food) ?? []);
  const has = (holds: (food: Food) => boolean): boolean => foods.some(holds);
  return (
    (what.dish ?? dish.id) === dish.id &&
    (what.manner ?? dish.manner) === dish.manner &&
    (what.main ?? dish.main) === dish.main &&
    (what.group === undefined || has(({ group }) => group === what.group)) &&
    (what.hygiene === undefined || has(({ hygiene }) => hygiene === what.hygiene)) &&
    (what.diet === undefined || foods.every(({ diet }) => suitsDiet(diet, what.diet as NonNullable<Meant["diet"]>)))
  );
}

/** The wishes and rules of variety of a kitchen for the days planned; `fitted` are the dishes by the planner's index. */
export function toWishes(
  kitchen: Kitchen,
  foods: FoodTable,
  fitted: readonly FittedDish[],
  sittings: readonly DatedSitting[],
  days: number,
): StatedWish[] {
  return [
    ...kitchen.wishes.flatMap((wish, at) => stateWish(wish, ["wishes", at], foods, fitted, sittings, days)),
    ...kitchen.limits.variety.flatMap((rule, at) =>
      stateRule(rule, ["limits", "variety", at], kitchen, fitted, sittings, days),
    ),
  ];
}

function indicesOf<Item>(list: readonly Item[], holds: (item: Item, at: number) => boolean): number[] {
  return list.flatMap((item, at) => (holds(item, at) ? [at] : []));
}

/** Weeks of seven days from the first day on; the last may be cut short. */
export function listWeeks(days: number): (readonly [number, number])[] {
  return Array.from(
    { length: Math.ceil(days / WEEK) },
    (_, week) => [week * WEEK, Math.min(days, (week + 1) * WEEK) - 1] as const,
  );
}

/** A wish for each week; of a week that is cut short as many servings as it has of the days wished for. */
function stateWish(
  { what, on, at, eaters, least, most, missMinor }: Wish,
  path: StatedWish["path"],
  foods: FoodTable,
  fitted: readonly FittedDish[],
  sittings: readonly DatedSitting[],
  days: number,
): StatedWish[] {
  const dishes = indicesOf(fitted, (one) => isMeant(one, what, foods));
  const meant = (sitting: DatedSitting): boolean =>
    !sitting.putBy &&
    (at?.includes(sitting.kind) ?? true) &&
    (on?.includes(weekday(sitting.date)) ?? true) &&
    (eaters?.some((id) => sitting.eaters.includes(id)) ?? true);
  const inFull = on === undefined ? WEEK : new Set(on).size;
  return listWeeks(days).flatMap(([from, to]): StatedWish[] => {
    const own = indicesOf(sittings, (sitting) => meant(sitting) && sitting.day >= from && sitting.day <= to);
    const there = on === undefined ? to - from + 1 : new Set(own.map((k) => sittings[k]?.day)).size;
    const wanted = least === undefined ? undefined : Math.floor(least * Math.min(1, there / inFull) + 1e-9);
    if (own.length === 0 || (!wanted && (most === undefined || most >= own.length))) return [];
    const menu: MenuWish = {
      dishes,
      sittings: own,
      ...(wanted !== undefined && { least: wanted }),
      ...(most !== undefined && { most }),
      ...(missMinor !== undefined && { missMinor }),
    };
    return [{ menu, path, what, days: [from, to] }];
  });
}

/** A rule of variety for each thing that plates can have in common, and for all who always eat together. */
function stateRule(
  { by, at, mostPerWeek, daysApart }: VarietyRule,
  path: StatedWish["path"],
  kitchen: Kitchen,
  fitted: readonly FittedDish[],
  sittings: readonly DatedSitting[],
  days: number,
): StatedWish[] {
  const kinds = at ?? [...new Set(sittings.map(({ kind }) => kind))];
  const tables = kinds.flatMap((kind) => listTables(kitchen, sittings, kind));
  const commonIn = ({ dish }: FittedDish): string => (by === "dish" ? dish.id : dish[by]);
  const values = [...new Set(fitted.map(commonIn))];
  const windows =
    daysApart === undefined
      ? []
      : Array.from({ length: Math.max(1, days - daysApart + 1) }, (_, from) => [from, from + daysApart - 1] as const);
  const spans = [
    ...(mostPerWeek === undefined ? [] : listWeeks(days).map((span) => ({ span, most: mostPerWeek }))),
    ...windows.map((span) => ({ span, most: 1 })),
  ];
  return values.flatMap((value) => {
    const dishes = indicesOf(fitted, (one) => commonIn(one) === value);
    return tables.flatMap((table) =>
      spans.flatMap(({ span: [from, to], most }): StatedWish[] => {
        const own = table.filter((k) => (sittings[k]?.day as number) >= from && (sittings[k]?.day as number) <= to);
        if (own.length <= most) return [];
        return [{ menu: { dishes, sittings: own, most }, path, what: { [by]: value }, days: [from, to] }];
      }),
    );
  });
}

/** The sittings of a kind of each eater, those of eaters who always sit together once. */
function listTables({ eaters }: Kitchen, sittings: readonly DatedSitting[], kind: DatedSitting["kind"]): number[][] {
  const tables = new Map<string, number[]>();
  for (const { id } of eaters) {
    const own = indicesOf(sittings, (sitting) => sitting.kind === kind && sitting.eaters.includes(id));
    tables.set(own.join(), own);
  }
  return [...tables.values()];
}
