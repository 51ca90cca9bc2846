import * as v from "valibot";
import { SITTING_KINDS } from "../dish/index.ts";
import { Id } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";
import { Lot } from "../stores/index.ts";
import { WISH_ENTRIES } from "./wish.ts";

const minor = v.pipe(v.number(), v.integer());
const amount = v.pipe(v.number(), v.minValue(0));
const index = v.pipe(v.number(), v.integer(), v.minValue(0));
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

/** One sitting of the plan and what is eaten at it. */
const PlannedSitting = v.strictObject({
  date: CivilDate,
  kind: v.picklist(SITTING_KINDS),
  eaters: v.array(Id),
  heat: v.boolean(),
  packed: v.boolean(),
  dish: Id,
  /** Position in `batches`. */
  batch: index,
  /** True where the plate comes from an earlier cooking. */
  leftover: v.boolean(),
  /** Standard portions eaten, all eaters together. */
  portions: amount,
  /** Hands-on minutes at this sitting, and minutes from the first step to the plate. */
  handsOnMinutes: amount,
  elapsedMinutes: amount,
  /** Plate cost of each eater, in the order of `eaters`; they add up to the sitting's share of its batch. */
  plateMinor: v.array(minor),
});

/** So much of one lot in one batch, at the lot's cost; the food of portions put by is their dish. */
const BatchUse = v.strictObject({ lot: Id, food: Id, massG: amount, costMinor: minor });

/** One cooking: what goes into it, from which lot, and what that cost. */
const PlannedCooking = v.strictObject({
  dish: Id,
  date: CivilDate,
  kind: v.picklist(SITTING_KINDS),
  portions: amount,
  handsOnMinutes: amount,
  elapsedMinutes: amount,
  /**
   * Vessels to wash up after it, plates not counted; of what is cooked at once with it those that it adds to the batches before
   * it. Absent in a plan kept before this was said.
   */
  vessels: v.optional(index),
  /**
   * Positions in `batches` of what is cooked at once with it; its elapsed minutes are then those of all of it, and the washing
   * between the dishes is shared out. Absent = it is cooked by itself, or the plan was kept before this was said.
   */
  together: v.optional(v.array(index)),
  /** Where its portions lay cooked already; absent = it is cooked. */
  putBy: v.optional(v.picklist(["fridge", "freezer"])),
  /** Makings taken otherwise than the dish first states; absent = none, or a plan kept before this was said. */
  taken: v.optional(v.array(v.strictObject({ food: Id, insteadOf: Id }))),
  uses: v.array(BatchUse),
  costMinor: minor,
});

/** Packs of one kind on one bill. */
const BuyingLine = v.strictObject({
  pack: Id,
  food: Id,
  label: v.string(),
  section: v.string(),
  count: v.pipe(v.number(), v.integer(), v.minValue(1)),
  massG: amount,
  /** What the till says for all of them, offers taken off. */
  priceMinor: minor,
  /** What the offers took off. */
  savedMinor: minor,
  estimate: v.boolean(),
  /** Day the price was seen; absent for an estimate. */
  seenOn: v.optional(CivilDate),
});

const PlannedTrip = v.strictObject({
  shop: Id,
  date: CivilDate,
  lines: v.array(BuyingLine),
  tillMinor: minor,
  massG: amount,
  /** Fare and the like, apart from the till. */
  fareMinor: minor,
  minutes: amount,
});

/** A box of portions that a batch leaves for later weeks, at its share of the batch's cost. */
const PlannedBox = v.strictObject({
  id: Id,
  dish: Id,
  /** Position in `batches`. */
  batch: index,
  portions: amount,
  place: v.literal("freezer"),
  cookedOn: CivilDate,
  /** Day it goes into the freezer. */
  on: CivilDate,
  keepsUntil: CivilDate,
  costMinor: minor,
  /** What went into it. */
  foods: v.array(Id),
});

/** A lot of the plan with where its grams and its cost went; each adds up. */
const LotAccount = v.strictObject({
  id: Id,
  food: Id,
  from: v.picklist(["stores", "bought"]),
  massG: amount,
  costMinor: minor,
  openedOn: v.optional(CivilDate),
  /** Last day it may be used, by label, pack and opened life. */
  keepsUntil: v.optional(CivilDate),
  usedG: amount,
  usedMinor: minor,
  wastedG: amount,
  wastedMinor: minor,
  leftG: amount,
  leftMinor: minor,
});

/**
 * A lot that came to hand besides what the plan bought: found, or bought besides its lists. It is among the lots of the stores, and
 * `paidMinor` is what a till said for it, 0 for what was found. `planned` is the lot that it was to be on a trip, before which it
 * was bought; absent = the plan knew nothing of it.
 */
const LotBesides = v.strictObject({ stock: Lot, paidMinor: minor, planned: v.optional(Id) });

/** The sums of the plan: opening + till = plates + waste + carry-over. */
const WeekAccounts = v.strictObject({
  openingMinor: minor,
  tillMinor: minor,
  /** Part of the till that rests on estimated prices. */
  estimatedMinor: minor,
  /** What the tills would come to if the estimated prices rose by so many percent; absent where that was not asked. */
  risen: v.optional(v.strictObject({ pct: amount, tillMinor: minor })),
  faresMinor: minor,
  platesMinor: minor,
  wasteMinor: minor,
  carryOverMinor: minor,
  budgetMinor: v.optional(minor),
  /** Of cooking alone: serving what is left over and going to the shops are not in it. */
  handsOnMinutes: amount,
  /** Vessels to wash up after all cookings, and the minutes that takes; absent in a plan kept before this was said. */
  washUp: v.optional(v.strictObject({ vessels: index, minutes: amount })),
});

/** What an eater gets of one component in a day, on average, against its reference. */
const IntakeLine = v.strictObject({
  component: v.string(),
  kind: v.picklist(["at-least", "at-most"]),
  basis: v.string(),
  referencePerDay: amount,
  /** The known part; absent where nothing is known. */
  knownPerDay: v.optional(amount),
  /** Share of the food eaten, by mass, whose figure is known. */
  knownShare: share,
  verdict: v.picklist(["met", "short", "above", "open"]),
  source: v.string(),
});

/** An eater's week; energy and references cover the sittings eaten here. */
const EaterIntake = v.strictObject({
  eater: Id,
  /** Energy need of the sittings eaten here, a day; absent where it is left to care. */
  energyNeedKj: v.optional(amount),
  energyKj: amount,
  /** Share of the need that is eaten here. */
  hereShare: share,
  lines: v.array(IntakeLine),
  /** Why there is no assessment, where there is none. */
  referred: v.optional(v.string()),
});

/** A caution, where the hand needs it, with who says so. */
const PlanCaution = v.strictObject({
  code: v.string(),
  dishes: v.array(Id),
  text: v.string(),
  authority: v.string(),
});

/** A wish of the kitchen for some of the days, as it was when they were planned, and how it came out. */
const CountedWish = v.strictObject({
  ...WISH_ENTRIES,
  from: CivilDate,
  to: CivilDate,
  /** Servings of what was wished for in these days, where it was wished for. */
  served: index,
});

/** A week's plan as a file: money in minor units, masses in g as purchased, energy in kJ. */
export const WeekPlan = v.strictObject({
  format: v.literal("halfloaf-week"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  from: CivilDate,
  days: v.pipe(v.number(), v.integer(), v.minValue(1)),
  search: v.strictObject({ seed: v.number(), moves: v.number(), moneyMinor: v.number() }),
  sittings: v.array(PlannedSitting),
  batches: v.array(PlannedCooking),
  trips: v.array(PlannedTrip),
  lots: v.array(LotAccount),
  /** What came besides the plan and is planned with; absent = nothing. */
  besides: v.optional(v.array(LotBesides)),
  /** Boxes put by for later weeks; what they cost is part of the carry-over. */
  boxes: v.optional(v.array(PlannedBox)),
  accounts: WeekAccounts,
  intake: v.array(EaterIntake),
  cautions: v.array(PlanCaution),
  /** Absent = nothing was wished for in these days, or a plan kept before this was said. */
  wishes: v.optional(v.array(CountedWish)),
});
export type WeekPlan = v.InferOutput<typeof WeekPlan>;
