import type { Dish } from "../../../dish/index.ts";
import { day, foods } from "../../../stores/stores.testing.ts";
import { dish } from "../frozen/frozen.testing.ts";
import { type EventBody, Pen, penOf } from "../Pen.ts";
import { RecordLedger } from "../RecordLedger.ts";

/** A ledger of the foods of the stores with what happened so far. */
export function ledgerOf(...bodies: EventBody[]): RecordLedger {
  const pen = new Pen({ device: "a", nowMs: 1 }, 0, undefined);
  return new RecordLedger(
    foods,
    bodies.map((body) => pen.write(body)),
  );
}

/** A pen that goes on with a ledger. */
export function penFor(ledger: RecordLedger): Pen {
  return penOf(ledger, { device: "a", nowMs: 2 });
}

export function boughtOf(
  lot: string,
  over: Partial<Extract<EventBody, { kind: "bought" }>> = {},
): Extract<EventBody, { kind: "bought" }> {
  return { kind: "bought", on: day(0), lot, food: "milk", place: "fridge", massG: 1000, costMinor: 100, ...over };
}

const making = (food: string, value: number, over: object = {}) => ({
  food,
  amount: { value, unit: "g" as const },
  optional: false,
  alternatives: [],
  ...over,
});

/** Two portions of 380 g: 400 g of milk, 100 g of rice or, where that is short, of beans. */
export const pudding: Dish = {
  ...dish,
  id: "pudding",
  makings: [
    making("milk", 400),
    making("rice", 100, { alternatives: [{ food: "beans-tinned", amount: { value: 120, unit: "g" } }] }),
    making("beans-tinned", 50, { optional: true }),
  ],
};
