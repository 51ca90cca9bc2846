import * as v from "valibot";
import { Kitchen } from "../kitchen.ts";
import { RecordEvent } from "./event.ts";

/** The version that this program writes. */
export const RECORD_VERSION = 1;

/** What of a kitchen is edited: all of its file but the stores, which follow from events. */
export const EditedKitchen = v.omit(Kitchen, ["$schema", "format", "version", "stores"]);
export type EditedKitchen = v.InferOutput<typeof EditedKitchen>;

/**
 * A kitchen with all that ever happened in it, as one file. `kitchen` is edited and shows the latest; `events` are only ever
 * added and may stand in any order. Stores, prices, ratings, menus and accounts follow from them.
 */
export const KitchenRecord = v.strictObject({
  $schema: v.optional(v.string()),
  format: v.literal("halfloaf-record"),
  version: v.literal(RECORD_VERSION),
  kitchen: EditedKitchen,
  events: v.array(RecordEvent),
});
export type KitchenRecord = v.InferOutput<typeof KitchenRecord>;
