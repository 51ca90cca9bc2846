import { expect, test } from "vitest";
import type { Pack } from "../../../price/index.ts";
import { day, foods } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import { type EventBody, Pen } from "../Pen.ts";
import { RecordLedger } from "../RecordLedger.ts";
import { toKitchen } from "../toKitchen.ts";
import { priceHistory } from "./priceHistory.ts";

const pack = (id: string, over: Partial<Pack>): Pack => ({
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
const seen = { on: day(0), at: "Corner" };
const kitchen = makeKitchen({
  packs: [pack("milk-1l", { seen, estimate: undefined }), pack("rice-1kg", { food: "rice", shop: "market" })],
});
const look = (pack: string, at: number, priceMinor: number, massG?: number): EventBody => ({
  kind: "price-seen",
  on: day(at),
  pack,
  priceMinor,
  at: "Corner",
  ...(massG !== undefined && { massG }),
});
const stateOf = (...bodies: EventBody[]) => {
  const pen = new Pen({ device: "a", nowMs: 1 }, 0, undefined);
  return new RecordLedger(
    foods,
    bodies.map((body) => pen.write(body)),
  ).state;
};

test("by unit price a smaller pack at the same price is dearer", () => {
  const state = stateOf(look("milk-1l", 9, 100, 800), look("milk-1l", 4, 110));
  const [milk, rice] = priceHistory(kitchen, state, foods);
  expect(milk?.points).toEqual([
    { on: day(0), priceMinor: 100, massG: 1000, perKgMinor: 100 },
    { on: day(4), priceMinor: 110, massG: 1000, perKgMinor: 110, changePct: expect.closeTo(10, 9) },
    { on: day(9), priceMinor: 100, massG: 800, perKgMinor: 125, changePct: expect.closeTo(13.636, 2) },
  ]);
  expect(rice).toMatchObject({ food: "rice", shop: "market", points: [] });
  expect(priceHistory(kitchen, state, foods, { shop: "market" }).map(({ pack: id }) => id)).toEqual(["rice-1kg"]);
  expect(priceHistory(kitchen, state, foods, { food: "beans-tinned" })).toEqual([]);
});

test("the price book learns: the kitchen has the latest price and content seen by the day", () => {
  const state = stateOf(look("milk-1l", 4, 110, 900), look("milk-1l", 9, 95));
  const packsOn = (at: number) => toKitchen(kitchen, state, foods, day(at)).packs[0];
  expect(packsOn(3)).toEqual(kitchen.packs[0]);
  expect(packsOn(5)).toMatchObject({ priceMinor: 110, content: { massG: 900 }, seen: { on: day(4), at: "Corner" } });
  expect(packsOn(9)).toMatchObject({ priceMinor: 95, content: { massG: 1000 } });
});
