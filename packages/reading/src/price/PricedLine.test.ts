import { describe, expect, test } from "vitest";
import { sourceOf } from "../table/FileSource.ts";
import { PackIndex, rememberMatch } from "./PackIndex.ts";
import { linesOfList, linesOfReceipt, newObservations, newPackOf } from "./PricedLine.ts";
import { makePack, SHOPS } from "./price.testing.ts";
import { readPriceList, rematch } from "./readPriceList.ts";
import { readReceipt } from "./readReceipt.ts";
import { GERMAN_RECEIPT } from "./receiptWords.ts";

const packs = [makePack(), makePack({ id: "rice", label: "Rice, 1 kg", content: { massG: 1000 } })];

describe("a priced line", () => {
  test("of a receipt says what becomes of its price", () => {
    const read = (text: string) =>
      linesOfReceipt(readReceipt(text, { currency: "EUR", shops: SHOPS, packs }), SHOPS).map(
        ({ fate, observation }) => [fate, observation?.priceMinor],
      );
    expect(read("Tally Store\n28.11.2026\nRolled oats, 500 g 0.85\nWhat is this 1.20\nTotal 2.05")).toEqual([
      ["price", 85],
      ["pack-open", undefined],
    ]);
    expect(read("Tally Store\nRolled oats, 500 g 0.85")).toEqual([["day-unknown", undefined]]);
  });

  test("of a list is known once a person has said which pack its text means, and so are all of that text", async () => {
    const text = "goods,price\nrlld oats,0.85\nRLLD OATS,0.89\nRice 1 kg,1.49\n";
    const mapping = {
      format: "halfloaf-price-list-mapping" as const,
      version: 1 as const,
      csv: { delimiter: "," as const, decimal: "." as const, headerLine: 1 },
      currency: "EUR",
      columns: { label: "goods", price: "price" },
      shop: "tally-store",
      on: "2026-11-28",
    };
    const { rows } = await readPriceList(sourceOf("list", text), {
      mapping,
      shops: SHOPS,
      index: new PackIndex(packs),
    });
    expect(linesOfList(rows).map(({ fate }) => fate)).toEqual(["pack-open", "pack-open", "price"]);
    const taught = new PackIndex(rememberMatch(packs, { text: "rlld oats", pack: "oats-500" }));
    const again = linesOfList(rematch(rows, "rlld oats", taught));
    expect(again.map(({ observation }) => [observation?.pack, observation?.priceMinor])).toEqual([
      ["oats-500", 85],
      ["oats-500", 89],
      ["rice", 149],
    ]);
  });

  test("becomes a new pack with the content of its label, else as said, else it is asked for", () => {
    const line = (text: string) => ({
      text,
      candidate: { label: text, shop: "tally-store", priceMinor: 120, seen: { on: "2026-11-28", at: "Tally Store" } },
    });
    const contentOf = (text: string, content?: { massG: number }) => {
      const made = newPackOf(line(text), { id: "new", food: "lentils-red", content });
      return made.ok ? made.value.content : made.issues.map(({ path }) => path[0]);
    };
    expect(contentOf("LENTILS RED 500G")).toEqual({ massG: 500 });
    expect(contentOf("LENTILS RED 500G", { massG: 400 })).toEqual({ massG: 400 });
    expect(contentOf("LENTILS")).toEqual(["content"]);
  });
});

test("a look at a price that is known already is none that is new, nor is the same one twice", () => {
  const seen = { on: "2026-11-20", at: "Tally Store" };
  const known = { pack: "oats-500", priceMinor: 79, seen };
  const fresh = { pack: "oats-500", priceMinor: 85, seen: { ...seen, on: "2026-11-28" } };
  expect(newObservations([known, fresh, fresh], [], packs)).toEqual([fresh]);
  expect(newObservations([fresh], [fresh], packs)).toEqual([]);
});

test("a receipt in German is read with its words", () => {
  const text =
    "Tally Store\n28.11.2026\nRolled oats, 500 g 0,85 A\nPFAND 0,25\nAktion 0,10-\nZwischensumme 1,00\nSUMME EUR 1,00\nGirocard 1,00\nMwSt 7% 0,06";
  const receipt = readReceipt(text, { currency: "EUR", shops: SHOPS, packs, words: GERMAN_RECEIPT });
  expect(receipt.items.map(({ name }) => name)).toEqual(["Rolled oats, 500 g"]);
  expect(receipt.extras.map(({ kind, amountMinor }) => [kind, amountMinor])).toContainEqual(["deposit", 25]);
  expect([receipt.balance.kind, receipt.date]).toEqual(["equal", "2026-11-28"]);
});
