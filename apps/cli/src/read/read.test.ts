import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadDemoKitchens } from "@halfloaf/data";
import { SAMPLE_FOODS, sampleFoodAt, writeCsvFiles, writeJsonFile } from "@halfloaf/reading/table/testing";
import fc from "fast-check";
import { parseKitchen } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { loadTables } from "../input/loadTables.ts";
import { openKitchen } from "../input/openKitchen.ts";
import { textWidth } from "../output/textWidth.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { toDishText } from "./dish/toDishText.ts";
import { writeAll } from "./planKeeping.ts";
import { ReadReport } from "./ReadReport.ts";
import { PASTED_DISH, PASTED_RECEIPT, runRead, SETTLED } from "./read.testing.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-read-"));
  const demo = loadDemoKitchens().find(({ name }) => name === "port-ansel");
  write("my.json", JSON.stringify(demo?.content));
  write("soup.txt", PASTED_DISH);
  write("receipt.txt", PASTED_RECEIPT);
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(name: string, text: string | Uint8Array): void {
  writeFileSync(join(folder, name), text);
}

function readJson(name: string): unknown {
  return JSON.parse(readFileSync(join(folder, name), "utf8"));
}

function kitchenNow() {
  const parsed = parseKitchen(readJson("my.json"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}

const run = (...words: string[]) => runRead(folder, words);

describe("a pasted dish", () => {
  test("stands beside what it was understood as, with what is open and what guesses rest on", async () => {
    const { code, flat, talked } = await run("soup.txt");
    expect([code, talked]).toEqual([0, ""]);
    expect(flat).toContain("as written understood as");
    expect(flat).toContain("guess, minutes: ");
    expect(flat).toContain('Which food is meant by "zanzibble root" is not sure.');
    expect(flat).toContain('How much is meant by "1 tin chickpeas" can\'t be weighed. Say it with --amount "5=400 g".');
  });

  test.each([60, 72, 100])("keeps to a width of %i", async (width) => {
    const { lines } = await runRead(folder, ["soup.txt"], width);
    expect(Math.max(...lines.map(textWidth))).toBeLessThanOrEqual(width);
  });

  test("is data of its published form, a dish only where nothing is open", async () => {
    const open = JSON.parse((await run("soup.txt", "--json")).printed);
    const settled = JSON.parse((await run("soup.txt", ...SETTLED, "--json")).printed);
    for (const data of [open, settled]) expect(v.safeParse(ReadReport, data).issues).toBe(undefined);
    expect(open.parts[0].dishes[0].dish).toBe(undefined);
    expect(settled.parts[0].dishes[0].dish.portions).toBe(4);
  });

  test("is not kept while anything is open, and then nothing is written", async () => {
    const before = readdirSync(folder);
    const { code, told } = await run("soup.txt", "--keep", "--kitchen", "my.json");
    expect(code).toBe(2);
    expect(told).toContain("Nothing was done.");
    expect(readdirSync(folder)).toEqual(before);
    expect(kitchenNow().dishes).toEqual([]);
  });

  test("once settled goes into the kitchen, which is sound with it", async () => {
    const { code, told } = await run("soup.txt", ...SETTLED, "--title", "Quay soup", "--keep", "--kitchen", "my.json");
    expect([code, told]).toEqual([0, "Kept in my.json: the dish quay-soup."]);
    expect(kitchenNow().dishes.map(({ id, title }) => [id, title])).toEqual([["quay-soup", "Quay soup"]]);
    expect(openKitchen("my.json", folder, loadTables()).ok).toBe(true);
  });

  test("without a kitchen goes into a file of its own, which a kitchen takes in later, the same", async () => {
    expect((await run("soup.txt", ...SETTLED, "--keep")).code).toBe(0);
    const file = "halfloaf-dish-leek-and-oat-soup-of-the-quay.json";
    const [dish] = JSON.parse((await run("soup.txt", ...SETTLED, "--json")).printed).parts[0].dishes;
    expect((await run(file, "--keep", "--kitchen", "my.json")).code).toBe(0);
    expect(kitchenNow().dishes).toEqual([dish.dish]);
  });

  test("what settles no line, names no food or is no amount is told all at once", async () => {
    const { code, told } = await run("soup.txt", "--food", "1=leekk", "--food", "99=leek", "--amount", "2=much");
    expect(code).toBe(2);
    expect(told).toContain("3 faults");
    expect(told).toContain("Near to it: leek");
    expect(told).toContain("Write a number from 1 to 6");
  });

  test("where one file can't be written, none is", async () => {
    const before = readFileSync(join(folder, "my.json"), "utf8");
    const out = ["soup.txt", ...SETTLED, "--kitchen", "my.json", "--keep", "--out", "no/such/dish.json"];
    expect((await run(...out)).code).toBe(2);
    expect(readFileSync(join(folder, "my.json"), "utf8")).toBe(before);
  });

  test("files written before one that fails go back to what they were", () => {
    write("old.txt", "old");
    const files = ["old.txt", "new.txt", "no/such.txt"].map((name) => ({
      path: join(folder, name),
      text: "x",
      what: "",
    }));
    expect(writeAll(files).ok).toBe(false);
    expect(readFileSync(join(folder, "old.txt"), "utf8")).toBe("old");
    expect(readdirSync(folder)).not.toContain("new.txt");
  });

  test("a demo kitchen and a file that is no dish of ours are never written over", async () => {
    expect((await run("soup.txt", ...SETTLED, "--keep", "--kitchen", "port-ansel")).told).toContain(
      "A demo kitchen is never written over.",
    );
    const { code, told } = await run("soup.txt", ...SETTLED, "--out", "receipt.txt");
    expect([code, readFileSync(join(folder, "receipt.txt"), "utf8")]).toEqual([2, PASTED_RECEIPT]);
    expect(told).toContain("is no dish that Halfloaf wrote");
  });
});

test("the program reads standard input, shows results on the output and talk beside it", () => {
  const bin = fileURLToPath(new URL("../../bin/halfloaf.mjs", import.meta.url));
  const given = { cwd: folder, encoding: "utf8", input: PASTED_DISH, env: { ...process.env, COLUMNS: "60" } } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, [bin, "read", "-", ...SETTLED, "--keep"], given);
  expect([status, stderr]).toEqual([
    0,
    "Kept in halfloaf-dish-leek-and-oat-soup-of-the-quay.json: the dish leek-and-oat-soup-of-the-quay.\n",
  ]);
  expect(stdout).toContain("Nothing is open: it can be kept.");
  expect(Math.max(...stdout.split("\n").map(textWidth))).toBeLessThanOrEqual(60);
});

test("whatever dish --out writes is read back the same", async () => {
  const { dishes, ...tables } = loadTables();
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...dishes), fc.constantFrom("british", "american"), async (dish, english) => {
      write("dish.json", toDishText(dish, tables, english));
      const { printed } = await run("dish.json", "--json", "--english", english);
      expect(JSON.parse(printed).parts[0].dishes[0].dish).toEqual(dish);
    }),
    { numRuns: 8, endOnFailure: true },
  );
});

test("a food that is not sure has no amount to settle where that of the nearest follows from the line", async () => {
  write(
    "toast.txt",
    "Toast\nServes 2\n\n4 slices bread\n80 g cheddar\n2 tsp zanzibble\n\nMethod\nGrill for 3 minutes. Serve.",
  );
  const { flat } = await run("toast.txt");
  expect(flat).toContain('Which food is meant by "bread" is not sure. Nearest: bread-white');
  expect(flat).toContain('No food of the table is near "zanzibble".');
  expect(flat).not.toContain("can't be weighed");
});

test("what stands under a heading of what is optional is kept as if wanted", async () => {
  write("soup2.txt", PASTED_DISH.replace("30 g zanzibble root", "\nTo finish (optional)\n20 g parsley, chopped"));
  const { makings } = JSON.parse((await run("soup2.txt", "--json")).printed).parts[0].dishes[0];
  expect(makings.map(({ optional }: { optional: boolean }) => optional)).toEqual([...Array(5).fill(false), true]);
});

test("markup and what steers a terminal are shown as text or not at all", async () => {
  const esc = String.fromCharCode(0x1b);
  write(
    "page.html",
    `<main><h1>Soup${esc}[31m<script>alert(1)</script></h1><p>Serves 2</p><ul><li>100 g leek\u202e<li>&lt;b&gt;1 onion&lt;/b&gt;</ul><h2>Method</h2><ol><li>Chop the leek.<li>Simmer for 5 minutes.</ol></main>`,
  );
  const { code, printed } = await run("page.html");
  expect(code).toBe(0);
  expect(printed).not.toMatch(/alert|<b>|\u202e/);
  expect(printed).not.toContain(esc);
});

describe("what a file is", () => {
  test.each([
    ["lines.txt", "200 g leek\n2 tbsp oil\n1 onion", "makings"],
    ["own.json", '{"format":"halfloaf-foods","version":1}', "foods"],
    ["receipt.txt", PASTED_RECEIPT, "receipt"],
    ["soup.txt", PASTED_DISH, "dish"],
    ["fdc.json", writeJsonFile(SAMPLE_FOODS.slice(0, 2)), "table"],
  ])("%s is found out by what stands in it", async (name, text, kind) => {
    write(name, text);
    expect(JSON.parse((await run(name, "--json")).printed).parts[0].kind).toBe(kind);
  });

  test.each([
    ["prose.txt", "The quay was grey.\nNobody came.", "Say it with --as"],
    ["table.csv", "a,b\n1,2", "Name a mapping file with --mapping"],
    ["my.json", undefined, 'Check it with "halfloaf check"'],
    ["nothing.txt", undefined, "Check the spelling"],
    ["empty.txt", " \n", "holds nothing"],
    ["picture.jpg", Uint8Array.from({ length: 3000 }, (_, at) => (at * 7919) % 251), "is no text"],
    ["paper.pdf", "%PDF-1.7\n1 0 obj", "Copy the text out of it"],
  ])("%s is refused with what to do", async (name, text, remedy) => {
    if (text !== undefined) write(name, text);
    const { code, told } = await run(name);
    expect(code).toBe(2);
    expect(told).toContain(remedy);
  });

  test("faults are data where data was asked for", async () => {
    const { printed } = await run("nothing.txt", "--json");
    expect(v.safeParse(FaultReport, JSON.parse(printed)).issues).toBe(undefined);
  });
});

describe("official tables", () => {
  beforeEach(() => {
    for (const [name, text] of Object.entries(writeCsvFiles(SAMPLE_FOODS))) write(name, text);
  });

  test("old and new stand beside each other, and are kept in the kitchen, which is planned with them", async () => {
    const words = [".", "--food", "900001=onion", "--kitchen", "my.json"];
    const shown = await run(...words);
    expect(shown.flat).toContain("protein 1.1 g -> 22.5 g");
    expect(kitchenNow().overrides).toEqual([]);
    expect((await run(...words, "--keep")).told).toBe("Kept in my.json: figures of onion.");
    const opened = openKitchen("my.json", folder, loadTables());
    expect(opened.ok && opened.value.tables.foods.get("onion")?.composition.proteinG).toBe(22.5);
    expect(loadTables().foods.get("onion")?.composition.proteinG).not.toBe(22.5);
  });

  test("without a kitchen no figures are kept", async () => {
    expect((await run(".", "--food", "900001=onion", "--keep")).told).toContain(
      "Name its file or folder with --kitchen.",
    );
  });

  test("figures of a food that nobody has are a fault of every command", async () => {
    const override = { food: "no-such", from: "a table", figures: {}, sources: {} };
    write("my.json", JSON.stringify({ ...(readJson("my.json") as object), overrides: [override] }));
    const opened = openKitchen("my.json", folder, loadTables());
    expect(opened.ok ? [] : opened.faults.map(({ code, path }) => [code, path.join("/")])).toEqual([
      ["food-unknown", "overrides/0/food"],
    ]);
  });

  test("Ctrl-C stops the reading and nothing is kept", async () => {
    const list = Array.from({ length: 2000 }, (_, at) => sampleFoodAt(at, []));
    write("fdc.json", writeJsonFile(list));
    let stop = (): void => undefined;
    const { code, told } = await runRead(folder, ["fdc.json", "--keep", "--kitchen", "my.json"], 80, {
      onStop: (listener) => {
        stop = listener;
        return () => undefined;
      },
      showProgress: () => stop(),
    });
    expect(code).toBe(2);
    expect(told).toContain("was stopped");
  });
});

describe("prices", () => {
  test("a receipt's line that was said to be a pack is remembered, and its price is seen where and when", async () => {
    const rice = "rice-white-long-1000g-tally-store";
    const first = await run("receipt.txt", "--kitchen", "my.json", "--pack", `5=${rice}`, "--keep");
    expect(first.code).toBe(0);
    expect(kitchenNow().packs.find(({ id }) => id === rice)).toMatchObject({
      priceMinor: 159,
      seen: { on: "2026-11-28", at: "Tally Store" },
    });
    const again = await run("receipt.txt", "--kitchen", "my.json");
    expect(again.flat).toContain(`${rice} (as said), 1.59 so far`);
    expect(again.flat).toContain("The lines add up to the total of 3.43.");
  });

  test.each([
    [PASTED_RECEIPT.replace("TOTAL                    3.43", "TOTAL 3.63"), "receipt-apart"],
    [PASTED_RECEIPT.replace("TOTAL", "TOTAL GBP"), "receipt-currency"],
  ])("of a receipt whose total does not agree, or of another currency, are shown and not kept", async (text, code) => {
    write("bad.txt", text);
    expect((await run("bad.txt", "--kitchen", "my.json")).code).toBe(0);
    const { code: exit, printed } = await run("bad.txt", "--kitchen", "my.json", "--keep", "--json");
    expect([exit, JSON.parse(printed).faults.map((fault: { code: string }) => fault.code)]).toEqual([2, [code]]);
    expect(kitchenNow().packs.find(({ id }) => id === "oats-rolled-500g-tally-store")?.priceMinor).toBe(79);
  });

  test("a line is never said to be a pack of another shop", async () => {
    const { code, told } = await run(
      "receipt.txt",
      "--kitchen",
      "my.json",
      "--pack",
      "5=rice-white-long-2500g-ropewalk-market",
    );
    expect(code).toBe(2);
    expect(told).toContain('is sold at "Ropewalk Market", and this is of "Tally Store"');
  });

  test("a line becomes a new pack only where a person says of which food", async () => {
    const before = kitchenNow().packs.length;
    await run("receipt.txt", "--kitchen", "my.json", "--keep");
    expect(kitchenNow().packs.length).toBe(before);
    const words = ["receipt.txt", "--kitchen", "my.json", "--food", "5=rice-white-long", "--keep"];
    expect((await run(...words)).code).toBe(0);
    expect(kitchenNow().packs.find(({ id }) => id === "lg-rice-1kg")).toMatchObject({ content: { massG: 1000 } });
  });

  test("a price list is read by its mapping, in its encoding, and every misfit has line and column", async () => {
    write(
      "map.json",
      JSON.stringify({
        format: "halfloaf-price-list-mapping",
        version: 1,
        csv: { encoding: "latin1", delimiter: ";", decimal: "," },
        currency: "EUR",
        columns: { label: "Ware", price: "Preis" },
        shop: "tally-store",
        on: "2026-11-29",
      }),
    );
    const pounds = { ...(readJson("map.json") as object), currency: "GBP" };
    write("pounds.json", JSON.stringify(pounds));
    const text = "Ware;Preis\nRolled oats, 500 g;0,95 €\nCrème;x\n".replace("€", "EUR");
    write(
      "list.csv",
      Uint8Array.from(text, (sign) => sign.charCodeAt(0)),
    );
    const other = await run("list.csv", "--mapping", "pounds.json", "--kitchen", "my.json", "--keep");
    expect([other.code, other.told]).toEqual([2, expect.stringContaining("in another currency than the kitchen")]);
    const { code, flat } = await run("list.csv", "--mapping", "map.json", "--kitchen", "my.json", "--keep");
    expect(code).toBe(0);
    expect(flat).toContain('line 3, column "Preis"');
    expect(kitchenNow().packs.find(({ id }) => id === "oats-rolled-500g-tally-store")?.priceMinor).toBe(95);
  });
});

test("nothing is fetched unless it is said; then one page, whose scripts are text", async () => {
  let asked = 0;
  const server = createServer((_, answer) => {
    asked++;
    answer.setHeader("content-type", "text/html");
    answer.end(
      `<main><h1>Soup</h1><ul><li>100 g leek<li>1 tbsp oil</ul><h2>Method</h2><p>Fry the leek for 5 minutes.</p><p>Serve hot.</p><img src="/x"><script src="/y"></script></main>`,
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/soup`;
  const refused = await run(address);
  expect([refused.code, asked]).toEqual([2, 0]);
  expect(refused.told).toContain("Add --fetch");
  const { code, flat } = await run(address, "--fetch");
  expect([code, asked]).toEqual([0, 1]);
  expect(flat).toContain("Fry the leek for 5 minutes.");
  await new Promise((resolve) => server.close(resolve));
  expect((await run(address, "--fetch")).told).toContain("can't be reached");
});
