import { describe, expect, test } from "vitest";
import type { Pack } from "../../../price/index.ts";
import { day, foods } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import { toKitchen } from "../toKitchen.ts";
import { ledgerOf, penFor } from "./acts.testing.ts";
import { type ShoppingDone, tickPacks } from "./tickPacks.ts";

const pack = (id: string, over: Partial<Pack> = {}): Pack => ({
  id,
  shop: "corner",
  food: "milk",
  label: id,
  content: { massG: 1000 },
  priceMinor: 100,
  estimate: true,
  section: "fridge",
  ...over,
});
const offer = { kind: "several", count: 2, priceMinor: 150 } as const;
const kitchen = makeKitchen({
  packs: [
    pack("milk-1l", { offer }),
    pack("rice", { food: "rice" }),
    pack("net", { loose: true }),
    pack("odd", { content: { volumeMl: 500 } }),
    pack("last", { reduced: { until: day(1), limit: 2 } }),
  ],
});

function tick(done: Partial<ShoppingDone>) {
  const ledger = ledgerOf();
  const read = tickPacks(
    kitchen,
    foods,
    { on: day(0), shop: "corner", lines: [], week: day(0), ...done },
    penFor(ledger),
  );
  if (read.ok) ledger.add(read.value);
  return { read, ledger, events: read.ok ? read.value : [] };
}

describe("packs ticked off", () => {
  test("each is a lot at its part of the till, and the price is seen", () => {
    const { events, ledger } = tick({
      lines: [{ pack: "milk-1l", count: 3, planned: ["milk-1l-day-1-1"] }],
      fareMinor: 80,
    });
    expect(events.map(({ kind }) => kind)).toEqual(["bought", "bought", "bought", "price-seen", "trip"]);
    expect(events).toMatchObject([
      {
        lot: "milk-a-1",
        place: "fridge",
        costMinor: 84,
        planned: { week: day(0), lot: "milk-1l-day-1-1" },
        pack: "milk-1l",
        shop: "corner",
      },
      { lot: "milk-a-2", costMinor: 83 },
      { lot: "milk-a-3", costMinor: 83 },
      { priceMinor: 100, offer, at: "Corner" },
      { fareMinor: 80 },
    ]);
    expect(ledger.state.planned).toEqual(new Map([[`${day(0)} milk-1l-day-1-1`, "milk-a-1"]]));
    expect(toKitchen(kitchen, ledger.state, foods, day(0)).packs[0]?.seen).toEqual({ on: day(0), at: "Corner" });
  });

  test("price, size and till as found count, and another price is not the known offer's", () => {
    const { events, ledger } = tick({
      lines: [{ pack: "milk-1l", count: 2, priceMinor: 95, massG: 900, tillMinor: 180 }],
    });
    expect(events).toMatchObject([{ massG: 900, costMinor: 90 }, { costMinor: 90 }, { priceMinor: 95, massG: 900 }]);
    expect(events[2]).not.toHaveProperty("offer");
    const [learned] = toKitchen(kitchen, ledger.state, foods, day(0)).packs;
    expect(learned).toMatchObject({ priceMinor: 95, content: { massG: 900 } });
    expect(learned).not.toHaveProperty("offer");
  });

  test("what is loose stays so, and what was reduced keeps to its day", () => {
    const { ledger } = tick({
      lines: [
        { pack: "net", count: 1 },
        { pack: "last", count: 1 },
        { pack: "rice", count: 1 },
      ],
    });
    const lots = [...ledger.state.lots.values()];
    expect(lots.map(({ loose, useBy, place }) => [loose, useBy, place])).toEqual([
      [true, undefined, "fridge"],
      [undefined, day(1), "fridge"],
      [undefined, undefined, "dry-store"],
    ]);
  });

  test("one pack of a week ticked twice is told, and both count until one is withdrawn", () => {
    const { ledger } = tick({
      lines: [
        { pack: "rice", count: 1, planned: ["rice-day-1-1"] },
        { pack: "rice", count: 1, planned: ["rice-day-1-1"] },
      ],
    });
    expect(ledger.state.faults).toMatchObject([{ event: "a-3", issue: { code: "bought-twice", path: ["planned"] } }]);
    expect(ledger.state.lots.size).toBe(2);
    ledger.add([penFor(ledger).write({ kind: "withdrawn", on: day(0), events: ["a-1"] })]);
    expect(ledger.state.faults).toEqual([]);
    expect(ledger.state.planned.get(`${day(0)} rice-day-1-1`)).toBe("rice-a-3");
  });
});

test("what can't be bought is refused whole, with every fault", () => {
  const { read } = tick({
    shop: "market",
    lines: [
      { pack: "milk-1l", count: 1 },
      { pack: "none", count: 1 },
    ],
  });
  expect(read.ok ? [] : read.issues.map(({ code, path }) => `${path.join("/")} ${code}`)).toEqual([
    "shop shop-unknown",
    "lines/0/pack pack-unknown",
    "lines/1/pack pack-unknown",
  ]);
  const { read: odd } = tick({
    lines: [
      { pack: "milk-1l", count: 0.5 },
      { pack: "odd", count: 1 },
    ],
  });
  expect(odd.ok ? [] : odd.issues.map(({ code, path }) => `${path.join("/")} ${code}`)).toEqual([
    "lines/0/count count",
    "lines/1/massG density-unknown",
  ]);
});
