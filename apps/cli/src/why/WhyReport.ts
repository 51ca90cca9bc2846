import { SITTING_KINDS } from "halfloaf/dish";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer());
const amount = v.pipe(v.number(), v.minValue(0));
const SittingRef = v.strictObject({ date: CivilDate, kind: v.picklist(SITTING_KINDS), eaters: v.array(v.string()) });

/** A limit that binds or nearly does, and what loosening it saves. */
const LimitReason = v.strictObject({
  kind: v.string(),
  /** The day or the sitting it is about, where it has one of its own. */
  date: v.optional(CivilDate),
  sitting: v.optional(SittingRef),
  /** What the limit allows, what the plan comes to and by how much it was loosened, in the unit of the limit. */
  allowed: amount,
  reached: amount,
  step: amount,
  /** At least so much is saved; 0 where the search found nothing. */
  savesMinor: minor,
  sentence: v.string(),
});

/** What a dish takes from a lot, and with which sittings it shares it. */
const SharedReason = v.strictObject({
  food: v.string(),
  from: v.picklist(["stores", "bought"]),
  massG: amount,
  with: v.array(SittingRef),
  finishes: v.boolean(),
  savedFromWasteG: amount,
});

/** Why a dish stands at a sitting. Absent money: no plan without it was found. */
const DishReason = v.strictObject({
  sitting: SittingRef,
  dish: v.string(),
  shares: v.array(SharedReason),
  withoutHereMinor: v.optional(minor),
  withoutAnywhereMinor: v.optional(minor),
  sentences: v.array(v.string()),
});

/** What a dish that does not stand at a sitting would do there. */
const OtherDishReason = v.strictObject({
  sitting: SittingRef,
  dish: v.string(),
  outcome: v.picklist(["served", "unfit", "dearer", "breaks"]),
  extraMinor: v.optional(minor),
  sentences: v.array(v.string()),
});

/** The same menu with a food bought in certain packs. */
const PackChoice = v.strictObject({
  packs: v.array(v.strictObject({ pack: v.string(), label: v.string(), shop: v.string(), count: amount })),
  tillMinor: minor,
  leftG: amount,
  wasteG: amount,
  extraMinor: minor,
});

const PackReason = v.strictObject({
  food: v.string(),
  chosen: PackChoice,
  others: v.array(PackChoice),
  /** Packs with which alone no plan with this menu was found, and what is in the way. */
  impossible: v.array(v.strictObject({ pack: v.string(), hindrance: v.picklist(["no-trip", "too-late", "limits"]) })),
  sentences: v.array(v.string()),
});

/** The reasons of a plan as data. `extra`, `without` and `saves` are money as the planner weighs it, all in minor units. */
export const WhyReport = v.strictObject({
  format: v.literal("halfloaf-why"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  from: CivilDate,
  days: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** The plan, weighed with minutes, dislikes and shortfalls. */
  moneyMinor: minor,
  limits: v.optional(v.array(LimitReason)),
  dishes: v.optional(v.array(DishReason)),
  otherDishes: v.optional(v.array(OtherDishReason)),
  packs: v.optional(v.array(PackReason)),
});
export type WhyReport = v.InferOutput<typeof WhyReport>;
