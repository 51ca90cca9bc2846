// Makes a fresh clone ready to run: checks the version of Node and installs the locked packages when they changed.
// It runs before anything is installed, so it uses the built-in modules of Node alone.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const LEAST_NODE = [20, 19];
const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamp = join(root, "node_modules", ".halfloaf-lock-hash");

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < LEAST_NODE[0] || (major === LEAST_NODE[0] && minor < LEAST_NODE[1])) {
  console.error(
    `This needs Node ${LEAST_NODE.join(".")} or newer; here runs ${process.versions.node}.\n` +
      "Install a newer Node (https://nodejs.org) and run the command again.",
  );
  process.exit(1);
}

const hash = createHash("sha256")
  .update(readFileSync(join(root, "package-lock.json")))
  .digest("hex");
const isCurrent = existsSync(stamp) && readFileSync(stamp, "utf8") === hash;
if (!isCurrent) {
  console.log("Installing the packages named in package-lock.json ...");
  // On Windows npm is a command script, which only a shell starts; the words are fixed, so nothing needs quoting.
  const { status, error } = spawnSync("npm ci --no-audit --no-fund", { cwd: root, stdio: "inherit", shell: true });
  if (status !== 0) {
    console.error(
      `npm ci did not succeed${error ? ` (${error.message})` : ""}. Is the network reachable? Run the command again when it is.`,
    );
    process.exit(status ?? 1);
  }
  writeFileSync(stamp, hash);
}
