import * as v from "valibot";
import { Id, PLACES } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";

const massG = v.pipe(v.number(), v.gtValue(0));
const base = { on: CivilDate, lot: Id };

/**
 * One thing that happened to a lot on a day; masses in g as purchased. Movements are only ever added: a mistake is set
 * right by counting.
 */
export const Movement = v.variant("kind", [
  /** A pack came home and became a lot. */
  v.strictObject({
    kind: v.literal("bought"),
    ...base,
    food: Id,
    place: v.picklist(PLACES),
    massG,
    costMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    useBy: v.optional(CivilDate),
    bestBefore: v.optional(CivilDate),
    loose: v.optional(v.literal(true)),
    pack: v.optional(Id),
  }),
  /** It went to another place; with `part` only that much of it did, and became a lot of its own. */
  v.strictObject({
    kind: v.literal("moved"),
    ...base,
    to: v.picklist(PLACES),
    part: v.optional(v.strictObject({ massG, lot: Id })),
  }),
  v.strictObject({ kind: v.literal("opened"), ...base }),
  /** It was cooked or eaten; `for` names what it went into. */
  v.strictObject({ kind: v.literal("used"), ...base, massG, for: v.optional(Id) }),
  /** It was thrown away. */
  v.strictObject({ kind: v.literal("wasted"), ...base, massG, why: v.optional(v.pipe(v.string(), v.nonEmpty())) }),
  /** Somebody looked: so much is there, 0 where nothing is. */
  v.strictObject({ kind: v.literal("counted"), ...base, massG: v.pipe(v.number(), v.minValue(0)) }),
]);
export type Movement = v.InferOutput<typeof Movement>;

/** A movement of one kind. */
export type MovementOf<Kind extends Movement["kind"]> = Extract<Movement, { kind: Kind }>;
