import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { PUBLISHED_SCHEMAS } from "./publishedSchemas.ts";

const root = fileURLToPath(new URL("../../../../", import.meta.url));

test("the published schemas are those of the program; npx tsx tools/writeSchemas.ts writes them anew", () => {
  const words = ["--import", "tsx", "tools/writeSchemas.ts", "--check"];
  expect(execFileSync(process.execPath, words, { cwd: root, encoding: "utf8" })).toContain(
    `${PUBLISHED_SCHEMAS.length} schemas are as they should be`,
  );
});
