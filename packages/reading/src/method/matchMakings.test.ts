import { expect, test } from "vitest";
import { matchMakings } from "./matchMakings.ts";

const MAKINGS = [
  "spring onions",
  "onions",
  "olive oil",
  "tinned tomatoes",
  "kidney beans",
  "black beans",
  "cheddar cheese",
].map((name) => ({ names: [name] }));

const CASES: [string, number[]][] = [
  ["Slice the spring onion.", [0]],
  ["Chop the onion and the spring onions.", [0, 1]],
  ["Fry it in the oil.", [2]],
  ["Stir in the tomatoes and both kinds of beans.", [3, 4, 5]],
  ["Add the kidney beans.", [4]],
  ["Grate the cheddar.", [6]],
  ["Wash your hands.", []],
];

test.each(CASES)("%s", (text, found) => {
  expect(matchMakings(text, MAKINGS)).toEqual(found);
});

test("all ingredients are all, the remaining those not used, those of a part the ones under its heading", () => {
  const headed = [
    { names: ["oil"], heading: "For the dressing" },
    { names: ["lemon"], heading: "For the dressing" },
    { names: ["leek"] },
  ];
  expect(matchMakings("Mix all the ingredients.", headed)).toEqual([0, 1, 2]);
  expect(matchMakings("Add the remaining ingredients.", headed, new Set([0]))).toEqual([1, 2]);
  expect(matchMakings("Whisk the dressing ingredients.", headed)).toEqual([0, 1]);
});
