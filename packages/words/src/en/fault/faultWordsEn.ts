import type { FaultWords } from "../../fault/FaultWords.ts";
import { CODE_WORDS_EN } from "./codeWordsEn.ts";
import { HINTS_EN, REMEDIES_EN } from "./keyWordsEn.ts";

/** What is wrong with a kitchen's file, in English. */
export const FAULT_WORDS_EN: FaultWords = {
  values: { nothing: "nothing", listOf: (count) => `a list of ${count}` },
  nouns: {
    eaters: "eater",
    shops: "shop",
    packs: "pack",
    stores: "lot",
    dishes: "dish",
    sittings: "sitting",
    ratings: "rating",
    wishes: "wish",
    putBy: "lot put by",
  },
  kitchen: "The kitchen",
  thing: (noun, name) => `The ${noun} ${name}`,
  thingAt: (noun, position, list) => `The ${noun} number ${position} in ${list}`,
  of: (path, thing) => `${path} of the ${thing.replace(/^The /, "")}`,
  sentence: (subject, says) => `${subject} ${says}.`,
  isThat: (value) => `is ${value}`,
  asked: (expected) => `Asked for is ${expected}.`,
  strangeKey: (key) => ({ says: `has a key ${key} that is not known`, remedy: "Correct its spelling or remove it." }),
  missingKey: (key, hint) => ({
    says: `has no ${key}`,
    remedy: `Add it${hint === undefined ? "" : `: ${hint}`}.`,
  }),
  noObject: (value, hint) => ({
    says: `is ${value}, not an object in braces`,
    remedy: hint === undefined ? "Write its keys and values in braces." : `Write ${hint}.`,
  }),
  near: (names) => `Near to it: ${names}.`,
  codes: CODE_WORDS_EN,
  shapes: {
    unit: (unit, units) => ({ says: `has the unit ${unit}, which is not known`, remedy: `Write one of ${units}.` }),
    amount: (value) => ({
      says: `is ${value}, which is no amount`,
      remedy:
        'Write {"value": 200, "unit": "g"}, {"from": 2, "to": 3, "unit": "piece"} or "to-taste", numbers above 0.',
    }),
    content: (value) => ({
      says: `is ${value}, which gives no size of the pack`,
      remedy: 'Say what the pack holds in one way: {"massG": 500}, {"pieces": 6} or {"volumeMl": 1000}.',
    }),
    handsOnMinutes: (value) => ({
      says: `is ${value}`,
      remedy: "Write one number of minutes from 0 on, or seven in brackets, Monday first.",
    }),
  },
  hints: HINTS_EN,
  remedies: REMEDIES_EN,
};
