import { expect, test } from "vitest";
import { FAULT_WORDS_EN } from "../../en/fault/faultWordsEn.ts";
import { tellIssue } from "../../fault/tellIssue.ts";
import { FAULT_WORDS_DE } from "./faultWordsDe.ts";

test("every code, hint and remedy that is said in English is said in German", () => {
  for (const part of ["codes", "hints", "remedies"] as const)
    expect(Object.keys(FAULT_WORDS_DE[part]).sort()).toEqual(Object.keys(FAULT_WORDS_EN[part]).sort());
});

test("a fault names the thing, its value and the remedy in either language", () => {
  const raw = { packs: [{ id: "oats-500", priceMinor: -79 }] };
  const issue = { code: "min_value", path: ["packs", 0, "priceMinor"], expected: ">=0", received: "-79" };
  expect(tellIssue(issue, raw, FAULT_WORDS_EN)).toMatchObject({
    sentence: '"priceMinor" of the pack "oats-500" is -79, which is not at least 0.',
    remedy: "Write the price in whole minor units from 0 on: 79 for 0.79.",
  });
  expect(tellIssue(issue, raw, FAULT_WORDS_DE)).toMatchObject({
    sentence: '"priceMinor" bei Packung "oats-500" ist -79, was nicht mindestens 0 ist.',
    remedy: "Schreib den Preis in ganzen kleinsten Einheiten ab 0: 79 für 0,79.",
  });
});
