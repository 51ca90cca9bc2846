// Builds the app and serves it; what `npm start` does.
import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const vite = join(root, "node_modules", "vite", "bin", "vite.js");
const run = (words, cwd) =>
  spawnSync(process.execPath, ["--import", "tsx", ...words], { cwd, stdio: "inherit" }).status;

const built = run([vite, "build", "--logLevel", "warn"], join(root, "apps", "web"));
process.exitCode = built === 0 ? (run([join(root, "apps", "server", "src", "main.ts")], root) ?? 0) : (built ?? 1);
