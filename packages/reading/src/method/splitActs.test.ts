import fc from "fast-check";
import { expect, test } from "vitest";
import { splitActs } from "./splitActs.ts";

const ACTS: [string, (readonly [string | undefined, string])[]][] = [
  [
    "Chop the onion, then fry it in the oil for 5 minutes until soft; add the garlic and cook 1 minute more.",
    [
      ["cut", "Chop the onion"],
      ["fry", "fry it in the oil for 5 minutes until soft"],
      [undefined, "add the garlic and cook 1 minute more."],
    ],
  ],
  [
    "Peel and chop the onion, slice the leek and dice the carrot.",
    [["cut", "Peel and chop the onion, slice the leek and dice the carrot."]],
  ],
  [
    "Preheat the oven to 180C. Mix the flour and sugar and bake for 20 mins. until golden.",
    [
      ["bake", "Preheat the oven to 180C."],
      ["mix", "Mix the flour and sugar"],
      ["bake", "bake for 20 mins. until golden."],
    ],
  ],
  ["Cook until soft and brown.", [[undefined, "Cook until soft and brown."]]],
  ["Boil the kettle.", [["heat-water", "Boil the kettle."]]],
  ["Meanwhile, chop the parsley.", [["cut", "Meanwhile, chop the parsley."]]],
  ["Bring a large pan of salted water to the boil", [["heat-water", "Bring a large pan of salted water to the boil"]]],
];

test.each(ACTS)("%s", (text, acts) => {
  expect(splitActs(text).map((act) => [act.kind, act.text])).toEqual(acts);
});

test("acts stand in the text in their order, apart from each other, and hold all of its letters but joints", () => {
  const word = fc.constantFrom(
    "chop",
    "fry",
    "and",
    "then",
    "the onion",
    "for 5 minutes.",
    ",",
    "Until",
    "add",
    ";",
    "Meanwhile",
    "bake",
    "\n",
    "1.5 kg",
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 30 }), (words) => {
      const text = words.join(" ");
      let end = 0;
      const left: string[] = [];
      for (const act of splitActs(text)) {
        expect(text.slice(act.start, act.end)).toBe(act.text);
        expect(act.start).toBeGreaterThanOrEqual(end);
        left.push(text.slice(end, act.start));
        end = act.end;
      }
      const outside = `${left.join(" ")} ${text.slice(end)}`.replace(/\b(?:and|then)\b|1\.5|[^a-z]/gi, "");
      expect(outside).toBe("");
    }),
  );
});
