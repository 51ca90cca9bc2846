import * as v from "valibot";
import { Id, PLACES } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";
import { Lot, PortionsKeep, StockedPortions } from "./lot.ts";

const massG = v.pipe(v.number(), v.gtValue(0));
const costMinor = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const place = v.picklist(PLACES);
const base = { on: CivilDate, lot: Id };

/** So much of one lot that went into a cooking, and what became of the pack where some of it stays. */
const CookedUse = v.strictObject({
  lot: Id,
  massG,
  /** True where the pack was opened for it. */
  opens: v.optional(v.literal(true)),
  /** Where the rest was put; absent = it stays where it is. */
  movesTo: v.optional(place),
});
export type CookedUse = v.InferOutput<typeof CookedUse>;

/**
 * The keys of each kind of movement, for whoever keeps movements with more to say about them. What counts as one movement
 * happened on one day.
 */
export const MOVEMENT_ENTRIES = {
  /** It was at hand without having been bought here: when the record begins, a gift, a find. */
  stocked: { kind: v.literal("stocked"), on: CivilDate, stock: v.union([Lot, StockedPortions]) },
  /** A pack came home and became a lot. */
  bought: {
    kind: v.literal("bought"),
    ...base,
    food: Id,
    place,
    massG,
    costMinor,
    useBy: v.optional(CivilDate),
    bestBefore: v.optional(CivilDate),
    loose: v.optional(v.literal(true)),
    pack: v.optional(Id),
  },
  /** It went to another place; with `part` only that much of it did, and became a lot of its own. */
  moved: { kind: v.literal("moved"), ...base, to: place, part: v.optional(v.strictObject({ massG, lot: Id })) },
  opened: { kind: v.literal("opened"), ...base },
  /** What its label says was read: these days hold in place of those told before; one that is absent is not on it. */
  labelled: {
    kind: v.literal("labelled"),
    ...base,
    useBy: v.optional(CivilDate),
    bestBefore: v.optional(CivilDate),
  },
  /** It was cooked or eaten; `for` names what it went into. */
  used: { kind: v.literal("used"), ...base, massG, for: v.optional(Id) },
  /** It was thrown away; `why` is one of `WASTE_REASONS`, what ended its life, or as somebody wrote it. */
  wasted: { kind: v.literal("wasted"), ...base, massG, why: v.optional(v.pipe(v.string(), v.nonEmpty())) },
  /** Somebody looked: so much is there, 0 where nothing is. `as` says what became of what is missing; absent = nobody knows. */
  counted: {
    kind: v.literal("counted"),
    ...base,
    massG: v.pipe(v.number(), v.minValue(0)),
    as: v.optional(v.picklist(["used", "wasted"])),
  },
  /** Lots became portions of a dish, which are a lot of their own at the cost of what went in. */
  cooked: {
    kind: v.literal("cooked"),
    ...base,
    dish: Id,
    portions: v.pipe(v.number(), v.gtValue(0)),
    /** Cooked mass of one portion in g. */
    portionG: massG,
    /** How long portions keep after this day, as the dish said then. */
    keeps: PortionsKeep,
    uses: v.array(CookedUse),
    /** What went in besides and came from no lot, so that its cost is not known; without `massG` nobody knows how much. */
    unbooked: v.optional(v.array(v.strictObject({ food: Id, massG: v.optional(massG) }))),
  },
} as const;

/**
 * One thing that happened to a lot on a day; masses in g as purchased, of cooked portions as cooked. Movements are only
 * ever added: a mistake is set right by counting.
 */
export const Movement = v.variant("kind", [
  v.strictObject(MOVEMENT_ENTRIES.stocked),
  v.strictObject(MOVEMENT_ENTRIES.bought),
  v.strictObject(MOVEMENT_ENTRIES.moved),
  v.strictObject(MOVEMENT_ENTRIES.opened),
  v.strictObject(MOVEMENT_ENTRIES.labelled),
  v.strictObject(MOVEMENT_ENTRIES.used),
  v.strictObject(MOVEMENT_ENTRIES.wasted),
  v.strictObject(MOVEMENT_ENTRIES.counted),
  v.strictObject(MOVEMENT_ENTRIES.cooked),
]);
export type Movement = v.InferOutput<typeof Movement>;

/** A movement of one kind. */
export type MovementOf<Kind extends Movement["kind"]> = Extract<Movement, { kind: Kind }>;
