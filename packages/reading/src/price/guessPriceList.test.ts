import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sourceOf } from "../table/FileSource.ts";
import { guessPriceList, toPriceListMapping } from "./guessPriceList.ts";
import { PackIndex } from "./PackIndex.ts";
import { gtinOf, makePack, SHOPS } from "./price.testing.ts";
import { readPriceList } from "./readPriceList.ts";

describe("how a price list is written is guessed", () => {
  test("by its own words: delimiter, decimal sign, header line and columns", () => {
    const guess = guessPriceList(
      "Tally Store, offers of the week\n\nArtikel;Inhalt;Preis;Preis/kg;Datum\nHaferflocken, zart;500 g;0,79;1,58;28.11.2026\nReis;1 kg;1.049,00;1.049,00;28.11.2026\n",
      "EUR",
    );
    expect(guess.csv).toEqual({ delimiter: ";", decimal: ",", thousands: ".", headerLine: 3 });
    expect(guess.header).toEqual(["Artikel", "Inhalt", "Preis", "Preis/kg", "Datum"]);
    expect(guess.columns).toEqual({
      label: "Artikel",
      content: "Inhalt",
      price: "Preis",
      unitPrice: "Preis/kg",
      date: "Datum",
    });
    expect(guess.sample[0]).toEqual(["Haferflocken, zart", "500 g", "0,79", "1,58", "28.11.2026"]);
  });

  test("by what stands in them where their names say nothing", () => {
    const gtin = gtinOf("501234567890");
    const { columns } = guessPriceList(`A,B,C,D\n${gtin},Rolled oats,500 g,0.79\n${gtin},Rice,1 kg,1.29\n`, "EUR");
    expect(columns).toEqual({ gtin: "A", label: "B", content: "C", price: "D" });
  });

  test("days in numbers tell their order where one of them can be in that order alone", () => {
    const orderOf = (...days: string[]) =>
      guessPriceList(`label,price,day\n${days.map((day) => `Oats,0.79,${day}`).join("\n")}`, "EUR").dateOrder;
    expect(orderOf("03/04/2026", "28/04/2026")).toBe("dmy");
    expect(orderOf("03/04/2026", "04/28/2026")).toBe("mdy");
    expect(orderOf("03/04/2026")).toBe(undefined);
    expect(orderOf("28/04/2026", "04/28/2026")).toBe(undefined);
  });

  test("what is stated goes before what would be guessed", () => {
    const { csv, header } = guessPriceList("a,b\nlabel;price\nOats;0,79", "EUR", { delimiter: ";", decimal: "." });
    expect([csv.delimiter, csv.decimal, header]).toEqual([";", ".", ["label", "price"]]);
  });

  test("a list without a header has no columns, and no mapping is made", () => {
    const guess = guessPriceList("Oats 500 g;0,79\nRice 1 kg;1,29", "EUR");
    expect([guess.header, guess.columns]).toEqual([[], {}]);
    expect(toPriceListMapping(guess, { currency: "EUR" })).toBe(undefined);
  });

  test("and read so, every row of a written list comes back, whatever its marks", async () => {
    const rows = fc.array(
      fc.record({
        label: fc.constantFrom("Rolled oats, 500 g", 'Say "rice"', "Beans; white", "Milk | whole"),
        priceMinor: fc.integer({ min: 1, max: 999_999 }),
      }),
      { minLength: 3, maxLength: 20 },
    );
    const forms = fc.constantFrom(
      { delimiter: ";", decimal: "," },
      { delimiter: ",", decimal: "." },
      { delimiter: "\t", decimal: "," },
      { delimiter: "|", decimal: "." },
    );
    await fc.assert(
      fc.asyncProperty(rows, forms, async (written, { delimiter, decimal }) => {
        const text = [
          ["goods", "price", "seen on"],
          ...written.map(({ label, priceMinor }) => [
            `"${label.replaceAll('"', '""')}"`,
            (priceMinor / 100).toFixed(2).replace(".", decimal),
            "2026-11-28",
          ]),
        ]
          .map((cells) => cells.join(delimiter))
          .join("\r\n");
        const mapping = toPriceListMapping(guessPriceList(text, "EUR"), { currency: "EUR", shop: "tally-store" });
        if (mapping === undefined) throw new Error("no mapping");
        const index = new PackIndex([makePack()]);
        const read = await readPriceList(sourceOf("list", text), { mapping, shops: SHOPS, index });
        expect(read.issues).toEqual([]);
        expect(read.rows.map(({ candidate }) => [candidate.label, candidate.priceMinor])).toEqual(
          written.map(({ label, priceMinor }) => [label, priceMinor]),
        );
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });

  test("whatever is pasted", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 120 }), (text) => {
        const { header, columns } = guessPriceList(text, "EUR");
        expect(Object.values(columns).every((name) => header.includes(name))).toBe(true);
      }),
      { numRuns: 150, endOnFailure: true },
    );
  });
});
