import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const folder = join(root, "node_modules", ".cache", "halfloaf");
const DAY_MS = 86_400_000;
/** Where sources of the command line lie; apps other than it are no part of it. */
const SOURCES = [
  "apps/cli/src",
  "data/src",
  "packages/engine/src",
  "packages/halfloaf/src",
  "packages/keep/src",
  "packages/reading/src",
  "packages/words/src",
];

/**
 * The command line as one file of JavaScript: loading some six hundred files of TypeScript is most of what a command takes.
 * It is made where there is none for the sources as they are. Undefined where it can't be made or kept; then the sources serve.
 */
export async function findBundle() {
  try {
    const path = join(folder, `cli-${stampOf(listSources())}.mjs`);
    if (!existsSync(path)) await makeBundle(path);
    return pathToFileURL(path).href;
  } catch {
    return undefined;
  }
}

function listSources() {
  const files = SOURCES.flatMap((source) =>
    readdirSync(join(root, source), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !/\.test\.ts$/.test(entry.name))
      .map(({ name, parentPath, path }) => join(parentPath ?? path, name)),
  );
  return [...files, join(root, "package-lock.json"), fileURLToPath(import.meta.url)].sort();
}

/** Changes with any source: its name, its size, or when it was written. */
function stampOf(files) {
  const hash = createHash("sha256").update(root);
  for (const file of files) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return hash.digest("hex").slice(0, 16);
}

async function makeBundle(path) {
  const { build } = await import("esbuild");
  const { outputFiles } = await build({
    entryPoints: [join(root, "apps/cli/src/main.ts")],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "silent",
    plugins: [{ name: "house", setup: keepToTheHouse }],
  });
  mkdirSync(folder, { recursive: true });
  const draft = `${path}.${process.pid}`;
  writeFileSync(draft, outputFiles[0].contents);
  renameSync(draft, path);
  for (const old of readdirSync(folder)) if (isOutdated(old)) rmSync(join(folder, old), { force: true });
}

/** Another process may be about to load what was made lately. */
function isOutdated(name) {
  const { mtimeMs } = statSync(join(folder, name), { throwIfNoEntry: false }) ?? { mtimeMs: Infinity };
  return Date.now() - mtimeMs > DAY_MS;
}

/** Packages of others stay files of their own, and ours still find what lies beside their sources. */
function keepToTheHouse({ onResolve, onLoad, resolve }) {
  onResolve({ filter: /^[^./]/ }, async ({ path, resolveDir, kind, pluginData }) => {
    if (pluginData === "asked" || kind === "entry-point" || /^(@halfloaf\/|halfloaf(\/|$))/.test(path))
      return undefined;
    if (path.startsWith("node:")) return { path, external: true };
    const found = await resolve(path, { resolveDir, kind, pluginData: "asked" });
    return found.path.includes("node_modules") ? { path: pathToFileURL(found.path).href, external: true } : found;
  });
  onLoad({ filter: /\.ts$/ }, ({ path }) => {
    const text = readFileSync(path, "utf8");
    return { loader: "ts", contents: text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)) };
  });
}
