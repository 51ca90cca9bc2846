import * as v from "valibot";

/** One fault put into words: where it stands, its value, what is wrong, what to do about it. */
export const Fault = v.strictObject({
  /** The broken rule, for programs. */
  code: v.string(),
  /** From the outermost value to the faulty one, by keys and positions from 0; empty = the whole. */
  path: v.array(v.union([v.string(), v.number()])),
  /** Line of the file where the value stands, from 1; absent where it stands in no file or is missing from it. */
  line: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1))),
  /** The faulty value, shortened; absent where there is none. */
  value: v.optional(v.string()),
  sentence: v.string(),
  remedy: v.string(),
});
export type Fault = v.InferOutput<typeof Fault>;

/** What looking something up or reading it gives: the value, or all that is wrong. */
export type Found<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A single fault as an outcome. */
export function refuse(fault: Fault): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: [fault] };
}
