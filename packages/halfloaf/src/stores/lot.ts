import * as v from "valibot";
import { Id, PLACES } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";

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
