import { SITTING_KINDS } from "halfloaf/dish";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer());
const amount = v.pipe(v.number(), v.minValue(0));

const Planned = v.strictObject({ tillMinor: minor, faresMinor: minor, platesMinor: minor, wasteMinor: minor });

/** One line: opening + entered + till = plates + waste + carry-over, all at lot cost. */
const AccountsLine = v.strictObject({
  name: v.string(),
  from: CivilDate,
  to: CivilDate,
  openingMinor: minor,
  enteredMinor: minor,
  tillMinor: minor,
  platesMinor: minor,
  wasteMinor: minor,
  /** Part of the waste that was found missing when counting. */
  missingMinor: minor,
  carryOverMinor: minor,
  faresMinor: minor,
  ateOutMinor: minor,
  /** What the accepted weeks said of these days; absent where none held any. */
  planned: v.optional(Planned),
});

const Sitting = v.strictObject({
  on: CivilDate,
  sitting: v.picklist(SITTING_KINDS),
  plannedMinor: minor,
  eatenMinor: minor,
  plannedPlates: amount,
  eatenPlates: amount,
  /** True where what was eaten cost that much at least. */
  atLeast: v.boolean(),
});

const Cooking = v.strictObject({
  on: CivilDate,
  dish: v.string(),
  portions: amount,
  costMinor: minor,
  portionMinor: amount,
  atLeast: v.boolean(),
  /** Absent where it was not planned. */
  plannedPortionMinor: v.optional(amount),
});

const Saving = v.strictObject({
  kind: v.picklist(["smaller-pack", "freeze", "eat"]),
  pack: v.optional(v.string()),
  count: v.optional(amount),
  savesMinor: v.optional(minor),
  by: v.optional(CivilDate),
});

const Loss = v.strictObject({
  food: v.optional(v.string()),
  dish: v.optional(v.string()),
  massG: amount,
  costMinor: minor,
  lots: v.array(
    v.strictObject({
      lot: v.string(),
      on: CivilDate,
      massG: amount,
      costMinor: minor,
      missingG: amount,
      savings: v.array(Saving),
    }),
  ),
});

/** What was planned, spent, eaten and wasted. Money in minor units, masses in g. */
export const AccountsReport = v.strictObject({
  format: v.literal("halfloaf-accounts"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  from: CivilDate,
  to: CivilDate,
  lines: v.array(AccountsLine),
  budget: v.strictObject({
    from: CivilDate,
    to: CivilDate,
    spentMinor: minor,
    ateOutMinor: minor,
    budgetMinor: v.optional(minor),
    leftMinor: v.optional(minor),
  }),
  sittings: v.array(Sitting),
  cookings: v.array(Cooking),
  waste: v.array(Loss),
  /** The same waste by the reason told for it, the dearest first; "missing" = a count did not find it, absent = nobody said why. */
  wasteByReason: v.array(v.strictObject({ why: v.optional(v.string()), massG: amount, costMinor: minor })),
  /** What cooking drew, an estimate apart from the sums; absent where no price of a kWh was given. */
  energy: v.optional(v.strictObject({ kwh: amount, costMinor: minor })),
});
export type AccountsReport = v.InferOutput<typeof AccountsReport>;
