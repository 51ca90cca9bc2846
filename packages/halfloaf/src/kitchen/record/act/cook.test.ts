import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Choose } from "../../../dish/index.ts";
import { day, foods, milk } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import { fromKitchen } from "../parseRecord.ts";
import { deeds, live, skews } from "../record.testing.ts";
import { toKitchen } from "../toKitchen.ts";
import { boughtOf, ledgerOf, penFor, pudding } from "./acts.testing.ts";
import { cook, listTakenMakings } from "./cook.ts";

const rice = boughtOf("rice-1", { food: "rice", place: "dry-store", costMinor: 60 });
const boxedMilk = boughtOf("box-milk", { massG: 1000 });
const frozenPudding = { ...pudding, keeps: { ...pudding.keeps, freezerDays: 60 } };
const beans = boughtOf("tin", { food: "beans-tinned", place: "dry-store", massG: 400, costMinor: 40 });

describe("cooking out of the stores", () => {
  test("makings leave first expired first out; portions left over are a lot at what they cost", () => {
    const ledger = ledgerOf(boughtOf("new", { on: day(1) }), boughtOf("old", { massG: 300, costMinor: 45 }), rice);
    const plates = [{ eater: "ada", portions: 1 }, { portions: 1 }];
    const wish = { dish: pudding, portions: 4, on: day(2), sitting: "evening", batch: 3, plates } as const;
    const { cooked, eaten } = cook(ledger.state, foods, wish, penFor(ledger));
    expect(cooked).toMatchObject({
      lot: "pudding-a-4",
      uses: [
        { lot: "old", massG: 300 },
        { lot: "new", massG: 500, opens: true },
        { lot: "rice-1", massG: 200, opens: true },
      ],
    });
    expect(cooked).not.toHaveProperty("unbooked");
    if (eaten === undefined) throw new Error("nothing was eaten");
    ledger.add([cooked, eaten]);
    const { lots, plates: told, cookings, faults } = ledger.state;
    expect(faults).toEqual([]);
    expect(cookings.get("pudding-a-4")).toMatchObject({ costMinor: 107, batch: 3, sitting: "evening", atLeast: false });
    expect(told.map(({ eater, portions, costMinor }) => [eater, portions, costMinor])).toEqual([
      ["ada", 1, 27],
      [undefined, 1, 27],
    ]);
    expect(lots.get("pudding-a-4")).toMatchObject({ leftG: 760, leftMinor: 53, keeps: { ok: true, on: day(4) } });
  });

  test("boxes go into the freezer at their cost and keep as the dish says there; one too many does not", () => {
    const ledger = ledgerOf(boxedMilk, rice);
    const plates = [{ eater: "ada", portions: 1 }];
    const wish = {
      dish: frozenPudding,
      portions: 4,
      on: day(2),
      sitting: "evening",
      plates,
      boxes: [2, 2, 1],
    } as const;
    const { cooked, boxed, eaten } = cook(ledger.state, foods, wish, penFor(ledger));
    if (eaten === undefined) throw new Error("nothing was eaten");
    expect(boxed.map(({ part }) => (part?.massG ?? 0) / frozenPudding.portionMassG)).toEqual([2, 1]);
    ledger.add([cooked, ...boxed, eaten]);
    const { lots, faults } = ledger.state;
    expect(faults).toEqual([]);
    const [first] = boxed;
    const box = lots.get(first?.part?.lot ?? "");
    expect(box).toMatchObject({
      place: "freezer",
      keeps: { ok: true, on: day(62) },
      cooked: { dish: frozenPudding.id },
    });
    expect(lots.get(cooked.lot)?.leftG).toBe(0);
    const kitchen = toKitchen(fromKitchen(makeKitchen({})).kitchen, ledger.state, foods, day(20));
    expect(kitchen.putBy).toMatchObject([
      { dish: frozenPudding.id, portions: 2, place: "freezer", keepsUntil: day(62), cookedOn: day(2) },
      { dish: frozenPudding.id, portions: 1, place: "freezer" },
    ]);
    expect(kitchen.putBy[0]?.costMinor).toBe(box?.leftMinor);
  });

  test("what was really used counts where it differed: more, none at all, or another food", () => {
    const ledger = ledgerOf(boughtOf("m"), rice, beans);
    const really = { milk: 650, rice: 0, "beans-tinned": 100 };
    const { cooked } = cook(ledger.state, foods, { dish: pudding, portions: 2, on: day(1), really }, penFor(ledger));
    expect(cooked.uses).toEqual([
      { lot: "m", massG: 650, opens: true },
      { lot: "tin", massG: 100, opens: true, movesTo: "fridge" },
    ]);
    ledger.add([cooked]);
    expect(ledger.state.lots.get("tin")).toMatchObject({ place: "fridge", openedOn: day(1), leftG: 300 });
  });

  test("an alternative goes in where the stores have enough of it and not of the first", () => {
    const ledger = ledgerOf(boughtOf("m"), { ...rice, massG: 50 }, beans);
    const { cooked } = cook(ledger.state, foods, { dish: pudding, portions: 2, on: day(1) }, penFor(ledger));
    expect(cooked.uses.map(({ lot, massG }) => [lot, massG])).toEqual([
      ["m", 400],
      ["tin", 120],
    ]);
  });

  test("what is to be measured out is what the cooking takes, or what was chosen for it", () => {
    const ledger = ledgerOf(boughtOf("m"), { ...rice, massG: 50 }, beans);
    const wish = { dish: pudding, portions: 2, on: day(1) };
    const taken = (choose?: Choose) =>
      listTakenMakings(ledger.state, foods, { ...wish, choose }).map(({ making, chosen }) => [
        making.food,
        chosen.food,
      ]);
    expect(taken()).toEqual([
      ["milk", "milk"],
      ["rice", "beans-tinned"],
    ]);
    expect(taken((making) => making)).toEqual([
      ["milk", "milk"],
      ["rice", "rice"],
      ["beans-tinned", "beans-tinned"],
    ]);
  });

  test("what the stores lack is unbooked, and then the portions cost at least what was booked", () => {
    const ledger = ledgerOf(boughtOf("m", { massG: 100 }));
    const { cooked } = cook(ledger.state, foods, { dish: pudding, portions: 2, on: day(1) }, penFor(ledger));
    expect(cooked.uses).toEqual([{ lot: "m", massG: 100 }]);
    expect(cooked.unbooked).toEqual([
      { food: "milk", massG: 300 },
      { food: "rice", massG: 100 },
    ]);
    ledger.add([cooked]);
    expect(ledger.state.cookings.get(cooked.lot)).toMatchObject({ costMinor: 100, atLeast: true });
  });

  test("what goes in to taste is unbooked without a mass, and refuse leaves the lot with what is eaten", () => {
    const [first] = pudding.makings;
    if (first === undefined) throw new Error("the pudding has no making");
    const toTaste = { ...first, food: "rice", amount: "to-taste" as const };
    const peeled = new Map([...foods, ["milk", { ...milk, refusePct: 20 }]]);
    const ledger = ledgerOf(boughtOf("m"), rice);
    const dish = { ...pudding, makings: [first, toTaste] };
    const { cooked } = cook(ledger.state, peeled, { dish, portions: 2, on: day(1) }, penFor(ledger));
    expect(cooked.uses).toMatchObject([{ lot: "m", massG: 500 }]);
    expect(cooked.unbooked).toEqual([{ food: "rice" }]);
  });

  test("whatever the stores have, a cooking is possible and books what they give of the makings", () => {
    fc.assert(
      fc.property(deeds, skews, fc.double({ min: 0.1, max: 8, noNaN: true }), (list, skewMs, portions) => {
        const { ledgers, lastDay } = live(list, skewMs);
        const [ledger] = ledgers;
        const before = ledger.state.faults.length;
        const { cooked } = cook(ledger.state, foods, { dish: pudding, portions, on: lastDay }, penFor(ledger));
        ledger.add([cooked]);
        expect(ledger.state.faults).toHaveLength(before);
        const booked = cooked.uses.reduce((sum, { massG }) => sum + massG, 0);
        const unbooked = (cooked.unbooked ?? []).reduce((sum, { massG }) => sum + (massG ?? 0), 0);
        const chosen = cooked.uses.some(({ lot }) => ledger.state.lots.get(lot)?.food === "beans-tinned") ? 260 : 250;
        expect(booked + unbooked).toBeCloseTo(chosen * portions, 4);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test("no portions, or plates without a sitting, are a defect", () => {
    const ledger = ledgerOf();
    const wish = { dish: pudding, portions: 0, on: day(1) };
    expect(() => cook(ledger.state, foods, wish, penFor(ledger))).toThrow(RangeError);
    const plates = [{ portions: 1 }];
    expect(() => cook(ledger.state, foods, { ...wish, portions: 1, plates }, penFor(ledger))).toThrow(RangeError);
  });
});
