import { expect, test } from "vitest";
import { day, foods } from "../../../stores/stores.testing.ts";
import { boughtOf, ledgerOf, penFor, pudding } from "./acts.testing.ts";
import { cook } from "./cook.ts";
import { eat } from "./eat.ts";

function cookedTwice() {
  const ledger = ledgerOf(boughtOf("m", { massG: 5000 }), boughtOf("r", { food: "rice", place: "dry-store" }));
  for (const on of [day(1), day(2)]) {
    ledger.add([cook(ledger.state, foods, { dish: pudding, portions: 2, on }, penFor(ledger)).cooked]);
  }
  return ledger;
}

test("portions leave the oldest cooking first, and a plate may be filled from two", () => {
  const ledger = cookedTwice();
  const plates = [
    { eater: "ada", dish: "pudding", portions: 1.5 },
    { dish: "pudding", portions: 1 },
  ];
  const { eaten, short } = eat(ledger.state, { on: day(3), sitting: "midday", plates }, penFor(ledger));
  expect(short).toEqual([]);
  expect(eaten?.plates).toEqual([
    { eater: "ada", lot: "pudding-a-3", massG: 570 },
    { lot: "pudding-a-3", massG: 190 },
    { lot: "pudding-a-4", massG: 190 },
  ]);
});

test("what has gone off is not served, and what is missing is told", () => {
  const ledger = cookedTwice();
  const plates = [{ eater: "ada", dish: "pudding", portions: 3 }];
  const { eaten, short } = eat(ledger.state, { on: day(4), sitting: "midday", plates }, penFor(ledger));
  expect(eaten?.plates).toEqual([{ eater: "ada", lot: "pudding-a-4", massG: 760 }]);
  expect(short).toEqual([{ eater: "ada", dish: "pudding", portions: 1 }]);
});

test("a food is eaten as it is, in g; where nothing is there nothing is written", () => {
  const ledger = cookedTwice();
  const pen = penFor(ledger);
  const milk = eat(ledger.state, { on: day(1), sitting: "between", plates: [{ food: "milk", massG: 200 }] }, pen);
  expect(milk.eaten?.plates).toEqual([{ lot: "m", massG: 200 }]);
  const beans = { food: "beans-tinned", massG: 9 };
  expect(eat(ledger.state, { on: day(1), sitting: "between", plates: [beans] }, pen)).toEqual({ short: [beans] });
});

test("an empty plate is a defect", () => {
  const ledger = cookedTwice();
  const plates = [{ dish: "pudding", portions: 0 }];
  expect(() => eat(ledger.state, { on: day(1), sitting: "midday", plates }, penFor(ledger))).toThrow(RangeError);
});
