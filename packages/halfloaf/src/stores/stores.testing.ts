import fc from "fast-check";
import type { Food } from "../food/index.ts";
import { addDays } from "../quantity/index.ts";
import type { Movement } from "./movement.ts";

/** The first day of every story told here. */
const FIRST_DAY = "2026-03-02";

/** The day so many days after the first. */
export function day(offset: number): string {
  return addDays(FIRST_DAY, offset);
}

/** A food that keeps as said; all else of it is of no matter here. */
export function makeFood(id: string, unopened: Food["keeping"]["unopened"], opened: Food["keeping"]["opened"]): Food {
  return {
    id,
    group: "dairy",
    names: { british: [id], american: [id] },
    diet: "vegan",
    vegetableOrFruit: false,
    hygiene: "ready-to-eat",
    allergens: { eu: [], us: [] },
    refusePct: 0,
    pieces: [],
    keeping: { unopened, opened, authority: "common practice, no source" },
    figureSources: {},
    source: "a table",
    composition: {},
  };
}

export const milk = makeFood("milk", { fridge: 7, freezer: 90 }, { fridge: 3, freezer: 60 });
export const beans = makeFood("beans-tinned", { "dry-store": 700 }, { fridge: 2, freezer: 60 });
export const rice = makeFood("rice", { "dry-store": 400 }, { "dry-store": 200 });
export const foods = new Map([milk, beans, rice].map((food) => [food.id, food]));

/** A purchase on the first day, with what is given put in its place. */
export function buy(lot: string, over: Partial<Extract<Movement, { kind: "bought" }>> = {}): Movement {
  return { kind: "bought", on: FIRST_DAY, lot, food: "milk", place: "fridge", massG: 1000, costMinor: 100, ...over };
}

const lotIds = fc.constantFrom("lot-a", "lot-b", "lot-c", "lot-d");
const days = fc.nat(20).map(day);
const masses = fc.oneof(fc.constantFrom(1, 100, 250, 1000), fc.double({ min: 0.01, max: 700, noNaN: true }));
const places = fc.constantFrom("dry-store", "fridge", "freezer");
const kept = fc.constantFrom(
  { food: "milk", place: "fridge" },
  { food: "milk", place: "freezer" },
  { food: "beans-tinned", place: "dry-store" },
  { food: "rice", place: "dry-store" },
);

const purchases = fc
  .record({
    on: fc.nat(6).map(day),
    lot: lotIds,
    where: kept,
    massG: masses,
    costMinor: fc.nat(900),
    useBy: fc.option(days, { nil: undefined }),
  })
  .map(({ where, ...rest }) => ({ kind: "bought", ...where, ...rest }) as Movement);
const events = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("used" as const), on: days, lot: lotIds, massG: masses }) },
  fc.record({ kind: fc.constant("wasted" as const), on: days, lot: lotIds, massG: masses }),
  fc.record({ kind: fc.constant("counted" as const), on: days, lot: lotIds, massG: fc.oneof(fc.constant(0), masses) }),
  fc.record({ kind: fc.constant("opened" as const), on: days, lot: lotIds }),
  fc.record({ kind: fc.constant("labelled" as const), on: days, lot: lotIds, useBy: days }),
  fc.record({ kind: fc.constant("moved" as const), on: days, lot: lotIds, to: places }),
  fc.record({
    kind: fc.constant("moved" as const),
    on: days,
    lot: lotIds,
    to: places,
    part: fc.record({ massG: masses, lot: fc.constantFrom("part-a", "part-b") }),
  }),
) as fc.Arbitrary<Movement>;

/** Movements of every kind in any order, possible and impossible ones; most lots are bought at the start. */
export const stories: fc.Arbitrary<Movement[]> = fc
  .tuple(fc.array(purchases, { minLength: 1, maxLength: 5 }), fc.array(events, { maxLength: 25 }))
  .map(([bought, others]) => [...bought, ...others]);
