import * as v from "valibot";

/**
 * One fault found in what was given: where it stands, what should stand there, what stands there.
 *
 * `path` leads from the outermost value to the faulty one by keys and positions (from 0); an empty path is the
 * whole value. `code` names the broken rule for programs, `message` says it for people where more is known.
 */
export interface Issue {
  readonly code: string;
  readonly path: readonly (string | number)[];
  readonly expected: string;
  readonly received: string;
  readonly message?: string;
}

/** What reading an unknown value gives: the value, or every fault found in it. */
export type Parsed<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issues: readonly Issue[] };

type SchemaIssue = v.BaseIssue<unknown>;

/** Turns the issues of a schema into Issues. Where several shapes were allowed, the message tells why each did not fit. */
export function toIssues(schemaIssues: readonly SchemaIssue[]): Issue[] {
  return schemaIssues.map((issue) => ({
    code: issue.type,
    path: (issue.path ?? []).map(({ key }) => (typeof key === "number" ? key : String(key))),
    expected: issue.expected ?? issue.message,
    received: issue.received,
    message: issue.issues ? tellAlternatives(issue.issues) : issue.message,
  }));
}

function tellAlternatives(issues: readonly SchemaIssue[]): string {
  const told = toIssues(issues).map(({ path, message }) =>
    path.length > 0 ? `${path.join(".")}: ${message}` : message,
  );
  return [...new Set(told)].join("; or ");
}

/** Reads an unknown value by a schema; on failure gives all faults at once. */
export function parseWith<Schema extends v.GenericSchema>(
  schema: Schema,
  input: unknown,
): Parsed<v.InferOutput<Schema>> {
  const result = v.safeParse(schema, input);
  return result.success ? { ok: true, value: result.output } : { ok: false, issues: toIssues(result.issues) };
}
