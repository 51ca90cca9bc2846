import { type Edit, EditedKitchen } from "halfloaf/kitchen/record";
import { type Issue, parseWith } from "halfloaf/quantity";
import type * as v from "valibot";

const ENTRIES: Readonly<Record<string, v.GenericSchema>> = EditedKitchen.entries;

/**
 * What is wrong with the value that an edit gives its thing, by the schema of that thing alone: what does not fit others'
 * edits is passed over by every device alike and no fault of the row. Taking a thing away is always sound.
 */
export function checkEditedValue({ thing, value }: Edit): readonly Issue[] {
  const [key = "", element] = thing.split("/");
  const whole = Object.hasOwn(ENTRIES, key) ? ENTRIES[key] : undefined;
  const schema = element === undefined ? whole : elementOf(whole);
  if (schema === undefined)
    return [{ code: "thing", path: ["thing"], expected: "a thing of the kitchen", received: thing }];
  if (value === undefined) return [];
  const read = parseWith(schema, value);
  return read.ok ? [] : read.issues.map((issue) => ({ ...issue, path: ["value", ...issue.path] }));
}

/** The schema of a list's elements, whatever is wrapped around the list. */
function elementOf(schema: v.GenericSchema | undefined): v.GenericSchema | undefined {
  if (schema === undefined) return undefined;
  const { item, wrapped } = schema as { item?: v.GenericSchema; wrapped?: v.GenericSchema };
  return item ?? elementOf(wrapped);
}
