import { expect, test } from "vitest";
import { foodName, namesOf } from "./foodName.ts";

const courgette = {
  names: { british: ["courgette"], american: ["zucchini", "summer squash"], german: ["Zucchini", "Zucchetti"] },
};
const kelp = { names: { british: ["kelp crackers"], american: ["kelp chips"] } };

test("a food is shown by its first name in the language, in English of the kitchen's kind", () => {
  expect(foodName(courgette, "british")).toBe("courgette");
  expect(foodName(courgette, "american", "en-GB")).toBe("zucchini");
  expect([foodName(courgette, "british", "de"), foodName(courgette, "american", "de-AT")]).toEqual([
    "Zucchini",
    "Zucchini",
  ]);
});

test("a food without a name in the language is shown by its English one, and no food by none", () => {
  expect(foodName(kelp, "american", "de")).toBe("kelp chips");
  expect(foodName(undefined, "british", "de")).toBe(undefined);
});

test("every name is among the names of a food once", () => {
  expect(namesOf(courgette)).toEqual(["courgette", "zucchini", "summer squash", "Zucchini", "Zucchetti"]);
  expect(namesOf(kelp)).toEqual(["kelp crackers", "kelp chips"]);
});
