import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sourceOf } from "../table/FileSource.ts";
import { toObservation, toPack } from "./PackCandidate.ts";
import { PackIndex } from "./PackIndex.ts";
import { gtinOf, makePack, SHOPS } from "./price.testing.ts";
import { parsePriceListMapping } from "./priceListMapping.ts";
import { readPriceList } from "./readPriceList.ts";

const gtin = gtinOf("501234567890");
const PACKS = [makePack({ gtin }), makePack({ id: "beans", label: "Kidney beans, 400 g", content: { massG: 400 } })];

const MAPPING = {
  format: "halfloaf-price-list-mapping",
  version: 1,
  csv: { encoding: "latin1", delimiter: ";", decimal: "," },
  currency: "EUR",
  columns: {
    label: "Article",
    price: "Price",
    shop: "Shop",
    content: "Content",
    unitPrice: "Per kg",
    date: "Date",
    gtin: "Code",
    offer: "Offer",
  },
};
const HEADER = "Article;Price;Shop;Content;Per kg;Date;Code;Offer\r\n";

async function read(rows: string | Uint8Array, over: object = {}) {
  const mapping = parsePriceListMapping({ ...MAPPING, ...over });
  if (!mapping.ok) throw new Error(JSON.stringify(mapping.issues));
  const content =
    typeof rows === "string" ? Uint8Array.from(HEADER + rows, (character) => character.charCodeAt(0)) : rows;
  return readPriceList(sourceOf("list.csv", content), {
    mapping: mapping.value,
    shops: SHOPS,
    index: new PackIndex(PACKS),
  });
}

function tell({ issues }: Awaited<ReturnType<typeof read>>) {
  return issues.map(({ code, path, received }) => [code, path.join("/"), received]);
}

describe("a price list", () => {
  test("gives an observation of each known pack, with where and when", async () => {
    const reading = await read(
      `Oats;0,85;Tally Store;500 g;1,70;28.11.2026;${gtin};3 for 2,40\r\nKIDNEY BEANS 400G;0,65;tally-store;;;28.11.2026;;\r\n`,
    );
    expect(tell(reading)).toEqual([]);
    expect(reading.rows.map(({ match }) => match.kind === "known" && match.by)).toEqual(["gtin", "label"]);
    const seen = { on: "2026-11-28", at: "Tally Store" };
    expect(reading.rows.map(({ observation }) => observation)).toEqual([
      { pack: "oats-500", priceMinor: 85, offer: { kind: "several", count: 3, priceMinor: 240 }, seen },
      { pack: "beans", priceMinor: 65, seen },
    ]);
  });

  test("offers what is not known as a new pack, which a person completes", async () => {
    const { rows } = await read("Crème fraîche;1,19;Quay Market;200 g;;28.11.2026;;\r\n");
    const [row] = rows;
    expect(row?.match).toEqual({ kind: "open", nearest: [] });
    expect(row?.candidate).toMatchObject({ label: "Crème fraîche", shop: "quay-market", content: { massG: 200 } });
    const added = { id: "creme", food: "creme-fraiche" };
    expect(row && toPack(row.candidate, added)).toMatchObject({ ok: false, issues: [{ path: ["section"] }] });
    expect(row && toPack(row.candidate, { ...added, section: "dairy" })).toMatchObject({
      ok: true,
      value: { id: "creme", priceMinor: 119, seen: { on: "2026-11-28", at: "Quay Market" } },
    });
  });

  test("without day or shop is no observation and a new pack of it an estimate", async () => {
    const { rows, issueCount } = await read(`Oats;0,85;Tally Store;;;;${gtin};\r\n`);
    expect([issueCount, rows[0]?.match.kind, rows[0]?.observation]).toEqual([0, "known", undefined]);
    expect(rows[0] && toObservation({ id: "x" }, rows[0].candidate)).toBeUndefined();
    const given = { id: "x", food: "oats-rolled", section: "dry goods", content: { massG: 500 } };
    expect(rows[0] && toPack(rows[0].candidate, given)).toMatchObject({ ok: true, value: { estimate: true } });
    const stated = await read(`Oats;0,85;;;;;${gtin};\r\n`, { shop: "tally-store", on: "2026-11-27" });
    expect(stated.rows[0]?.observation?.seen).toEqual({ on: "2026-11-27", at: "Tally Store" });
  });

  test("of a pack of another content is no observation: it may have been made smaller", async () => {
    const { rows } = await read(`Oats;0,79;Tally Store;450 g;;28.11.2026;${gtin};\r\n`);
    expect([rows[0]?.isOtherContent, rows[0]?.observation]).toEqual([true, undefined]);
  });

  test("tells what it does not understand by line and column and leaves only that out", async () => {
    const reading = await read(
      [
        "Oats;free;Tally Store;;;28.11.2026;;",
        ";1,00;Tally Store;;;28.11.2026;;",
        "Peas;1,00;Nowhere;a bag;;32.11.2026;5012345678901;3 for 2",
        "Rice;1,00;Tally Store;500 g;3,00;03/04/2026;;2 for 2,10",
        'Salt;"0,"50";Tally Store;;;28.11.2026;;',
        "Flour;0,55;Tally Store;1 kg;0,55;28.11.2026;;",
      ].join("\n"),
    );
    expect(tell(reading)).toEqual([
      ["price", "list.csv/2/Price", '"free"'],
      ["label", "list.csv/3/Article", '""'],
      ["shop", "list.csv/4/Shop", '"Nowhere"'],
      ["content", "list.csv/4/Content", '"a bag"'],
      ["date", "list.csv/4/Date", '"32.11.2026"'],
      ["gtin", "list.csv/4/Code", '"5012345678901"'],
      ["offer", "list.csv/4/Offer", '"3 for 2"'],
      ["date", "list.csv/5/Date", '"03/04/2026"'],
      ["offer", "list.csv/5/Offer", '"2 for 2,10"'],
      ["unit-price", "list.csv/5/Per kg", '"3,00"'],
      ["text-after-quote", "list.csv/6", "text"],
    ]);
    expect(reading.rows.map(({ line, candidate }) => [line, candidate.label])).toEqual([
      [4, "Peas"],
      [5, "Rice"],
      [7, "Flour"],
    ]);
  });

  test.each([
    ["1,70", []],
    ["1,70 EUR/kg", []],
    ["1,70/kg", []],
    ["0,17 per 100 g", []],
    ["2,40/kg", ["unit-price"]],
    ["0,71 per 100 g", ["unit-price"]],
    ["1,70 £/kg", ["currency"]],
  ])("holds a unit price of %s against price and content", async (unitPrice, codes) => {
    const reading = await read(`Oats;0,85;Tally Store;500 g;${unitPrice};28.11.2026;;2 für 1,60\r\n`);
    expect(reading.issues.map(({ code }) => code)).toEqual(codes);
    expect(reading.rows[0]?.candidate.offer).toEqual({ kind: "several", count: 2, priceMinor: 160 });
  });

  test("in UTF-16 with its mark, tabs and points is read as well", async () => {
    const text = `\ufeff${HEADER.replaceAll(";", "\t")}Ça;1.99\tx`.replace(";", "\t");
    const bytes = new Uint8Array(text.length * 2);
    for (let at = 0; at < text.length; at++) {
      bytes.set([text.charCodeAt(at) & 0xff, text.charCodeAt(at) >> 8], at * 2);
    }
    const { rows } = await read(bytes, { csv: { delimiter: "\t" }, columns: { label: "Article", price: "Price" } });
    expect(rows[0]?.candidate).toEqual({ label: "Ça", priceMinor: 199 });
  });

  test("without its columns is told, and nothing is read", async () => {
    const reading = await read("", { columns: { label: "Name", price: "Cost" } });
    expect([reading.outcome, reading.issues.map(({ expected }) => expected)]).toEqual([
      "failed",
      ['a column "Name"', 'a column "Cost"'],
    ]);
  });
});

test.each([
  [{ currency: "XXX" }, "currency"],
  [{ columns: { label: "a" } }, "columns/price"],
  [{ on: "2026-02-30" }, "on"],
  [{ version: 2 }, "version"],
])("a mapping with %j is refused", (over, path) => {
  const parsed = parsePriceListMapping({ ...MAPPING, ...over });
  expect(parsed.ok ? [] : parsed.issues.map((issue) => issue.path.join("/"))).toEqual([path]);
});

test("a row with an endless cell is told and left out, at once", async () => {
  const rows = ["Price", "Per kg", "Article"].map((column) => {
    const cell = (name: string, text: string) => (name === column ? `1${" ".repeat(100_000)}x1` : text);
    return `${cell("Article", "Oats")};${cell("Price", "0,85")};Tally Store;500 g;${cell("Per kg", "1,70")};28.11.2026;;`;
  });
  const reading = await read(rows.join("\n"));
  expect(reading.issues.map(({ code, path }) => [code, path[2]])).toEqual([
    ["cell-long", "Price"],
    ["cell-long", "Per kg"],
    ["cell-long", "Article"],
  ]);
  expect(reading.rows).toEqual([]);
});

test("an endless mapping is refused as that, with one fault", () => {
  const parsed = parsePriceListMapping({ ...MAPPING, more: Array.from({ length: 50_000 }, () => ({})) });
  expect(parsed.ok ? [] : parsed.issues.map(({ code }) => code)).toEqual(["too-long"]);
});

test("whatever the list holds, every row is a sound candidate or told", async () => {
  const junk = fc.oneof(
    fc.uint8Array({ maxLength: 200 }).map((bytes) => String.fromCharCode(...bytes)),
    fc.string({ unit: fc.constantFrom(";", '"', "\n", "9", ",", "€", "x", " g", "\u00ad", "for"), maxLength: 60 }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(junk, { maxLength: 5 }), async (parts) => {
      const { rows } = await read(parts.join("\r\n"), { csv: { delimiter: ";", decimal: "," } });
      for (const { candidate } of rows) {
        expect(Number.isSafeInteger(candidate.priceMinor) && candidate.priceMinor >= 0).toBe(true);
        const added = { id: "x", food: "x", shop: "x", section: "x", content: { massG: 1 } };
        expect(toPack(candidate, added)).toMatchObject({ ok: true });
      }
    }),
    { endOnFailure: true },
  );
});
