// Checks the types of every workspace, each with its own tsconfig files, and names all that fail. Workspaces that are checked by
// the same rules are checked in one go, so that what they share is read once and not once for each of them.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
// Where the configurations of the groups are written; types of packages are found from there as from the root.
const scratch = join(root, "node_modules", ".halfloaf-types");

const workspaces = ["packages", "apps"]
  .flatMap((folder) => readdirSync(join(root, folder)).map((name) => join(root, folder, name)))
  .concat(["data", "checks", "bench", "e2e", "tools"].map((name) => join(root, name)))
  .filter((folder) => existsSync(folder));

const groups = new Map();
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
    const { extends: base, compilerOptions, ...files } = JSON.parse(readFileSync(join(folder, project), "utf8"));
    const rules = JSON.stringify([join(folder, base), compilerOptions]);
    groups.set(rules, [...(groups.get(rules) ?? []), { folder, path, files }]);
  }
}

mkdirSync(scratch, { recursive: true });
for (const [at, [rules, members]] of [...groups].entries()) {
  const [base, compilerOptions] = JSON.parse(rules);
  const config = join(scratch, `${at}.json`);
  writeFileSync(config, JSON.stringify({ extends: base, compilerOptions, ...joinFiles(members) }));
  const { status } = spawnSync(process.execPath, [tsc, "-p", config, "--pretty", "false"], {
    cwd: root,
    stdio: "inherit",
  });
  if (status !== 0) failed++;
  const paths = members.map(({ path }) => path);
  if (status === 0) for (const path of paths) console.log(`${path}: sound`);
  else console.error(`FAILED, as said above, in one of ${paths.join(", ")}`);
}
process.exitCode = failed === 0 ? 0 : 1;

/** What the members' configurations name, each from its own folder. */
function joinFiles(members) {
  const collect = (kind) =>
    members.flatMap(({ folder, files }) => (files[kind] ?? []).map((pattern) => join(folder, pattern)));
  return { files: collect("files"), include: collect("include"), exclude: ["**/node_modules", ...collect("exclude")] };
}

function holdsTypeScript(folder) {
  return readdirSync(folder, { withFileTypes: true }).some(
    (entry) =>
      entry.name !== "node_modules" &&
      (entry.isDirectory() ? holdsTypeScript(join(folder, entry.name)) : entry.name.endsWith(".ts")),
  );
}
