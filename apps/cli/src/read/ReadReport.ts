import { Dish, Making, SITTING_KINDS, Step } from "halfloaf/dish";
import { Offer, Pack, Seen } from "halfloaf/price";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";
import { Fault } from "../words/Fault.ts";

const text = v.string();
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const minor = v.pipe(v.number(), v.integer());
const Named = v.strictObject({ id: text, name: text });

/** A field that is less than sure, and why, as a code. */
export const Doubt = v.strictObject({ field: text, sure: v.picklist(["likely", "guess"]), reason: text });
export type Doubt = v.InferOutput<typeof Doubt>;

/** Something that did not fit, where it stands in what was read. */
const Misfit = v.strictObject({
  code: text,
  path: v.array(v.union([text, v.number()])),
  expected: text,
  received: text,
  message: v.optional(text),
});

/** A line of makings beside what it was understood as. */
export const ReadMaking = v.strictObject({
  /** By which the command line settles it, counted from 1. */
  number: count,
  text,
  heading: v.optional(text),
  /** It is no part of the dish: a person said so, or it is water, which the food table does not hold. */
  leftOut: v.optional(v.literal(true)),
  /** What the line calls the food. */
  name: text,
  /** Absent where it isn't sure which food is meant. */
  food: v.optional(Named),
  /** The nearest foods. */
  offers: v.array(Named),
  amount: v.optional(Making.entries.amount),
  as: v.optional(v.literal("purchased")),
  cut: v.optional(text),
  optional: v.boolean(),
  alternatives: v.array(Named),
  doubts: v.array(Doubt),
  /** Pieces of the line that went into nothing. */
  unread: v.array(text),
});
export type ReadMaking = v.InferOutput<typeof ReadMaking>;

const ReadStep = v.strictObject({
  id: text,
  text,
  kind: Step.entries.kind,
  minutes: v.strictObject({ fixed: v.number(), perPortion: v.number() }),
  hands: Step.entries.hands,
  kit: v.array(text),
  tempC: v.optional(v.number()),
  after: v.array(text),
  holdMinutes: v.optional(v.number()),
  ahead: v.boolean(),
  doubts: v.array(Doubt),
});
export type ReadStep = v.InferOutput<typeof ReadStep>;

/** A dish as it was understood; `dish` is there where nothing is open. */
export const ReadDish = v.strictObject({
  id: text,
  title: v.optional(text),
  portions: v.optional(v.number()),
  portionMassG: v.optional(v.number()),
  main: v.optional(Named),
  statedMinutes: v.optional(v.number()),
  manner: text,
  fits: v.array(v.picklist(SITTING_KINDS)),
  cooking: text,
  doubts: v.array(Doubt),
  makings: v.array(ReadMaking),
  steps: v.array(ReadStep),
  unread: v.array(text),
  issues: v.array(Misfit),
  /** What keeps it from being a dish. */
  open: v.array(Fault),
  dish: v.optional(Dish),
});
export type ReadDish = v.InferOutput<typeof ReadDish>;

const Sourced = v.strictObject({ figure: v.number(), source: text });

/** What taking figures from elsewhere does to one component of a food. */
const FigureChange = v.strictObject({
  component: text,
  kind: v.picklist(["same", "changed", "gained", "kept", "forgotten"]),
  now: v.optional(Sourced),
  taken: v.optional(Sourced),
});

/** A food of the table at hand beside where its new figures come from. */
export const FoodBeside = v.strictObject({
  food: Named,
  from: text,
  changes: v.array(FigureChange),
  /** Figures that contradict each other once they are taken, as codes. */
  contradictions: v.array(text),
});
export type FoodBeside = v.InferOutput<typeof FoodBeside>;

/** A price on a receipt or in a list, and the pack it is of. */
export const ReadPrice = v.strictObject({
  line: count,
  label: text,
  priceMinor: minor,
  discountMinor: v.optional(minor),
  /** How much of it, as printed. */
  measure: v.optional(text),
  shop: v.optional(text),
  content: v.optional(Pack.entries.content),
  gtin: v.optional(text),
  offer: v.optional(Offer),
  seen: v.optional(Seen),
  /** Absent where no pack is known for sure. */
  pack: v.optional(v.strictObject({ id: text, by: v.picklist(["gtin", "memory", "label"]), wasMinor: minor })),
  nearest: v.array(v.strictObject({ pack: text, label: text })),
  /** price: a price of a known pack; new-pack: settled as one; open: no pack is known; else why it tells no price. */
  outcome: v.picklist([
    "price",
    "new-pack",
    "pack-open",
    "day-unknown",
    "shop-unknown",
    "price-not-whole",
    "content-unlike",
  ]),
});
export type ReadPrice = v.InferOutput<typeof ReadPrice>;

const MakingsPart = v.strictObject({
  kind: v.literal("makings"),
  file: text,
  makings: v.array(ReadMaking),
  headings: v.array(text),
});
const DishPart = v.strictObject({
  kind: v.picklist(["dish", "page"]),
  file: text,
  form: v.picklist(["json-ld", "microdata", "rdfa", "text"]),
  dishes: v.array(ReadDish),
  issues: v.array(Misfit),
});
const TablePart = v.strictObject({
  kind: v.literal("table"),
  file: text,
  title: text,
  counts: v.strictObject({ foods: count, figures: count, otherComponents: count, otherRows: count }),
  issueCount: count,
  issues: v.array(Misfit),
  /** The food of ours whose nearest foods of the table were asked for. */
  near: v.optional(text),
  /** Foods of ours that may be compared with foods of the table. */
  offered: v.array(
    v.strictObject({ food: Named, official: Named, by: v.picklist(["number", "name"]), nearness: v.number() }),
  ),
  taken: v.array(FoodBeside),
});
const PricesPart = v.strictObject({
  kind: v.literal("prices"),
  file: text,
  currency: text,
  rows: v.array(ReadPrice),
  issueCount: count,
  issues: v.array(Misfit),
});
const ReceiptPart = v.strictObject({
  kind: v.literal("receipt"),
  file: text,
  currency: text,
  shop: v.optional(text),
  shopText: v.optional(text),
  date: v.optional(CivilDate),
  rows: v.array(ReadPrice),
  extras: v.array(v.strictObject({ line: count, name: text, kind: text, amountMinor: minor })),
  totalMinor: v.optional(minor),
  balance: v.strictObject({
    kind: v.picklist(["equal", "tax-added", "apart", "no-total"]),
    sumMinor: minor,
    taxMinor: v.optional(minor),
    apartMinor: v.optional(minor),
  }),
  unread: v.array(v.strictObject({ line: count, text })),
  issues: v.array(Misfit),
});
const FoodsPart = v.strictObject({
  kind: v.literal("foods"),
  file: text,
  foods: v.array(Named),
  taken: v.array(FoodBeside),
});

/** What one file was understood as. */
const ReadPart = v.union([MakingsPart, DishPart, TablePart, PricesPart, ReceiptPart, FoodsPart]);
export type ReadPart = v.InferOutput<typeof ReadPart>;
export type PartOf<Kind extends ReadPart["kind"]> = Extract<ReadPart, { kind: Kind }>;

/** What `halfloaf read` gives as data. Money in minor units; what is absent is unknown. */
export const ReadReport = v.strictObject({
  format: v.literal("halfloaf-reading"),
  version: v.literal(1),
  parts: v.array(ReadPart),
  /** Files that were written. */
  kept: v.array(text),
});
export type ReadReport = v.InferOutput<typeof ReadReport>;
