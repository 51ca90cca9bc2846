// Everything that must hold before a change is taken in. What reads the sources alone goes beside each other, and so does what the
// tests need; where all of that went well, the tests follow. All of it has a temporary folder of its own, which is gone afterwards;
// what of ours is still in it by then is something that a test or a build forgot.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { chmodSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { text } from "node:stream/consumers";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const tool = (...path) => join(root, "node_modules", ...path);

const before = [
  ["Types", join(root, "scripts", "types.mjs")],
  ["Lint and formatting", tool("@biomejs", "biome", "bin", "biome"), "ci", "--error-on-warnings", "."],
  ["House: import direction, purity, cycles", join(root, "scripts", "checkHouse.mjs")],
  ["Dead code", tool("knip", "bin", "knip.js"), "--no-progress"],
  ["The app, built for its tests", "--import", "tsx", join(root, "apps", "web", "build", "main.ts")],
  ["PostgreSQL, Redis and HAProxy for the tests of the server", join(root, "scripts", "installServices.mjs")],
];
const tests = ["Tests", tool("vitest", "vitest.mjs"), "run"];

const started = Date.now();
const scratch = mkdtempSync(join(tmpdir(), "halfloaf-test-"));
// PostgreSQL runs as a user of its own and has to get through to its folder.
chmodSync(scratch, 0o755);
const env = { ...process.env, TMPDIR: scratch, TEMP: scratch, TMP: scratch };
process.once("exit", () => rmSync(scratch, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }));
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.once(signal, () => process.exit(1));

const failed = (await Promise.all(before.map(runBeside))).filter((title) => title !== undefined);
if (failed.length === 0 && (await runShown(tests)) !== 0) failed.push(tests[0]);
const forgotten = readdirSync(scratch).filter(isOurs);
if (failed.length === 0 && forgotten.length > 0)
  failed.push(`Left behind in the temporary folder: ${forgotten.join(", ")}`);
for (const title of failed) console.error(`\n=== FAILED: ${title} ===`);
if (failed.length === 0) console.log(`\n=== All ${before.length + 1} stages passed in ${tellSeconds(started)} ===`);
process.exitCode = failed.length === 0 ? 0 : 1;

/** Runs a stage and prints all it said once it is over; gives its title where it failed. */
async function runBeside([title, ...words]) {
  const begun = Date.now();
  const child = spawn(process.execPath, words, { cwd: root, env, stdio: ["ignore", "pipe", "pipe"] });
  const [said, complained, [status]] = await Promise.all([
    text(child.stdout),
    text(child.stderr),
    once(child, "close"),
  ]);
  console.log(`\n=== ${title} (${tellSeconds(begun)}) ===\n${said}${complained}`.trimEnd());
  return status === 0 ? undefined : title;
}

/** Runs a stage that prints as it goes; gives its status. */
async function runShown([title, ...words]) {
  console.log(`\n=== ${title} ===`);
  const [status] = await once(spawn(process.execPath, words, { cwd: root, env, stdio: "inherit" }), "close");
  return status;
}

/** Names that our tests give, and the one that the bundler of the service worker makes up. */
function isOurs(name) {
  return /^halfloaf-|^[0-9a-f]{32}$/.test(name);
}

function tellSeconds(since) {
  return `${Math.round((Date.now() - since) / 1000)} s`;
}
