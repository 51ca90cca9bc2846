import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { observeReceipt, toCandidate } from "./observeReceipt.ts";
import { rememberMatch } from "./PackIndex.ts";
import { makePack, SHOPS } from "./price.testing.ts";
import { type ReceiptContext, readReceipt } from "./readReceipt.ts";
import { priceOf, printReceipt, receipts, sumOf } from "./receipt.testing.ts";

const CONTEXT: ReceiptContext = { currency: "EUR", shops: SHOPS, packs: [] };

function read(text: string, over: Partial<ReceiptContext> = {}) {
  return readReceipt(text, { ...CONTEXT, ...over });
}

describe("a receipt that was printed", () => {
  test("is read back: every item with price, measure and discount, and the same sums", () => {
    fc.assert(
      fc.property(receipts, (printed) => {
        const receipt = read(printReceipt(printed));
        expect(receipt.issues).toEqual([]);
        expect(receipt.items.map(({ name, priceMinor, discountMinor }) => [name, priceMinor, discountMinor])).toEqual(
          printed.items.map((item) => [item.name, priceOf(item), item.discountMinor]),
        );
        for (const [at, { form, count, massG, eachMinor }] of printed.items.entries()) {
          const { measured } = receipt.items[at] as (typeof receipt.items)[number];
          const stated = form === "count-before" ? { count } : { count, eachMinor };
          if (form === "plain") expect(measured).toBeUndefined();
          else if (form.startsWith("count")) expect(measured).toEqual({ kind: "count", ...stated });
          else expect(measured).toMatchObject({ kind: "mass", value: massG / 1000, rateMinor: eachMinor });
        }
        expect(receipt.balance).toEqual({ kind: "equal", sumMinor: sumOf(printed) });
        expect([receipt.shop, receipt.date]).toEqual(["quay-market", "2026-11-28"]);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  test("with another total tells by how much it is apart", () => {
    fc.assert(
      fc.property(receipts, fc.integer({ min: 1, max: 5000 }), (printed, apartMinor) => {
        const sumMinor = sumOf(printed);
        const receipt = read(printReceipt({ ...printed, subtotal: false }, sumMinor + apartMinor));
        expect(receipt.balance).toEqual({ kind: "apart", sumMinor, apartMinor });
        expect(receipt.issues.map(({ code }) => code)).toEqual(["total"]);
      }),
      { numRuns: 50 },
    );
  });

  test("leaves no line out: each is an item, counts in the sum, or is named as not read", () => {
    fc.assert(
      fc.property(receipts, (printed) => {
        const text = printReceipt(printed);
        const { unread } = read(text);
        const lines = text.split("\n");
        for (const { line, text: left } of unread) expect(lines[line - 1]?.replace(/\s+/g, " ").trim()).toBe(left);
        expect(unread.map(({ text: left }) => left)).toContain("Thank you!");
        // The lines that told shop and day were of use.
        const left = unread.map((each) => each.text).join(" ");
        expect(left).not.toMatch(/quay market/i);
        expect(left).not.toContain("28.11.2026");
      }),
      { numRuns: 50 },
    );
  });
});

describe("lines of a receipt", () => {
  test("tax that the total adds to the lines is found by the sum", () => {
    const { balance } = read("Shop\nMilk 2.40\nSales tax 0.19\nTOTAL 2.59");
    expect(balance).toEqual({ kind: "tax-added", sumMinor: 240, taxMinor: 19 });
    expect(read("Shop\nMilk 2.40\nincl. VAT 7 % 0.16\nTotal 2.40").balance.kind).toBe("equal");
  });

  test("a product that is not price times measure is told", () => {
    const receipt = read("Milk 2 x 1.20 2.50\nPears 1.000 kg x 2.00/kg 2.02\nTotal 4.52");
    expect(receipt.issues.map(({ code, path, expected }) => [code, path, expected])).toEqual([
      ["product", [1], "240 minor units"],
      ["product", [2], "200 minor units"],
    ]);
  });

  test("a subtotal that is not the sum of the lines above is told", () => {
    const { issues } = read("Milk 1.20\nSubtotal 1.30\nTotal 1.20");
    expect(issues.map(({ code, path, received }) => [code, path, received])).toEqual([["subtotal", [2], '"130"']]);
  });

  test("a discount belongs to the line above, behind the subtotal and by its words to the whole", () => {
    const receipt = read("Milk 2.00\nOffer -0.50\nBread 1.00\nSubtotal 2.50\nSaving -0.25\nVoucher 1.00\nTotal 1.25");
    expect(receipt.items.map(({ discountMinor }) => discountMinor)).toEqual([-50, 0]);
    expect(receipt.extras.map(({ kind, amountMinor }) => [kind, amountMinor])).toEqual([
      ["whole-discount", -25],
      ["whole-discount", -100],
    ]);
    expect(receipt.balance.kind).toBe("equal");
  });

  test("what is taken back cancels the line of its price, not the line above", () => {
    const receipt = read("Milk 2.00\nBread 1.00\nVoid milk 2.00-\nTotal 1.00");
    expect(receipt.items.map(({ discountMinor }) => discountMinor)).toEqual([-200, 0]);
  });

  test("goods that are named like a word of the till stay goods; savings that are only told do not count", () => {
    const receipt = read(
      "Balance bread 1.20\nTotal yogurt 0.80\nTax-free chews 0.50\nYou saved 0.40\nGrand total 2.50",
    );
    expect(receipt.items.map(({ name }) => name)).toEqual(["Balance bread", "Total yogurt", "Tax-free chews"]);
    expect(receipt.balance.kind).toBe("equal");
  });

  test("without a total says so", () => {
    expect(read("Milk 1.20").balance).toEqual({ kind: "no-total", sumMinor: 120 });
    expect(read("").balance).toEqual({ kind: "no-total", sumMinor: 0 });
  });

  test("of a currency without decimals go by its sign where one is printed", () => {
    const receipt = read("Corner 12\nRice ¥1,298\nTea 2 x ¥149 ¥298\nTotal ¥1,596", { currency: "JPY" });
    expect(receipt.items.map(({ name, priceMinor }) => [name, priceMinor])).toEqual([
      ["Rice", 1298],
      ["Tea", 298],
    ]);
    expect(receipt.balance.kind).toBe("equal");
  });

  test.each([
    ["Oats £0.85\nTotal £0.85", ["currency", "currency"]],
    ["Oats 0.85\nTOTAL GBP 0.85", ["currency"]],
    ["Oats €0.85\nTotal EUR 0.85", []],
    ["TEA CUP 1.50\nMOP HEAD 2.00\nTotal 3.50", []],
  ])("in another currency are told, while goods called like a code are goods: %j", (text, codes) => {
    const receipt = read(text);
    expect(receipt.issues.map(({ code }) => code)).toEqual(codes);
    expect(receipt.items.every(({ name }) => !name.includes("TOTAL"))).toBe(true);
  });

  test("a discount for staff or members is of the whole bill", () => {
    const { items, extras } = read("Oats 0.85\nSTAFF DISCOUNT 10% -0.09\nTotal 0.76");
    expect(items.map(({ discountMinor }) => discountMinor)).toEqual([0]);
    expect(extras.map(({ kind }) => kind)).toEqual(["whole-discount"]);
  });

  test("a day that could be two stays open and is told", () => {
    const receipt = read("Shop\n03/04/2026\nMilk 1.20");
    expect([receipt.date, receipt.issues.map(({ code }) => code)]).toEqual([undefined, ["date"]]);
    expect(read("Shop\n03/04/2026\nMilk 1.20", { dateOrder: "dmy" }).date).toBe("2026-04-03");
  });

  test("of another language are read with its words", () => {
    const words = {
      total: ["summe"],
      subtotal: ["zwischensumme"],
      tax: ["mwst"],
      payment: ["bar"],
      discount: ["rabatt"],
      wholeDiscount: ["gutschein"],
      rounding: ["rundung"],
      deposit: ["pfand"],
      cancelled: ["storno"],
      note: ["gespart"],
      beside: [],
    };
    const receipt = read("Milch 1,20\nRabatt 0,20-\nPfand 0,25\nGutschein 0,50\nSumme EUR 0,75\nBar 1,00", { words });
    expect([receipt.items.length, receipt.extras.length, receipt.balance.kind]).toEqual([1, 2, "equal"]);
  });
});

describe("items of a receipt", () => {
  const packs = [
    makePack({ id: "oats", label: "Rolled oats, 500 g" }),
    makePack({ id: "apples", label: "Apples, loose", content: { massG: 1500 } }),
    makePack({ id: "eggs", label: "Eggs, 6", content: { pieces: 6 } }),
  ];
  const text =
    "Tally Store\n28.11.2026\nRLLD OATS 500G 2 x 0.79 1.58\nOffer -0.30\nAPPLES LOOSE 0.500 kg x 1.99/kg 1.00\nEggs, 6 1.89\nTotal 4.17";

  test("are matched by what was matched before and taught: the second receipt knows them", () => {
    const first = read(text, { packs });
    expect(first.items.map(({ match }) => match.kind)).toEqual(["open", "known", "known"]);
    const open = first.items[0]?.match;
    expect(open?.kind === "open" && open.nearest[0]?.pack.id).toBe("oats");
    const second = read(text, { packs: rememberMatch(packs, { text: "RLLD OATS 500G", pack: "oats" }) });
    expect(second.items.map(({ match }) => match.kind === "known" && match.pack.id)).toEqual([
      "oats",
      "apples",
      "eggs",
    ]);
    const seen = { on: "2026-11-28", at: "Tally Store" };
    expect(observeReceipt(second, SHOPS)).toEqual({
      observations: [
        { pack: "oats", priceMinor: 79, offer: { kind: "several", count: 2, priceMinor: 128 }, seen },
        // 1.5 kg at 1.99 a kilogram is 298.5 minor units.
        { pack: "apples", priceMinor: 299, seen },
        { pack: "eggs", priceMinor: 189, seen },
      ],
      without: [],
    });
  });

  test("are known by the number under their bars where the line prints one", () => {
    const [first, second] = read(
      "Tally Store\n28.11.2026\n4006381333931 SOMETHING NEW 0.85\n20012345 OATS 0.85\nTotal 1.70",
      { packs: [makePack({ id: "known", gtin: "4006381333931" })] },
    ).items;
    expect(first).toMatchObject({ name: "SOMETHING NEW", gtin: "4006381333931", match: { kind: "known", by: "gtin" } });
    expect([second?.name, second?.gtin]).toEqual(["20012345 OATS", undefined]);
  });

  test("without day, shop or known pack are no observation, each with its reason", () => {
    const reasons = (receipt: ReturnType<typeof read>) =>
      observeReceipt(receipt, SHOPS).without.map(({ reason }) => reason);
    expect(reasons(read(text, { packs }))).toEqual(["pack-open"]);
    expect(reasons(read("Tally Store\nEggs, 6 1.89", { packs }))).toEqual(["day-unknown"]);
    expect(reasons(read("28.11.2026\nEggs, 6 1.89", { packs }))).toEqual(["shop-unknown"]);
    expect(reasons(read("Tally Store\n28.11.2026\n2 x Eggs, 6 1.89", { packs }))).toEqual(["price-not-whole"]);
    expect(reasons(read("Tally Store\n28.11.2026\nEggs, 6 0.3 kg x 2.00/kg 0.60", { packs }))).toEqual([
      "content-unlike",
    ]);
  });

  test("that are open make candidates with place and day", () => {
    const receipt = read(text, { packs: [] });
    expect(receipt.items.map((item) => toCandidate(item, receipt, SHOPS))).toEqual([
      { label: "RLLD OATS 500G", shop: "tally-store", priceMinor: 79, seen: { on: "2026-11-28", at: "Tally Store" } },
      {
        label: "APPLES LOOSE",
        shop: "tally-store",
        content: { massG: 1000 },
        priceMinor: 199,
        seen: { on: "2026-11-28", at: "Tally Store" },
      },
      { label: "Eggs, 6", shop: "tally-store", priceMinor: 189, seen: { on: "2026-11-28", at: "Tally Store" } },
    ]);
  });
});

describe("whatever is pasted", () => {
  const tokens = [
    "1.20",
    "-0,50",
    "2 x",
    "0.512 kg",
    "x 2.40/kg",
    "TOTAL",
    "Offer",
    "\n",
    "\n",
    "€",
    "(",
    ")",
    "\u202e",
    "\u200b",
    "28.11.2026",
    "__proto__",
    "9".repeat(400),
    "@",
    "A",
    "Milk",
  ];

  test("the sum is that of the items and extras, in whole minor units, and nothing throws", () => {
    const junk = fc.oneof(
      fc.array(fc.constantFrom(...tokens), { maxLength: 40 }).map((parts) => parts.join(" ")),
      fc.string({ unit: "binary", maxLength: 300 }),
    );
    fc.assert(
      fc.property(junk, fc.constantFrom("EUR", "JPY", "KWD"), (text, currency) => {
        const { items, extras, balance, unread } = read(text, { currency, packs: [makePack()] });
        const bought = items.reduce((sum, { priceMinor, discountMinor }) => sum + priceMinor + discountMinor, 0);
        expect(balance.sumMinor).toBe(extras.reduce((sum, { amountMinor }) => sum + amountMinor, bought));
        expect(Number.isSafeInteger(balance.sumMinor)).toBe(true);
        expect(
          items.every(({ priceMinor, discountMinor }) => priceMinor + discountMinor >= 0 && discountMinor <= 0),
        ).toBe(true);
        expect(JSON.stringify([items, unread])).not.toMatch(/[\u202e\u200b]/);
      }),
      { numRuns: 500, endOnFailure: true },
    );
  });

  test("a receipt longer than any receipt is cut, which is told", () => {
    const { items, issues } = read("Milk 1.20\n".repeat(20_000));
    expect([items.length, issues.map(({ code, path }) => [code, path])]).toEqual([5000, [["length", [5001]]]]);
  });
});
