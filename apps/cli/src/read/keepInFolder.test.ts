import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadDemoKitchens } from "@halfloaf/data";
import { afterEach, beforeEach, expect, test } from "vitest";
import { loadTables } from "../input/loadTables.ts";
import { openKeep } from "../keep/openKeep.ts";
import { closeAfter } from "../keep/runKeep.ts";
import { toMemory } from "../output/memory.testing.ts";
import { runCommands } from "../runCommands.ts";
import { PASTED_DISH, PASTED_RECEIPT, runRead } from "./read.testing.ts";

const kelp = {
  id: "kelp-crackers",
  group: "snack",
  names: { british: ["kelp crackers"], american: ["kelp crackers"] },
  diet: "vegan",
  hygiene: "ready-to-eat",
  allergens: { eu: [], us: [] },
  refusePct: 0,
  keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 14 }, authority: "the label" },
  source: "the label of the box",
  composition: { energyKcal: 410, energyKj: 1715, proteinG: 9 },
};
const override = { food: "onion", from: "harbour board, 12", figures: { proteinG: 2 }, sources: { proteinG: "hb 12" } };
const OWN = JSON.stringify({ format: "halfloaf-foods", version: 1, foods: [kelp], overrides: [override] });
const KELP_DISH = PASTED_DISH.replace("30 g zanzibble root", "30 g kelp crackers").replace(
  "1 tin chickpeas",
  "2 onions",
);
const RICE = "rice-white-long-1000g-tally-store";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-keep-"));
  const demo = loadDemoKitchens().find(({ name }) => name === "port-ansel");
  const files = { "my.json": JSON.stringify(demo?.content), "own.json": OWN, "kelp.txt": KELP_DISH };
  for (const [name, text] of Object.entries({ ...files, "receipt.txt": PASTED_RECEIPT }))
    writeFileSync(join(folder, name), text);
});
afterEach(() => rmSync(folder, { recursive: true }));

async function command(...words: string[]) {
  const memory = toMemory(folder, 80);
  const code = await runCommands(words, "0.0.1", memory);
  return { code, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
}

/** The kitchen in the folder as it stands on a day after the receipt. */
async function kept() {
  const opened = await openKeep({ kitchen: "home", on: "2026-12-01", json: false }, toMemory(folder, 80));
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  const found = await closeAfter(opened.value, ({ kitchen, tables, state }) => ({
    ok: true,
    value: { kitchen, tables, prices: state.prices.length },
  }));
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.value;
}

const settle = () => command("settle", "home", "--from", "my.json");
const read = (...words: string[]) => runRead(folder, [...words, "--kitchen", "home"]);

test("own foods, figures and what named them go with the kitchen into its folder, up to the card of a dish", async () => {
  const intoFile = (name: string) => runRead(folder, [name, "--kitchen", "my.json", "--keep"]);
  expect((await intoFile("own.json")).told).toBe("Kept in my.json: the food kelp-crackers, figures of onion.");
  expect((await intoFile("kelp.txt")).code).toBe(0);
  expect((await settle()).code).toBe(0);
  const { kitchen, tables } = await kept();
  expect(kitchen.dishes[0]?.makings.map(({ food }) => food)).toContain("kelp-crackers");
  expect(tables.foods.get("kelp-crackers")?.source).toBe("the label of the box");
  expect(tables.foods.get("onion")?.figureSources.proteinG).toBe("hb 12");
  expect(loadTables().foods.has("kelp-crackers")).toBe(false);
  const { code, printed } = await command("card", kitchen.dishes[0]?.id ?? "", "home");
  expect([code, /kelp crackers/.test(printed)]).toEqual([0, true]);
});

test("is read into and remembers: prices as seen, new packs, matches, dishes of its own foods, as one act each", async () => {
  await settle();
  await read("own.json", "--keep");
  expect((await read("kelp.txt", "--keep")).told).toBe("Kept in home: the dish leek-and-oat-soup-of-the-quay.");
  const first = await read("receipt.txt", "--pack", `5=${RICE}`, "--food", "6=salt", "--amount", "6=20 g", "--keep");
  expect(first.told).toBe("Kept in home: 2 prices, the new pack sponge, 1 match to remember.");
  const { kitchen, prices } = await kept();
  const rice = kitchen.packs.find(({ id }) => id === RICE);
  expect(rice).toMatchObject({
    priceMinor: 159,
    seen: { on: "2026-11-28", at: "Tally Store" },
    knownAs: ["LG RICE 1KG"],
  });
  const again = await read("receipt.txt", "--keep");
  expect(again.flat).toContain(`${RICE} (as said)`);
  expect(again.told).toBe("Nothing was kept: there was nothing new.");
  expect((await kept()).prices).toBe(prices);
  expect((await command("undo", "--kitchen", "home")).code).toBe(0);
  const after = (await kept()).kitchen;
  expect(after.packs.find(({ id }) => id === RICE)?.knownAs).toBe(undefined);
  expect([after.packs.some(({ id }) => id === "sponge"), after.dishes.length]).toEqual([false, 1]);
});

test("refuses what does not fit it, and nothing is written: a food of an id that is taken", async () => {
  await settle();
  writeFileSync(join(folder, "twice.json"), OWN.replace('"id":"kelp-crackers"', '"id":"onion"'));
  expect((await read("twice.json", "--keep")).code).toBe(2);
  expect((await kept()).kitchen.foods).toEqual([]);
});

test("a pack is also bought by the number under its bars", async () => {
  await settle();
  const { code, printed } = await command("bought", "2026001041000", "--kitchen", "home", "--on", "2026-12-01");
  expect([code, printed]).toEqual([0, expect.stringContaining("Bought Rolled oats, 500 g")]);
});
