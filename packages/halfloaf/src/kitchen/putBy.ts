import * as v from "valibot";
import { Id } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";

/** Cooked portions of a dish that lie in the freezer or the fridge. */
export const PutBy = v.strictObject({
  id: Id,
  dish: Id,
  /** Standard portions. */
  portions: v.pipe(v.number(), v.gtValue(0)),
  place: v.picklist(["fridge", "freezer"]),
  cookedOn: CivilDate,
  /** Last day; absent = as many days after it was cooked as the dish says for the place. */
  keepsUntil: v.optional(CivilDate),
  /** What all of them cost. */
  costMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  /** Foods that went in, optional ones too; absent = as the dish is written, and whatever is optional may be in it. */
  foods: v.optional(v.array(Id), []),
});
export type PutBy = v.InferOutput<typeof PutBy>;

/** How many portions a plan may cook for later weeks: boxes of one size, at most one a day, into the freezer. */
export const PuttingBy = v.pipe(
  v.strictObject({
    /** Standard portions in a box. */
    portions: v.pipe(v.number(), v.gtValue(0)),
    /** Fewest and most boxes in a week. */
    least: v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)), 0),
    most: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(7)), 2),
    /** Boxes in the freezer with which it is enough: no plan fills more than are missing to it; absent = it never is. */
    enough: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1))),
  }),
  v.forward(
    v.partialCheck([["least"], ["most"]], ({ least, most }) => least <= most, "no more than most"),
    ["least"],
  ),
);
export type PuttingBy = v.InferOutput<typeof PuttingBy>;
