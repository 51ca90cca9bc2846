/**
 * Writes the JSON Schemas of the published file formats to `docs/schemas/`, one file each. With `--check` nothing is
 * written: exit code 1 and the names where a file is missing or not as it should be, 0 where all are.
 *
 * What a JSON Schema can't say (a check digit, a date that is one, names that lead somewhere) it leaves out; the program
 * itself still checks it.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { PUBLISHED_SCHEMAS, type PublishedSchema } from "@halfloaf/cli/schemas";
import { toJsonSchema } from "@valibot/to-json-schema";
import { isCivilDate } from "halfloaf/quantity";

const LINE_WIDTH = 120;
const folder = new URL("../docs/schemas/", import.meta.url);

/** The text of a schema's file. */
function render({ title, description, schema }: PublishedSchema): string {
  const converted = toJsonSchema(schema, {
    target: "draft-2020-12",
    typeMode: "input",
    errorMode: "ignore",
    overrideAction: ({ valibotAction, jsonSchema }) =>
      "requirement" in valibotAction && valibotAction.requirement === isCivilDate
        ? { ...jsonSchema, format: "date" }
        : undefined,
  });
  const { $schema, ...rest } = converted;
  return `${lay({ $schema, title, description, ...rest }, "", 0)}\n`;
}

/** JSON text as the formatter of this repository lays it: a list of plain values on one line where it fits. */
function lay(value: unknown, indent: string, used: number): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const deeper = `${indent}  `;
  const isList = Array.isArray(value);
  const [open, close] = isList ? ["[", "]"] : ["{", "}"];
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .map(([key, member]) => {
      const lead = isList ? "" : `${JSON.stringify(key)}: `;
      return `${lead}${lay(member, deeper, deeper.length + lead.length)}`;
    });
  if (members.length === 0) return open + close;
  const isPlain = isList && value.every((member) => typeof member !== "object" || member === null);
  const line = `${open}${members.join(", ")}${close}`;
  // One more column for the comma that may follow.
  if (isPlain && used + line.length + 1 <= LINE_WIDTH) return line;
  return `${open}\n${members.map((member) => deeper + member).join(",\n")}\n${indent}${close}`;
}

const isCheck = process.argv.includes("--check");
const stale: string[] = [];
if (!isCheck) mkdirSync(folder, { recursive: true });
for (const published of PUBLISHED_SCHEMAS) {
  const file = new URL(`${published.name}.json`, folder);
  const text = render(published);
  if (existsSync(file) && readFileSync(file, "utf8") === text) continue;
  stale.push(fileURLToPath(file));
  if (!isCheck) writeFileSync(file, text);
}
if (isCheck) {
  for (const path of stale) console.log(`${path} is missing or not as it should be; run tools/writeSchemas.ts`);
  if (stale.length === 0) console.log(`${PUBLISHED_SCHEMAS.length} schemas are as they should be`);
  process.exitCode = stale.length === 0 ? 0 : 1;
} else console.log(`${stale.length} of ${PUBLISHED_SCHEMAS.length} schemas written`);
