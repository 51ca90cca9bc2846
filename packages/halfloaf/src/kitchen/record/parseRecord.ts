import type { Dish } from "../../dish/index.ts";
import { daysBetween, type Issue, type Parsed, parseWith } from "../../quantity/index.ts";
import type { StockedPortions } from "../../stores/index.ts";
import { parseKitchen } from "../checkKitchen.ts";
import type { Kitchen } from "../kitchen.ts";
import type { PutBy } from "../putBy.ts";
import { type EventOf, parseEvents } from "./event.ts";
import { toEventId } from "./eventId.ts";
import { fingerprintOf } from "./fingerprintOf.ts";
import { EditedKitchen, type KitchenRecord, RECORD_VERSION } from "./kitchenRecord.ts";

/** The device that is said to have written what comes from a kitchen's file begins so; the file's fingerprint follows. */
export const FILE_DEVICE = "kitchen-file";

/**
 * Reads a record of any version that ever was, or a kitchen's file, whose stores and portions put by become the opening
 * stock; `dishes` are those that its portions may be of besides its own. The same file gives the same events on every device. All that is wrong comes back at once, and nothing is half read: a version that
 * this program does not know yet is the issue `version-newer`, and the file should then be left as it is.
 */
export function parseRecord(input: unknown, dishes: readonly Dish[] = []): Parsed<KitchenRecord> {
  if (typeof input !== "object" || input === null || Array.isArray(input))
    return refuse("object", [], "a kitchen record", input === null ? "null" : typeof input);
  const { format, version } = input as { format?: unknown; version?: unknown };
  if (format !== "halfloaf-record" && format !== "halfloaf-kitchen")
    return refuse("format-unknown", ["format"], '"halfloaf-record" or "halfloaf-kitchen"', JSON.stringify(format));
  const newest = format === "halfloaf-record" ? RECORD_VERSION : 1;
  if (typeof version !== "number" || !Number.isSafeInteger(version) || version < 1)
    return refuse("version", ["version"], `a whole number from 1 to ${newest}`, JSON.stringify(version));
  if (version > newest) return refuse("version-newer", ["version"], `${newest} at most`, `${version}`);
  if (format === "halfloaf-kitchen") {
    const read = parseKitchen(input);
    return read.ok ? { ok: true, value: fromKitchen(read.value, dishes) } : read;
  }
  return readNewest(input);
}

/**
 * A kitchen's file as the first page of its record: each lot of the stores is at hand from the day it was bought, and what is put
 * by from the day it was cooked. Portions of a dish that is neither the kitchen's own nor one of `dishes` stay where they
 * are written. The same file gives the same events wherever it is read with the same dishes, and two files that differ never
 * give two events one id. **Source**: decision 0008.
 */
export function fromKitchen(kitchen: Kitchen, dishes: readonly Dish[] = []): KitchenRecord {
  const { $schema: _schema, format: _format, version: _version, stores, ...edited } = kitchen;
  const device = `${FILE_DEVICE}-${fingerprintOf([edited, stores])}`;
  const known = new Map([...dishes, ...kitchen.dishes].map((dish) => [dish.id, dish]));
  const portions = edited.putBy.flatMap((one) => {
    const dish = known.get(one.dish);
    return dish === undefined ? [] : [toPortions(one, dish)];
  });
  const events = [...stores, ...portions].map((stock, at): EventOf<"stocked"> => {
    const on = "dish" in stock ? stock.cookedOn : stock.boughtOn;
    return { id: toEventId(device, at + 1), atMs: 0, tick: at, kind: "stocked", on, stock };
  });
  const putBy = edited.putBy.filter(({ dish }) => !known.has(dish));
  return { format: "halfloaf-record", version: RECORD_VERSION, kitchen: { ...edited, putBy }, events };
}

/** Portions put by as stock, with what their dish says of them. */
function toPortions(one: PutBy, dish: Dish): StockedPortions {
  const { keepsUntil, foods, ...portions } = one;
  const { fridgeDays, freezerDays } = dish.keeps;
  const told = keepsUntil === undefined ? undefined : Math.max(0, daysBetween(one.cookedOn, keepsUntil));
  const frozen = one.place === "freezer" ? (told ?? freezerDays) : freezerDays;
  const keeps = {
    fridgeDays: one.place === "fridge" ? (told ?? fridgeDays) : fridgeDays,
    ...(frozen !== undefined && { freezerDays: frozen }),
  };
  return { ...portions, portionG: dish.portionMassG, keeps, ...(foods.length > 0 && { foods: [...foods] }) };
}

function readNewest(input: object): Parsed<KitchenRecord> {
  const { $schema, format: _format, version: _version, kitchen, events, ...strange } = input as Record<string, unknown>;
  const edited = parseWith(EditedKitchen, kitchen);
  const rows = Array.isArray(events) ? parseEvents(events) : undefined;
  const issues: Issue[] = [
    ...Object.keys(strange).map((key) => toIssue("strict_object", [key], "never", key)),
    ...(edited.ok ? [] : edited.issues.map((issue) => ({ ...issue, path: ["kitchen", ...issue.path] }))),
    ...(rows?.issues ?? []).map((issue) => ({ ...issue, path: ["events", ...issue.path] })),
    ...(rows === undefined ? [toIssue("array", ["events"], "Array", typeof events)] : []),
  ];
  if (!edited.ok || rows === undefined || issues.length > 0) return { ok: false, issues };
  const value: KitchenRecord = {
    format: "halfloaf-record",
    version: RECORD_VERSION,
    kitchen: edited.value,
    events: [...rows.events],
  };
  return { ok: true, value: typeof $schema === "string" ? { $schema, ...value } : value };
}

function refuse(code: string, path: Issue["path"], expected: string, received: string): Parsed<never> {
  return { ok: false, issues: [toIssue(code, path, expected, received)] };
}

function toIssue(code: string, path: Issue["path"], expected: string, received: string): Issue {
  return { code, path, expected, received };
}
