import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { checkHouse } from "./checkHouse.mjs";

const roots = [];

/** Writes a small house into a folder of its own; paths starting with a folder of the library stand in the library. */
function build(files) {
  const root = mkdtempSync(join(tmpdir(), "halfloaf-house-"));
  roots.push(root);
  const write = (path, text) => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  };
  write("packages/halfloaf/package.json", "{}");
  write("packages/engine/package.json", "{}");
  write("apps/cli/package.json", "{}");
  for (const [path, text] of Object.entries(files)) {
    write(/^(packages|apps|e2e)\//.test(path) ? path : `packages/halfloaf/src/${path}`, text);
  }
  return checkHouse(root).map((breach) => breach.replaceAll("packages/halfloaf/src/", ""));
}

afterEach(() => {
  for (const root of roots.splice(0)) rmSync(root, { recursive: true });
});

describe("the order of folders", () => {
  test("a folder may import itself, a folder before it, and valibot", () => {
    const breaches = build({
      "quantity/unit.ts": "export const gram = 1;",
      "food/food.ts":
        'import * as v from "valibot";\nimport { gram } from "../quantity/unit.ts";\nexport const f = [v, gram];',
      "food/index.ts": 'export { f } from "./food.ts";\nexport type { T } from "./food.ts";',
    });
    expect(breaches).toEqual([]);
  });

  test.each([
    ["import", 'import { f } from "../food/food.ts";'],
    ["import of a type", 'import type { f } from "../food/food.ts";'],
    ["export from", 'export { f } from "../food/food.ts";'],
    ["export of everything", 'export * from "../food/food.ts";'],
    ["import() of a value", 'export const f = () => import("../food/food.ts");'],
    ["import() of a type", 'export type F = import("../food/food.ts").f;'],
  ])("a folder may not import a later one by %s", (_, text) => {
    expect(build({ "quantity/unit.ts": text, "food/food.ts": "export const f = 1;" })).toEqual([
      'quantity/unit.ts:1 imports "food/food.ts", but quantity comes before food',
    ]);
  });

  test("work and menu stay apart although work comes later", () => {
    expect(
      build({ "menu/plan.ts": "export const p = 1;", "work/order.ts": 'import { p } from "../menu/plan.ts"; p;' }),
    ).toEqual(['work/order.ts:1 imports "menu/plan.ts": work and menu stay apart']);
  });

  test("a folder the list does not know is a breach", () => {
    const [breach] = build({ "misc/a.ts": 'import "./b.ts";', "misc/b.ts": "export {};" });
    expect(breach).toBe('misc/a.ts:1 stands in "misc", which is no folder of the library');
  });

  test("a test of the library may import what it needs", () => {
    expect(
      build({
        "quantity/unit.test.ts": 'import { test } from "vitest";\nimport "../food/food.ts";\nnew Date();',
        "food/food.ts": "",
      }),
    ).toEqual([]);
  });
});

describe("a checker", () => {
  const contract = {
    "menu/problem.ts": "export const p = 1;",
    "menu/plan.ts": "export const q = 1;",
    "menu/search.ts": "export const s = 1;",
  };

  test("takes the contract and earlier folders", () => {
    const text = 'import "../problem.ts";\nimport "../plan.ts";\nimport "./rules.ts";\nimport "../../food/food.ts";';
    expect(build({ ...contract, "menu/check/check.ts": text, "menu/check/rules.ts": "", "food/food.ts": "" })).toEqual(
      [],
    );
  });

  test("takes nothing else of what it checks", () => {
    expect(build({ ...contract, "menu/check/check.ts": 'import { s } from "../search.ts"; s;' })).toEqual([
      'menu/check/check.ts:1 imports "menu/search.ts", but a checker takes only menu/problem.ts and menu/plan.ts from menu',
    ]);
  });

  test("is not used by what it checks", () => {
    expect(
      build({
        ...contract,
        "menu/check/check.ts": "export const c = 1;",
        "menu/search.ts": 'import "./check/check.ts";',
      }),
    ).toEqual(['menu/search.ts:1 imports "menu/check/check.ts", but what is checked may not use its checker']);
  });

  test("may be asked by what asks about plans", () => {
    expect(
      build({
        ...contract,
        "menu/check/check.ts": "export const c = 1;",
        "menu/reasons/why.ts": 'import "../check/check.ts";',
      }),
    ).toEqual([]);
  });

  test("shares no code through the contract", () => {
    expect(build({ ...contract, "menu/plan.ts": 'import { s } from "./search.ts"; s;' })).toEqual([
      'menu/plan.ts:1 imports "menu/search.ts", but the checker would then share code with what it checks',
    ]);
  });
});

describe("purity", () => {
  test.each(["Date", "performance", "process", "globalThis", "fetch", "console", "localStorage", "setTimeout"])(
    "the library does not use %s",
    (name) => {
      expect(build({ "food/food.ts": `\nexport const f = () => ${name};` })).toEqual([`food/food.ts:2 uses ${name}`]);
    },
  );

  test.each(["Math.random()", 'Math["random"]()'])("the library does not use %s", (text) => {
    expect(build({ "food/food.ts": `export const f = ${text};` })).toEqual(["food/food.ts:1 uses Math.random"]);
  });

  test("a Date as a type, and one in a shorthand, are found too", () => {
    expect(build({ "food/food.ts": "export type D = Date;\nexport const d = { Date };" })).toEqual([
      "food/food.ts:1 uses Date",
      "food/food.ts:2 uses Date",
    ]);
  });

  test("names of properties, words in comments and in texts are no breach", () => {
    const text = [
      "// Date, process and fetch",
      'export const a = { process: 1, "Date": 2 };',
      "export interface B { readonly performance: number; fetch(): void }",
      'export const c = (b: B) => [a.process, b.performance, Math.max(1, 2), "Math.random()", `console`];',
    ].join("\n");
    expect(build({ "food/food.ts": text })).toEqual([]);
  });

  test.each(["node:fs", "highs", "fs", "halfloaf/quantity"])("the library does not import %s", (name) => {
    expect(build({ "food/food.ts": `import "${name}";` })).toContain(
      `food/food.ts:1 imports "${name}": the library has no such part`,
    );
  });

  test("an import by a computed path is a breach", () => {
    expect(build({ "food/food.ts": "export const f = (p: string) => import(p);" })).toHaveLength(1);
  });
});

describe("workspaces", () => {
  test("only the engine imports the solver", () => {
    expect(
      build({ "packages/engine/src/solve.ts": 'import "highs";', "apps/cli/src/main.ts": 'import "highs/runtime";' }),
    ).toEqual(['apps/cli/src/main.ts:1 imports "highs/runtime", which only the engine knows']);
  });

  test("nobody reaches into another workspace by a path", () => {
    expect(
      build({ "apps/cli/src/main.ts": 'import "../../../packages/engine/src/a.ts";', "packages/engine/src/a.ts": "" }),
    ).toEqual([
      'apps/cli/src/main.ts:1 imports "../../../packages/engine/src/a.ts" out of its workspace (name the package instead)',
    ]);
  });

  test.each([
    ["an app", "apps/web/src/main.ts"],
    ["a package", "packages/engine/src/solve.ts"],
  ])("%s leans on no app", (_, path) => {
    const app = { "apps/cli/package.json": '{ "name": "@house/cli" }', "apps/cli/src/main.ts": "" };
    expect(build({ ...app, [path]: 'export type { W } from "@house/cli/words";' })).toEqual([
      `${path}:1 imports "@house/cli/words", an app (put what is shared into a package)`,
    ]);
    expect(build({ ...app, [path.replace(".ts", ".test.ts")]: 'import "@house/cli/words";' })).toEqual([]);
  });

  test("an import without its ending, or of a file that is not there, is a breach", () => {
    expect(build({ "food/a.ts": 'import "./b";\nimport "./c.ts";', "food/b.ts": "" })).toEqual([
      'food/a.ts:1 imports "./b", which is no file (write the ending .ts out)',
      'food/a.ts:2 imports "./c.ts", which is no file (write the ending .ts out)',
    ]);
  });
});

describe("rings", () => {
  test("files that import each other are named once, in order", () => {
    const ring = {
      "food/b.ts": 'import "./c.ts";',
      "food/a.ts": 'import type {} from "./b.ts";',
      "food/c.ts": 'import "./a.ts";',
    };
    expect(build({ ...ring, "food/index.ts": 'export * from "./a.ts";' })).toEqual([
      "food/a.ts, food/b.ts, food/c.ts import each other in a ring",
    ]);
  });

  test("a file that imports itself is a ring, two ways to one file are none", () => {
    const diamond = {
      "food/a.ts": 'import "./b.ts";\nimport "./c.ts";',
      "food/b.ts": 'import "./d.ts";',
      "food/c.ts": 'import "./d.ts";',
      "food/d.ts": "",
    };
    expect(build(diamond)).toEqual([]);
    expect(build({ "food/a.ts": 'import "./a.ts";' })).toEqual(["food/a.ts import each other in a ring"]);
  });
});

test("a source that cannot be read is a breach", () => {
  expect(build({ "food/a.ts": "export const = 1;" })[0]).toMatch(/^food\/a\.ts cannot be read: /);
});

describe("what is expected of a page", () => {
  const look = (text) => build({ "e2e/app/look.test.ts": text });

  test("is waited for, as a page takes its time", () => {
    expect(
      look("expect(await page.locator('li').count()).toBe(0);\nexpect(await box.isChecked(), path).toBe(true);"),
    ).toEqual([
      "e2e/app/look.test.ts:1 expects what one count() sees (a page takes its time: use expect.poll)",
      "e2e/app/look.test.ts:2 expects what one isChecked() sees (a page takes its time: use expect.poll)",
    ]);
    expect(look("await expect.poll(() => page.locator('li').count()).toBe(0);\nexpect(await read()).toBe(1);")).toEqual(
      [],
    );
  });
});
