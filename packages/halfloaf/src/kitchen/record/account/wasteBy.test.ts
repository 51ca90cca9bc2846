import { describe, expect, test } from "vitest";
import type { Pack } from "../../../price/index.ts";
import { buy, day, foods } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import type { EventBody } from "../Pen.ts";
import { Pen } from "../Pen.ts";
import { RecordLedger } from "../RecordLedger.ts";
import { wasteBy } from "./wasteBy.ts";
import { wasteByReason } from "./wasteByReason.ts";

const pack = (id: string, massG: number, priceMinor: number): Pack => ({
  id,
  shop: "corner",
  food: "milk",
  label: id,
  content: { massG },
  priceMinor,
  estimate: true,
  section: "fridge",
});
const kit = { ...makeKitchen().kit, freezerLitres: 20 };
const kitchen = makeKitchen({ kit, packs: [pack("large", 1000, 100), pack("half", 500, 60), pack("small", 200, 30)] });

function stateOf(bodies: readonly EventBody[]) {
  const pen = new Pen({ device: "a", nowMs: 1 }, 0, undefined);
  return new RecordLedger(
    foods,
    bodies.map((body) => pen.write(body)),
  ).state;
}
function lossesOf(bodies: readonly EventBody[], of = kitchen) {
  return wasteBy(of, stateOf(bodies), foods, day(0), day(30));
}
const bought = buy("a") as EventBody;
const waste = (on: string, massG: number): EventBody => ({ kind: "wasted", on, lot: "a", massG });
const use = (on: string, massG: number): EventBody => ({ kind: "used", on, lot: "a", massG });

describe("what would have saved a loss", () => {
  test("a pack that holds what was used and costs less, or the freezer, or eating it in time", () => {
    expect(lossesOf([bought, use(day(1), 300), waste(day(9), 700)])).toEqual([
      {
        food: "milk",
        massG: 700,
        costMinor: 70,
        lots: [
          {
            lot: "a",
            on: day(9),
            massG: 700,
            costMinor: 70,
            missingG: 0,
            savings: [
              { kind: "freeze", by: day(7) },
              { kind: "eat", by: day(7) },
              { kind: "smaller-pack", pack: "half", count: 1, savesMinor: 40 },
            ],
          },
        ],
      },
    ]);
  });

  test("what was thrown away while it was good had a day neither to freeze nor to eat it by", () => {
    const [loss] = lossesOf([bought, use(day(1), 900), waste(day(5), 100)]);
    expect(loss?.lots[0]?.savings).toEqual([]);
  });

  test("without a freezer nothing is frozen, and of what nothing was used no pack was small enough", () => {
    const bare = { ...kitchen, kit: { ...kit, freezerLitres: 0 } };
    expect(lossesOf([bought, waste(day(9), 1000)], bare)[0]?.lots[0]?.savings).toEqual([{ kind: "eat", by: day(7) }]);
  });

  test("the dearest food comes first, and what was missing is told", () => {
    const losses = lossesOf([
      bought,
      buy("b", { food: "rice", place: "dry-store", costMinor: 300 }) as EventBody,
      waste(day(1), 10),
      { kind: "counted", on: day(2), lot: "b", massG: 500 },
    ]);
    expect(losses.map(({ food, costMinor, lots }) => [food, costMinor, lots[0]?.missingG])).toEqual([
      ["rice", 150, 500],
      ["milk", 1, 0],
    ]);
  });
});

test("by reason, all that was thrown away or found missing in the days is told once, the dearest first", () => {
  const state = stateOf([
    bought,
    buy("b", { food: "rice", place: "dry-store", costMinor: 300 }) as EventBody,
    { ...waste(day(1), 100), why: "mishap" } as EventBody,
    { ...waste(day(2), 200), why: "mishap" } as EventBody,
    waste(day(3), 50),
    waste(day(31), 50),
    { kind: "counted", on: day(2), lot: "b", massG: 500 },
  ]);
  expect(wasteByReason(state, day(0), day(30))).toEqual([
    { why: "missing", massG: 500, costMinor: 150 },
    { why: "mishap", massG: 300, costMinor: 30 },
    { massG: 50, costMinor: 5 },
  ]);
});
