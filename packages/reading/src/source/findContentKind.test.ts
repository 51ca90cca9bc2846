import { expect, test } from "vitest";
import { findContentKind } from "./findContentKind.ts";

test.each(["\n", " ", "1.00 ", "1.00\n", "* ", "<", "{"])("runs of %j cost no more than their length", (piece) => {
  const run = piece.repeat(60_000 / piece.length);
  // Whatever it is taken for, it is taken for it at once: a test that hangs would be ended by the runner.
  for (const text of [run, `Oats 0.85${run}x`, `${run}total 1.00`]) expect(() => findContentKind(text)).not.toThrow();
});

test.each([
  ["200 g leek\n2 tbsp oil\n1 onion", "makings"],
  ["Soup\nServes 2\n200 g leek\n2 tbsp oil\n\nMethod\nFry the leek in the oil for 5 minutes.\nServe hot.", "dish"],
  ["Tally Store\nOats 0.85\nRice 1.59\nTOTAL 2.44", "receipt"],
  ["<!doctype html><title>Soup</title>", "page"],
  ['[{"@type": "Recipe"}]', "page"],
  ['"fdc_id","data_type","description"', "download-csv"],
  ['{ "FoundationFoods": [', "download-json"],
  ['{"name": "x"}', undefined],
  ["The quay was grey.\nNobody came.", undefined],
  ["", undefined],
] as const)("%j is %s", (text, kind) => {
  expect(findContentKind(text)).toBe(kind);
});
