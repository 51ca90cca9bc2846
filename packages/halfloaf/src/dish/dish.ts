import * as v from "valibot";
import { Id } from "../food/food.ts";
import { Amount } from "../quantity/amount.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const minutes = v.pipe(v.number(), v.minValue(0));
const wholeDays = v.pipe(v.number(), v.integer(), v.minValue(0));

export const SITTING_KINDS = ["morning", "midday", "between", "evening"] as const;

/** What is held or filled while a step runs; the vessels among it are washed up afterwards. */
export const KIT_PARTS = [
  "ring",
  "pan",
  "pot",
  "oven",
  "tray",
  "microwave",
  "kettle",
  "board",
  "bowl",
  "blender",
] as const;
export type KitPart = (typeof KIT_PARTS)[number];

/** Kinds of step; the pace of a cook is learned by kind. */
export const STEP_KINDS = [
  "wash",
  "cut",
  "grate",
  "mix",
  "knead",
  "soak",
  "rest",
  "chill",
  "heat-water",
  "boil",
  "simmer",
  "steam",
  "fry",
  "bake",
  "grill",
  "microwave",
  "blend",
  "drain",
  "assemble",
  "serve",
] as const;

/** How a dish is cooked, for variety over the week. */
export const MANNERS = [
  "no-heat",
  "porridge",
  "soup",
  "stew",
  "one-pot-grain",
  "stir-fry",
  "pan",
  "bake",
  "salad",
  "sandwich",
  "pasta",
  "noodles",
  "eggs",
  "dip",
  "curry",
] as const;

const Choice = { food: Id, amount: Amount, as: v.optional(v.literal("purchased")) };

/** One making: so much of a food, edible portion unless `as` says purchased. */
export const Making = v.strictObject({
  ...Choice,
  /** How it is made ready ("finely chopped"). */
  cut: v.optional(text),
  /** Code of the USDA Table of Nutrient Retention Factors, Release 6; absent = eaten raw, nothing lost. */
  retention: v.optional(v.pipe(v.string(), v.regex(/^\d{4}$/, "four digits"))),
  optional: v.optional(v.boolean(), false),
  /** Foods that may take its place, each with its own amount. */
  alternatives: v.optional(v.array(v.strictObject(Choice)), []),
});
export type Making = v.InferOutput<typeof Making>;

/** One step of the method; its length is `fixed + perPortion x portions` minutes. */
export const Step = v.strictObject({
  id: Id,
  text,
  kind: v.picklist(STEP_KINDS),
  minutes: v.strictObject({ fixed: minutes, perPortion: v.optional(minutes, 0) }),
  /** full: both hands; eye: keep an eye on it, one more such job may go on beside it; none: it does itself. */
  hands: v.picklist(["full", "eye", "none"]),
  kit: v.optional(v.array(v.picklist(KIT_PARTS)), []),
  /** Oven or fat temperature in degrees Celsius, where the step has one. */
  tempC: v.optional(v.number()),
  /** Ids of steps that must be finished before this one starts. */
  after: v.optional(v.array(Id), []),
  /** Longest wait in minutes between its end and the start of what comes next; absent = it can wait. */
  holdMinutes: v.optional(minutes),
  /** True for what is done hours before or the evening before (a soak, a marinade): outside the sitting's minutes. */
  ahead: v.optional(v.boolean(), false),
  /** Ids of makings handled in this step. */
  foods: v.optional(v.array(Id), []),
});
export type Step = v.InferOutput<typeof Step>;

/** A dish as a standard recipe: makings + method + yield in portions. */
export const Dish = v.strictObject({
  id: Id,
  title: text,
  /** Where this way of cooking is at home, as free text. */
  cooking: text,
  manner: v.picklist(MANNERS),
  fits: v.pipe(v.array(v.picklist(SITTING_KINDS)), v.minLength(1)),
  /** The making that counts for variety of main ingredient. */
  main: Id,
  portions: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** Cooked mass of one portion in g, as served; an estimate of the author. */
  portionMassG: v.pipe(v.number(), v.gtValue(0)),
  /**
   * Minutes from the first step to the plate for its portions, as its author says, without what is done ahead; absent =
   * the author says nothing. No plan reckons with it: `compareStated` of the kitchen holds it against the order of work.
   */
  statedMinutes: v.optional(v.pipe(v.number(), v.gtValue(0))),
  makings: v.pipe(v.array(Making), v.minLength(1)),
  method: v.pipe(v.array(Step), v.minLength(1)),
  keeps: v.strictObject({
    /** Whole days after the day of cooking; 0 = eaten the day it is made. */
    fridgeDays: wholeDays,
    freezerDays: v.optional(wholeDays),
    authority: text,
  }),
  travels: v.boolean(),
  /** The ways a portion may be served; a leftover eaten cold needs no heat. */
  served: v.pipe(v.array(v.picklist(["hot", "cold"])), v.minLength(1)),
  /** Cautions of this dish alone; those that follow from its foods are added by the program. */
  cautions: v.optional(v.array(text), []),
  note: v.optional(text),
});
export type Dish = v.InferOutput<typeof Dish>;
