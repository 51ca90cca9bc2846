import * as v from "valibot";
import { MANNERS, SITTING_KINDS } from "../dish/index.ts";
import { DIETS, FOOD_GROUPS, HYGIENE_CLASSES, Id } from "../food/index.ts";

const weekday = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(7));
const kinds = v.pipe(v.array(v.picklist(SITTING_KINDS)), v.minLength(1));
const times = v.pipe(v.number(), v.integer(), v.minValue(0));

/** Dishes that are meant: those for which every key given here holds. */
export const Meant = v.pipe(
  v.strictObject({
    dish: v.optional(Id),
    manner: v.optional(v.picklist(MANNERS)),
    /** The main food. */
    main: v.optional(Id),
    /** A food of this group goes in, as the dish is cooked for those who eat it. */
    group: v.optional(v.picklist(FOOD_GROUPS)),
    /** A food of this hygiene class goes in. */
    hygiene: v.optional(v.picklist(HYGIENE_CLASSES)),
    /** All that goes in suits this way of eating. */
    diet: v.optional(v.picklist(DIETS)),
  }),
  v.check(
    (meant) => Object.values(meant).some((value) => value !== undefined),
    "at least one of dish, manner, main, group, hygiene, diet",
  ),
);
export type Meant = v.InferOutput<typeof Meant>;

/** What a wish says: of which dishes, where, how often. */
export const WISH_ENTRIES = {
  what: Meant,
  /** ISO 8601 weekdays, Monday = 1; absent = any day. */
  on: v.optional(v.pipe(v.array(weekday), v.minLength(1))),
  /** Kinds of sitting; absent = all. */
  at: v.optional(kinds),
  /** Only sittings that one of these eaters attends; absent = all. */
  eaters: v.optional(v.pipe(v.array(Id), v.minLength(1))),
  least: v.optional(times),
  most: v.optional(times),
  /** Price of each serving too few or too many, in minor units; absent = it must hold. */
  missMinor: v.optional(v.pipe(v.number(), v.minValue(0))),
};

/** How often dishes are wanted in a week ("fish on Friday", "soup once"): servings, leftovers among them. */
export const Wish = v.pipe(
  v.strictObject(WISH_ENTRIES),
  v.check(({ least, most }) => least !== undefined || most !== undefined, "least, most or both"),
  v.forward(
    v.partialCheck(
      [["least"], ["most"]],
      ({ least, most }) => least === undefined || most === undefined || least <= most,
      "no more than most",
    ),
    ["least"],
  ),
);
export type Wish = v.InferOutput<typeof Wish>;

/** How much alike the plates of one eater may be; leftovers count too. */
export const VarietyRule = v.pipe(
  v.strictObject({
    /** What makes two plates alike: the same way of cooking, main food or dish. */
    by: v.picklist(["manner", "main", "dish"]),
    /** Kinds of sitting, each looked at by itself; absent = each there is. */
    at: v.optional(kinds),
    mostPerWeek: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1))),
    /** Days from one to the next at least: 2 = not on two days running. */
    daysApart: v.optional(v.pipe(v.number(), v.integer(), v.minValue(2), v.maxValue(28))),
  }),
  v.check(
    ({ mostPerWeek, daysApart }) => mostPerWeek !== undefined || daysApart !== undefined,
    "mostPerWeek, daysApart or both",
  ),
);
export type VarietyRule = v.InferOutput<typeof VarietyRule>;
