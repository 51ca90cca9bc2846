import { expect, test } from "vitest";
import { findNearest } from "./nearest.ts";

const DISHES = ["red-lentil-soup", "leek-soup", "oat-pan-cakes", "lentil-pasta"];

test("a slip of the pen finds the word", () => {
  expect(findNearest("red-lentl-soup", DISHES, 1)).toEqual(["red-lentil-soup"]);
});

test("words in another order are found too", () => {
  expect(findNearest("soup leek", DISHES, 1)).toEqual(["leek-soup"]);
});

test("whole words come before words that only begin alike", () => {
  const foods = ["buttermilk", "peanut-butter", "butter-salted", "butternut-squash"];
  expect(findNearest("butter", foods, 3)).toEqual(["butter-salted", "peanut-butter", "buttermilk"]);
});

test("no more than asked, and none that is nothing like it", () => {
  expect(findNearest("lentil soup", DISHES, 2)).toHaveLength(2);
  expect(findNearest("zzz", DISHES, 3)).toEqual([]);
  expect(findNearest("zzz", DISHES, 3, 0)).toHaveLength(3);
});
