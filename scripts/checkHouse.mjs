/**
 * The rules of the house: which file may import which, what the library may never reach for, and what tests of a page wait for.
 *
 * `checkHouse(root)` reads every TypeScript source below `root` and gives one sentence for each breach.
 * Run as a script it checks this repository, prints the breaches and fails where there is one.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync, Visitor } from "oxc-parser";

/** Folders of the library in order; each imports only from itself and from those before it. */
const FOLDERS = ["quantity", "food", "intake", "price", "dish", "stores", "safety", "menu", "work", "kitchen", "sheet"];

/** Folders that never import each other although the order would allow it. */
const APART = [["work", "menu"]];

/** A checker shares nothing with what it checks but the files that state the question and the answer. */
const CHECKERS = [
  { folder: "menu", askers: ["reasons", "replan", "frontier"], contract: ["problem.ts", "plan.ts"] },
  { folder: "work", askers: [], contract: ["problem.ts", "plan.ts"] },
];

const LIBRARY = "packages/halfloaf/src/";

/** Sources that run anywhere, each with the packages they may know. */
const PURE = [
  { name: "the library", folder: LIBRARY, packages: ["valibot"] },
  {
    name: "the reader",
    folder: "packages/reading/src/",
    packages: ["halfloaf", "valibot", "parse5"],
  },
  { name: "the words", folder: "packages/words/src/", packages: ["halfloaf"] },
];

/** What the project is made of. Nothing in it leans on an app: what two apps share is a package. Only tests run one against another. */
const APPS = "apps";
const MADE_OF = [`${APPS}/`, "packages/", "data/"];
const SOLVERS = ["highs"];
const SOLVER_HOME = "packages/engine/";

/** What would tie the library to a clock, to chance, to a platform or to a place that outlives a call. */
const BANNED_GLOBALS = new Set([
  "Date",
  "performance",
  "process",
  "globalThis",
  "window",
  "self",
  "document",
  "navigator",
  "fetch",
  "console",
  "localStorage",
  "sessionStorage",
  "indexedDB",
  "crypto",
  "setTimeout",
  "setInterval",
  "setImmediate",
  "clearTimeout",
  "clearInterval",
  "queueMicrotask",
  "require",
  "eval",
  "Function",
]);
const BANNED_MEMBERS = new Set(["Math.random", "Temporal.Now"]);

/** Where a real browser is asked, and what reads a part of a page as it stands at that moment. */
const BROWSED = "e2e/app/";
const ONE_LOOKS = new Set([
  "allInnerTexts",
  "allTextContents",
  "count",
  "getAttribute",
  "innerText",
  "inputValue",
  "isChecked",
  "isDisabled",
  "isEnabled",
  "isVisible",
  "textContent",
]);

/** All breaches of the rules in the sources below `root`, each as "file:line rule". */
export function checkHouse(root) {
  const files = new Map(listSources(root).map((path) => [path, readSource(root, path)]));
  const apps = listApps(root);
  const breaches = [];
  for (const [path, source] of files) {
    for (const error of source.errors) breaches.push(`${path} cannot be read: ${error}`);
    for (const { line, specifier } of source.imports) {
      for (const rule of judgeImport(path, specifier, { files, apps, root })) breaches.push(`${path}:${line} ${rule}`);
    }
    if (path.startsWith(BROWSED))
      for (const { line, name } of source.oneLooks)
        breaches.push(`${path}:${line} expects what one ${name}() sees (a page takes its time: use expect.poll)`);
    if (pureRoom(path)) for (const { line, name } of source.globals) breaches.push(`${path}:${line} uses ${name}`);
  }
  return [...breaches, ...findCycles(files)];
}

function listSources(root, folder = "") {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .flatMap((entry) => {
      if (entry.name === "node_modules" || entry.name === "dist" || entry.name.startsWith(".")) return [];
      const path = posix.join(folder, entry.name);
      if (entry.isDirectory()) return listSources(root, path);
      return /\.tsx?$/.test(path) && !path.endsWith(".d.ts") ? [path] : [];
    })
    .sort();
}

/** The packages that are apps, by name. */
function listApps(root) {
  if (!existsSync(join(root, APPS))) return [];
  return readdirSync(join(root, APPS))
    .map((folder) => join(root, APPS, folder, "package.json"))
    .flatMap((path) => (existsSync(path) ? [JSON.parse(readFileSync(path, "utf8")).name] : []));
}

function readSource(root, path) {
  const text = readFileSync(join(root, path), "utf8");
  const { program, module, errors } = parseSync(path, text);
  const lineAt = (offset) => text.slice(0, offset).split("\n").length;
  const imports = [];
  const note = (offset, specifier) => imports.push({ line: lineAt(offset), specifier });
  for (const each of module.staticImports) note(each.start, each.moduleRequest.value);
  for (const { start, entries } of module.staticExports) {
    const from = entries.find(({ moduleRequest }) => moduleRequest)?.moduleRequest;
    if (from) note(start, from.value);
  }
  const globals = [];
  const oneLooks = [];
  new Visitor({
    CallExpression({ start, callee, arguments: [first] }) {
      const read = first?.type === "AwaitExpression" ? first.argument.callee?.property?.name : undefined;
      if (callee.name === "expect" && ONE_LOOKS.has(read)) oneLooks.push({ line: lineAt(start), name: read });
    },
    ImportExpression({ start, source }) {
      note(start, source.type === "Literal" ? String(source.value) : "(a computed path)");
    },
    TSImportType({ start, source }) {
      note(start, source.value);
    },
    ...collectGlobals((offset, name) => globals.push({ line: lineAt(offset), name })),
  }).visit(program);
  return { imports, globals, oneLooks, errors: errors.map(({ message }) => message) };
}

/** Visitors that report each banned name where it is a value or a type, not where it is the name of a property. */
function collectGlobals(report) {
  const names = new Set();
  const skip = (node) => node && names.add(node);
  return {
    MemberExpression({ start, object, property, computed }) {
      if (!computed) skip(property);
      const key = computed ? property.value : property.name;
      const name = `${object.name}.${key}`;
      if (BANNED_MEMBERS.has(name)) report(start, name);
    },
    Property({ key, computed }) {
      if (!computed) skip(key);
    },
    PropertyDefinition: ({ key, computed }) => computed || skip(key),
    MethodDefinition: ({ key, computed }) => computed || skip(key),
    TSPropertySignature: ({ key, computed }) => computed || skip(key),
    TSMethodSignature: ({ key, computed }) => computed || skip(key),
    ImportSpecifier: ({ imported }) => skip(imported),
    Identifier(node) {
      if (!names.has(node) && BANNED_GLOBALS.has(node.name)) report(node.start, node.name);
    },
  };
}

/** The room without a platform that a source stands in; its tests may use what tests need. */
function pureRoom(path) {
  return isTest(path) ? undefined : PURE.find(({ folder }) => path.startsWith(folder));
}

function isTest(path) {
  return /\.(test|testing)\.tsx?$/.test(path);
}

function* judgeImport(path, specifier, { files, apps, root }) {
  if (specifier.startsWith(".")) {
    const target = posix.join(posix.dirname(path), specifier);
    const file = target.split("?")[0];
    if (!files.has(file) && !existsSync(join(root, file))) {
      yield `imports "${specifier}", which is no file (write the ending .ts out)`;
    } else if (findWorkspace(root, path) !== findWorkspace(root, file)) {
      yield `imports "${specifier}" out of its workspace (name the package instead)`;
    } else if (pureRoom(path)) {
      if (isTest(file)) yield `imports the test "${specifier}"`;
      if (path.startsWith(LIBRARY)) yield* judgeFolder(path.slice(LIBRARY.length), file.slice(LIBRARY.length));
    }
    return;
  }
  const name = specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");
  const room = pureRoom(path);
  if (room && !room.packages.includes(name)) yield `imports "${specifier}": ${room.name} has no such part`;
  if (SOLVERS.includes(name) && !path.startsWith(SOLVER_HOME))
    yield `imports "${specifier}", which only the engine knows`;
  if (apps.includes(name) && MADE_OF.some((folder) => path.startsWith(folder)) && !isTest(path))
    yield `imports "${specifier}", an app (put what is shared into a package)`;
}

/** The nearest folder above that is a package of its own. */
function findWorkspace(root, path) {
  let folder = posix.dirname(path);
  while (folder !== "." && !existsSync(join(root, folder, "package.json"))) folder = posix.dirname(folder);
  return folder;
}

function* judgeFolder(from, to) {
  const [fromFolder, toFolder] = [from, to].map((path) => path.split("/")[0]);
  const [fromAt, toAt] = [fromFolder, toFolder].map((folder) => FOLDERS.indexOf(folder));
  if (fromAt < 0) yield `stands in "${fromFolder}", which is no folder of the library`;
  else if (toAt < 0) yield `imports "${to}", which stands in no folder of the library`;
  else if (toAt > fromAt) yield `imports "${to}", but ${fromFolder} comes before ${toFolder}`;
  if (APART.some(([a, b]) => a === fromFolder && b === toFolder))
    yield `imports "${to}": ${fromFolder} and ${toFolder} stay apart`;
  for (const checker of CHECKERS) yield* judgeChecker(checker, from, to);
}

// What plans may not use its judge; what asks both, about plans that are there already, may.
function* judgeChecker({ folder, contract, askers }, from, to) {
  const contracts = contract.map((name) => `${folder}/${name}`);
  const isIn = (path) => path.startsWith(`${folder}/check/`);
  if (!to.startsWith(`${folder}/`)) return;
  if (isIn(from) && !isIn(to) && !contracts.includes(to)) {
    yield `imports "${to}", but a checker takes only ${contracts.join(" and ")} from ${folder}`;
  }
  const asks = askers.some((asker) => from.startsWith(`${folder}/${asker}/`));
  if (from.startsWith(`${folder}/`) && !isIn(from) && !asks && isIn(to))
    yield `imports "${to}", but what is checked may not use its checker`;
  if (contracts.includes(from) && !contracts.includes(to)) {
    yield `imports "${to}", but the checker would then share code with what it checks`;
  }
}

/** One sentence for each group of files that import each other in a ring (Tarjan 1972, SIAM J. Comput. 1, 146-160). */
function findCycles(files) {
  const targets = (path) =>
    files
      .get(path)
      .imports.filter(({ specifier }) => specifier.startsWith("."))
      .map(({ specifier }) => posix.join(posix.dirname(path), specifier))
      .filter((target) => files.has(target));
  const order = new Map();
  const low = new Map();
  const stack = [];
  const cycles = [];
  const visit = (path) => {
    order.set(path, order.size);
    low.set(path, order.get(path));
    stack.push(path);
    for (const target of targets(path)) {
      if (!order.has(target)) visit(target);
      if (stack.includes(target)) low.set(path, Math.min(low.get(path), low.get(target)));
    }
    if (low.get(path) !== order.get(path)) return;
    const group = stack.splice(stack.indexOf(path));
    if (group.length > 1 || targets(path).includes(path))
      cycles.push(`${group.sort().join(", ")} import each other in a ring`);
  };
  for (const path of files.keys()) if (!order.has(path)) visit(path);
  return cycles;
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] === self) {
  const breaches = checkHouse(dirname(dirname(self)));
  for (const breach of breaches) console.error(breach);
  console.log(breaches.length === 0 ? "The house stands." : `${breaches.length} breaches of the rules of the house.`);
  process.exitCode = breaches.length === 0 ? 0 : 1;
}
