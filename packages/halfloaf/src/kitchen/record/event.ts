import * as v from "valibot";
import { SITTING_KINDS, STEP_KINDS } from "../../dish/index.ts";
import { Id } from "../../food/index.ts";
import { Offer } from "../../price/index.ts";
import { CivilDate, type Issue, type Parsed, parseWith, toIssues } from "../../quantity/index.ts";
import { MOVEMENT_ENTRIES } from "../../stores/index.ts";
import { WeekPlan } from "../weekPlan.ts";
import { EventId } from "./eventId.ts";
import { STAMP_ENTRIES } from "./stamp.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const positive = v.pipe(v.number(), v.gtValue(0));
const minor = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const sitting = v.picklist(SITTING_KINDS);

/** What every event says besides what happened: which one it is, when it was written down, by whom, and of what day. */
const WRITTEN = {
  id: EventId,
  ...STAMP_ENTRIES,
  /** Id of the eater who wrote it; absent = not said. */
  by: v.optional(Id),
  /** The first row of the act that this one belongs to; absent for that row itself and for an act of one row. */
  act: v.optional(EventId),
  note: v.optional(text),
};

/** A step as it was done: what its dish states for so many portions, and the minutes it took. */
const SeenStep = v.strictObject({
  kind: v.picklist(STEP_KINDS),
  statedMinutes: v.pipe(v.number(), v.minValue(0)),
  observedMinutes: v.pipe(v.number(), v.minValue(0)),
});

/** A plate: so many g of a lot, cooked or as purchased, and who ate it; without `eater` a guest did. */
const Plate = v.strictObject({ eater: v.optional(Id), lot: Id, massG: positive });
export type Plate = v.InferOutput<typeof Plate>;

const BODIES = {
  ...MOVEMENT_ENTRIES,
  /** A pack came home; `planned` is the lot that it is in the accepted week, by the week's first day and the lot's id there. */
  bought: {
    ...MOVEMENT_ENTRIES.bought,
    shop: v.optional(Id),
    planned: v.optional(v.strictObject({ week: CivilDate, lot: Id })),
  },
  /** A cooking; `batch` is its position in the accepted week, and minutes are those it took at the hob, in the oven, … */
  cooked: {
    ...MOVEMENT_ENTRIES.cooked,
    sitting: v.optional(sitting),
    batch: v.optional(v.pipe(v.number(), v.safeInteger(), v.minValue(0))),
    /** How long steps took, for the pace of whoever wrote it; absent = nothing is known of that. */
    steps: v.optional(v.array(SeenStep)),
  },
  /** Something of a dish was done ahead for a sitting: a step of its method, or thawing what the stores had frozen, without `step`. */
  begun: {
    kind: v.literal("begun"),
    on: CivilDate,
    dish: Id,
    /** The day of the sitting. */
    servedOn: CivilDate,
    sitting,
    step: v.optional(Id),
  },
  /** Plates of one sitting. */
  eaten: { kind: v.literal("eaten"), on: CivilDate, sitting, plates: v.pipe(v.array(Plate), v.minLength(1)) },
  /** Nobody ate here then; with an eater only this one did not. */
  skipped: { kind: v.literal("skipped"), on: CivilDate, sitting, eater: v.optional(Id) },
  /** So many standard portions more were or are to be eaten, by guests. */
  guest: { kind: v.literal("guest"), on: CivilDate, sitting, portions: positive },
  /** Eaten elsewhere, by all or by this eater; what it cost where that is known. */
  "ate-out": {
    kind: v.literal("ate-out"),
    on: CivilDate,
    sitting,
    eater: v.optional(Id),
    costMinor: v.optional(minor),
  },
  /** A way to a shop and what it cost besides the till. */
  trip: { kind: v.literal("trip"), on: CivilDate, shop: Id, fareMinor: minor },
  /** What one pack costs, and what it holds in g as purchased where that is not what the kitchen has. */
  "price-seen": {
    kind: v.literal("price-seen"),
    on: CivilDate,
    pack: Id,
    priceMinor: minor,
    offer: v.optional(Offer),
    massG: v.optional(positive),
    /** Where it was seen. */
    at: text,
  },
  /** Whether a pack was at the shelf on a trip of the accepted week, by the trip's day; the latest of a trip counts. */
  "at-shelf": {
    kind: v.literal("at-shelf"),
    on: CivilDate,
    trip: CivilDate,
    shop: Id,
    pack: Id,
    isThere: v.boolean(),
  },
  /** Points from 0 to 10. */
  rated: {
    kind: v.literal("rated"),
    on: CivilDate,
    dish: Id,
    points: v.pipe(v.number(), v.minValue(0), v.maxValue(10)),
  },
  /** From now on this week is the plan of its days, on or after `on`. */
  "menu-accepted": { kind: v.literal("menu-accepted"), on: CivilDate, week: WeekPlan },
  /** These earlier events did not happen; where they are withdrawals themselves, what they withdrew did. */
  withdrawn: { kind: v.literal("withdrawn"), on: CivilDate, events: v.pipe(v.array(EventId), v.minLength(1)) },
} as const;

const EVENTS = {
  stocked: v.strictObject({ ...WRITTEN, ...BODIES.stocked }),
  bought: v.strictObject({ ...WRITTEN, ...BODIES.bought }),
  moved: v.strictObject({ ...WRITTEN, ...BODIES.moved }),
  opened: v.strictObject({ ...WRITTEN, ...BODIES.opened }),
  labelled: v.strictObject({ ...WRITTEN, ...BODIES.labelled }),
  used: v.strictObject({ ...WRITTEN, ...BODIES.used }),
  wasted: v.strictObject({ ...WRITTEN, ...BODIES.wasted }),
  counted: v.strictObject({ ...WRITTEN, ...BODIES.counted }),
  cooked: v.strictObject({ ...WRITTEN, ...BODIES.cooked }),
  begun: v.strictObject({ ...WRITTEN, ...BODIES.begun }),
  eaten: v.strictObject({ ...WRITTEN, ...BODIES.eaten }),
  skipped: v.strictObject({ ...WRITTEN, ...BODIES.skipped }),
  guest: v.strictObject({ ...WRITTEN, ...BODIES.guest }),
  "ate-out": v.strictObject({ ...WRITTEN, ...BODIES["ate-out"] }),
  trip: v.strictObject({ ...WRITTEN, ...BODIES.trip }),
  "price-seen": v.strictObject({ ...WRITTEN, ...BODIES["price-seen"] }),
  "at-shelf": v.strictObject({ ...WRITTEN, ...BODIES["at-shelf"] }),
  rated: v.strictObject({ ...WRITTEN, ...BODIES.rated }),
  "menu-accepted": v.strictObject({ ...WRITTEN, ...BODIES["menu-accepted"] }),
  withdrawn: v.strictObject({ ...WRITTEN, ...BODIES.withdrawn }),
} as const;

/**
 * One thing that happened in the kitchen, as a row that never changes. Money in minor units, masses in g, days as
 * YYYY-MM-DD. A new lot is named by the event that brings it, so that no two devices give one name.
 */
export const RecordEvent = v.variant("kind", [
  EVENTS.stocked,
  EVENTS.bought,
  EVENTS.moved,
  EVENTS.opened,
  EVENTS.labelled,
  EVENTS.used,
  EVENTS.wasted,
  EVENTS.counted,
  EVENTS.cooked,
  EVENTS.begun,
  EVENTS.eaten,
  EVENTS.skipped,
  EVENTS.guest,
  EVENTS["ate-out"],
  EVENTS.trip,
  EVENTS["price-seen"],
  EVENTS["at-shelf"],
  EVENTS.rated,
  EVENTS["menu-accepted"],
  EVENTS.withdrawn,
]);
export type RecordEvent = v.InferOutput<typeof RecordEvent>;
export type EventKind = RecordEvent["kind"];

/** An event of one kind. */
export type EventOf<Kind extends EventKind> = Extract<RecordEvent, { kind: Kind }>;

/** Reads one row; all that is wrong with it at once. */
export function parseEvent(input: unknown): Parsed<RecordEvent> {
  const kind: unknown = typeof input === "object" && input !== null && "kind" in input ? input.kind : undefined;
  // Asking the schema of the kind alone gives the same answer as the variant and spares trying all the others.
  const schema = typeof kind === "string" && Object.hasOwn(EVENTS, kind) ? EVENTS[kind as EventKind] : undefined;
  if (schema === undefined) return parseWith(RecordEvent, input);
  const result = v.safeParse(schema, input);
  return result.success ? { ok: true, value: result.output } : { ok: false, issues: toIssues(result.issues) };
}

/** The rows that are events, and all that is wrong with the others, each path beginning with the row's position. */
export interface ReadEvents {
  readonly events: readonly RecordEvent[];
  readonly issues: readonly Issue[];
}

/** Reads rows one by one, so that a damaged row, or one of a newer program, takes no other with it. */
export function parseEvents(rows: readonly unknown[]): ReadEvents {
  const events: RecordEvent[] = [];
  const issues: Issue[] = [];
  for (const [at, row] of rows.entries()) {
    const read = parseEvent(row);
    if (read.ok) events.push(read.value);
    else issues.push(...read.issues.map((issue) => ({ ...issue, path: [at, ...issue.path] })));
  }
  return { events, issues };
}
