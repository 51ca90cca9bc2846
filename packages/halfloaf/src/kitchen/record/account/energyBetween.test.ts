import { expect, test } from "vitest";
import { day, foods } from "../../../stores/stores.testing.ts";
import { ledgerOf, penFor, pudding } from "../act/acts.testing.ts";
import { cook } from "../act/cook.ts";
import { cookingEnergy } from "./cookingEnergy.ts";
import { energyBetween } from "./energyBetween.ts";

/** Cookings of a dish, one a day from the first on. */
function cookedOn(...days: readonly number[]) {
  const ledger = ledgerOf();
  for (const on of days) {
    const { cooked } = cook(ledger.state, foods, { dish: pudding, portions: 4, on: day(on) }, penFor(ledger));
    ledger.add([cooked]);
  }
  return ledger.state;
}

test("the cookings of the days are added up, both ends included, and priced once", () => {
  const { kwh } = cookingEnergy(pudding, 4);
  expect(kwh).toBeGreaterThan(0);
  const drawn = energyBetween(cookedOn(0, 1, 2, 5), [pudding], day(1), day(5), 32.5);
  expect(drawn).toMatchObject({ cookings: 3, unknown: 0, costMinor: Math.round(3 * kwh * 32.5) });
  expect(drawn.kwh).toBeCloseTo(3 * kwh, 9);
});

test("without a price there is no cost, and a dish that is not there any more is counted and in no figure", () => {
  expect(energyBetween(cookedOn(0), [], day(0), day(0))).toEqual({ kwh: 0, cookings: 1, unknown: 1 });
});
