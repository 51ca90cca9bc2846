import { holdsMoreThan, type Parsed, parseWith } from "halfloaf/quantity";
import type * as v from "valibot";

/** No mapping names a tenth of as many columns and words. */
const MOST_VALUES = 5000;

/** Reads a mapping file by its schema; one that is endless is told as that, since its faults would be endless too. */
export function parseMapping<Schema extends v.GenericSchema>(
  schema: Schema,
  input: unknown,
): Parsed<v.InferOutput<Schema>> {
  if (!holdsMoreThan(input, MOST_VALUES)) return parseWith(schema, input);
  const expected = `at most ${MOST_VALUES} values`;
  return { ok: false, issues: [{ code: "too-long", path: [], expected, received: "more" }] };
}
