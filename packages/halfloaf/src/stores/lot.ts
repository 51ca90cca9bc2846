import * as v from "valibot";
import { Id, PLACES } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";

const wholeDays = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
/** Whole days that cooked portions keep after they were cooked; without `freezerDays` they are not frozen. */
export const PortionsKeep = v.strictObject({ fridgeDays: wholeDays, freezerDays: v.optional(wholeDays) });

/** What a lot is besides how much of it is there. */
const LotFacts = {
  id: Id,
  food: Id,
  place: v.picklist(PLACES),
  boughtOn: CivilDate,
  /** The day it came to its place; absent = it has been there since it was bought. */
  placedOn: v.optional(CivilDate),
  /** Absent = unopened. */
  openedOn: v.optional(CivilDate),
  /** The day it was taken out of the freezer; absent = it was never frozen, or is frozen still. */
  thawedOn: v.optional(CivilDate),
  /** Last day of its unopened life where it was before its place changed; absent = it was in no other place. */
  unopenedUntil: v.optional(CivilDate),
  /** Last day on the label for the sake of safety. */
  useBy: v.optional(CivilDate),
  /** Last day on the label for the sake of quality. */
  bestBefore: v.optional(CivilDate),
  /** True for separate pieces: taking some leaves the others whole, so it is never opened. */
  loose: v.optional(v.literal(true)),
  /** Id of the pack it was bought as. */
  pack: v.optional(Id),
  /** True where nobody knows what it cost: its cost is then 0, the least it was. */
  costUnknown: v.optional(v.literal(true)),
};

/** Stock of one pack: mass in g as purchased, and what that mass cost in whole minor units. */
export const Lot = v.pipe(
  v.strictObject({
    ...LotFacts,
    massG: v.pipe(v.number(), v.gtValue(0)),
    costMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  }),
  v.forward(
    v.partialCheck(
      [["boughtOn"], ["openedOn"], ["placedOn"], ["thawedOn"]],
      ({ boughtOn, openedOn, placedOn, thawedOn }) =>
        [openedOn, placedOn, thawedOn].every((day) => day === undefined || day >= boughtOn),
      "no day before it was bought",
    ),
    ["boughtOn"],
  ),
  v.forward(
    v.partialCheck(
      [["loose"], ["openedOn"]],
      ({ loose, openedOn }) => loose === undefined || openedOn === undefined,
      "nothing for separate pieces, which are never opened",
    ),
    ["openedOn"],
  ),
  v.forward(
    v.partialCheck(
      [["costUnknown"], ["costMinor"]],
      ({ costUnknown, costMinor }) => costUnknown === undefined || costMinor === 0,
      "0 where the cost is not known",
    ),
    ["costMinor"],
  ),
);
export type Lot = v.InferOutput<typeof Lot>;

/**
 * Cooked portions of a dish that are at hand without having been cooked here: when the record begins, a gift. Masses in g as
 * cooked; all of them cost `costMinor` in whole minor units.
 */
export const StockedPortions = v.strictObject({
  id: Id,
  dish: Id,
  portions: v.pipe(v.number(), v.gtValue(0)),
  /** Cooked mass of one portion in g. */
  portionG: v.pipe(v.number(), v.gtValue(0)),
  place: v.picklist(["fridge", "freezer"]),
  cookedOn: CivilDate,
  keeps: PortionsKeep,
  costMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  /** All foods that went in; absent = nobody knows. */
  foods: v.optional(v.array(Id)),
});
export type StockedPortions = v.InferOutput<typeof StockedPortions>;
