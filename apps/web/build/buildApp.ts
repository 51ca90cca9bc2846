import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { env, execPath } from "node:process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const app = join(root, "apps", "web");
const stamp = join(root, "node_modules", ".halfloaf-web-hash");

/** What the app is made from. */
const SOURCES = ["apps/web", "packages", "data", "package-lock.json"];
const TEST = /\.(test|testing)\.tsx?$/;

/**
 * Builds the app unless the last build was made from the same sources, and gives the folder it is in. Throws where the
 * build fails, which has then said why.
 */
export function buildApp(): string {
  const folder = join(app, "dist");
  const hash = hashSources();
  const isCurrent = existsSync(join(folder, "sw.js")) && existsSync(stamp) && readFileSync(stamp, "utf8") === hash;
  if (isCurrent) return folder;
  const vite = join(root, "node_modules", "vite", "bin", "vite.js");
  // The bundler of the service worker leaves what it writes on its way.
  const scratch = mkdtempSync(join(tmpdir(), "halfloaf-build-"));
  const { status } = spawnSync(execPath, ["--import", "tsx", vite, "build", "--logLevel", "warn"], {
    cwd: app,
    // A test runner sets another, which would make it an app for the workshop.
    env: { ...env, NODE_ENV: "production", TMPDIR: scratch, TEMP: scratch, TMP: scratch },
    stdio: "inherit",
  });
  rmSync(scratch, { recursive: true });
  if (status !== 0) throw new Error("the app could not be built");
  writeFileSync(stamp, hash);
  return folder;
}

function hashSources(): string {
  const hash = createHash("sha256");
  for (const path of SOURCES.flatMap((source) => listFiles(source))) {
    hash
      .update(path)
      .update("\0")
      .update(readFileSync(join(root, path)))
      .update("\0");
  }
  return hash.digest("hex");
}

/** The files at or below a path, in order. */
function listFiles(path: string): string[] {
  if (statSync(join(root, path)).isFile()) return TEST.test(path) ? [] : [path];
  return readdirSync(join(root, path))
    .filter((name) => name !== "node_modules" && name !== "dist" && !name.startsWith("."))
    .sort()
    .flatMap((name) => listFiles(`${path}/${name}`));
}
