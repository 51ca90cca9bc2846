// Checks the types of every workspace, each with its own tsconfig files, and names all that fail.
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const tsc = join(root, "node_modules", "typescript", "bin", "tsc");

const workspaces = ["packages", "apps"]
  .flatMap((folder) => readdirSync(join(root, folder)).map((name) => join(root, folder, name)))
  .concat(["data", "checks", "bench", "e2e", "tools"].map((name) => join(root, name)))
  .filter((folder) => existsSync(folder));

let failed = 0;
for (const folder of workspaces) {
  const projects = readdirSync(folder).filter((name) => /^tsconfig(\..+)?\.json$/.test(name));
  if (projects.length === 0) {
    failed++;
    console.error(`${relative(root, folder)}: has no tsconfig.json, so nothing checks its types`);
  }
  for (const project of projects) {
    const path = relative(root, join(folder, project));
    if (!holdsTypeScript(folder)) {
      console.log(`${path}: no TypeScript in it yet`);
      continue;
    }
    const { status } = spawnSync(process.execPath, [tsc, "-p", path, "--pretty", "false"], {
      cwd: root,
      stdio: "inherit",
    });
    if (status !== 0) failed++;
    console.log(`${path}: ${status === 0 ? "sound" : "FAILED"}`);
  }
}
process.exitCode = failed === 0 ? 0 : 1;

function holdsTypeScript(folder) {
  return readdirSync(folder, { withFileTypes: true }).some(
    (entry) =>
      entry.name !== "node_modules" &&
      (entry.isDirectory() ? holdsTypeScript(join(folder, entry.name)) : entry.name.endsWith(".ts")),
  );
}
