// Builds the app where its sources have changed, and serves it; what `npm start` does.
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const run = (...path) =>
  spawnSync(process.execPath, ["--import", "tsx", join(root, ...path)], { cwd: root, stdio: "inherit" }).status ?? 1;

process.exitCode = run("apps", "web", "build", "main.ts") || run("apps", "server", "src", "main.ts");
