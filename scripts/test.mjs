// Everything that must hold before a change is taken in, in sequence; the first failure ends it.
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const tool = (...path) => join(root, "node_modules", ...path);

const stages = [
  ["Types", join(root, "scripts", "types.mjs")],
  ["Lint and formatting", tool("@biomejs", "biome", "bin", "biome"), "ci", "."],
  ["House: import direction, purity, cycles", join(root, "scripts", "checkHouse.mjs")],
  ["Dead code", tool("knip", "bin", "knip.js"), "--no-progress"],
  ["PostgreSQL, Redis and HAProxy for the tests of the server", join(root, "scripts", "installServices.mjs")],
  ["Tests", tool("vitest", "vitest.mjs"), "run"],
];

const started = Date.now();
for (const [title, script, ...words] of stages) {
  console.log(`\n=== ${title} ===`);
  const { status } = spawnSync(process.execPath, [script, ...words], { cwd: root, stdio: "inherit" });
  if (status !== 0) {
    console.error(`\n=== FAILED: ${title} ===`);
    process.exit(status ?? 1);
  }
}
console.log(`\n=== All ${stages.length} stages passed in ${Math.round((Date.now() - started) / 1000)} s ===`);
