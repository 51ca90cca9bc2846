import type { CodeWords } from "../../fault/FaultWords.ts";
import { quote } from "../../fault/valueWords.ts";
import { harmless } from "../../harmless.ts";

const needs =
  (what: string): CodeWords =>
  (_issue, value) => ({ says: `is ${value}, not ${what}`, remedy: `Write ${what}.` });

const limit =
  (word: string): CodeWords =>
  ({ expected }, value) => {
    const bound = expected.replace(/^[<>=]+/, "");
    return { says: `is ${value}, which is not ${word} ${bound}`, remedy: `Write a number ${word} ${bound}.` };
  };

/** A rule that says itself what it asks for. */
const needsMessage: CodeWords = ({ message, expected }, value) => {
  const asked = harmless(message ?? expected);
  return { says: `is ${value}, not ${asked}`, remedy: `Write ${asked}.` };
};

const unknownName =
  (what: string, remedy: string): CodeWords =>
  ({ received }) => ({ says: `names ${quote(received)}, which is no ${what}`, remedy });

/** Words by the code of an issue: those of the schema first, then those of what must fit together in a kitchen. */
export const CODE_WORDS_EN: Readonly<Record<string, CodeWords>> = {
  string: needs("a text in quotation marks"),
  number: needs("a number"),
  boolean: needs("true or false"),
  array: needs("a list in brackets"),
  record: needs("an object in braces"),
  integer: needs("a whole number"),
  safe_integer: needs("a whole number"),
  non_empty: (_issue, value) => ({ says: `is ${value}, which is empty`, remedy: "Fill it in." }),
  min_value: limit("at least"),
  max_value: limit("at most"),
  gt_value: limit("above"),
  lt_value: limit("below"),
  min_length: ({ expected, received }) => ({
    says: `has ${received} entries, and needs ${expected.replace(/^>=/, "")} or more`,
    remedy: "Add what is missing.",
  }),
  length: ({ expected, received }) => ({
    says: `has ${received} entries instead of ${expected}`,
    remedy: `Give it ${expected} entries.`,
  }),
  picklist: ({ expected }, value) => {
    const choices = expected.match(/"[^"]*"/g) ?? [];
    const list =
      choices.length > 30 ? `${choices.slice(0, 8).join(", ")} and ${choices.length - 8} more` : choices.join(", ");
    return { says: `is ${value}, which is none of its values`, remedy: `Write one of ${list}.` };
  },
  literal: ({ expected }, value) => ({ says: `is ${value}`, remedy: `Write ${expected}.` }),
  regex: needsMessage,
  check: needsMessage,
  partial_check: ({ message, expected }, value) => ({
    says: `is ${value}`,
    remedy: `It must be ${harmless(message ?? expected)}.`,
  }),
  "name-twice": ({ received }) => ({
    says: `is ${quote(received)}, which stands there before`,
    remedy: "Give each its own.",
  }),
  "food-unknown": unknownName("food of the food table", "Write the id of a food."),
  "shop-unknown": unknownName("shop of this kitchen", 'Write the id of a shop in "shops", or add the shop.'),
  "eater-unknown": unknownName("eater of this kitchen", 'Write the id of an eater in "eaters", or add the eater.'),
  "lot-unknown": unknownName("lot of the stores", 'Write the id of a lot in "stores" or "putBy".'),
  "dish-unknown": unknownName("dish", 'Write the id of a starter dish or of one in "dishes".'),
  "sitting-kind-unknown": ({ received, expected }) => ({
    says: `is ${quote(received)}, which is no kind of sitting`,
    remedy: `Write one of ${expected}.`,
  }),
  "eater-twice": ({ received, expected }) => ({
    says: `seats ${quote(received)} a second time: there can be only ${expected}`,
    remedy: "Take the eater out of one of the two.",
  }),
  "energy-share-missing": () => ({
    says: "is missing, though there are sittings of this kind",
    remedy: "Give its share of the day's energy in percent.",
  }),
  "wish-no-sitting": () => ({
    says: "speaks of no sitting of this kitchen",
    remedy: 'Check "on", "at" and "eaters" of the wish against "sittings".',
  }),
  "wish-beyond": ({ received, expected }) => ({
    says: `is ${received}, and can be ${expected}`,
    remedy: "Wish for fewer, or for more days.",
  }),
  "wish-unmet": () => ({
    says: "means no dish that could be had at its sittings",
    remedy: "Mean other dishes, or add packs, kit or sittings that let one be cooked.",
  }),
  "not-kept-there": (_issue, value) => ({
    says: `is ${value}, where the dish does not keep or for which the kit has no room`,
    remedy: "Write the other place, or the room that the kit has.",
  }),
  "density-unknown": (_issue, value) => ({
    says: `is ${value}, a volume of a food whose density is not known`,
    remedy: "Give the mass in g instead.",
  }),
  "pieces-unknown": (_issue, value) => ({
    says: `is ${value}, in pieces of a food whose piece weight is not known`,
    remedy: "Give the mass in g instead.",
  }),
  "size-unknown": ({ expected }, value) => ({
    says: `is ${value}, a size this food is not known in`,
    remedy: `Use ${expected}.`,
  }),
  "main-unknown": ({ received }) => ({
    says: `is ${quote(received)}, which is none of the dish's makings`,
    remedy: "Write the food of one of its makings.",
  }),
  "step-twice": ({ received }) => ({
    says: `is ${quote(received)}, as another step's`,
    remedy: "Give each step its own.",
  }),
  "step-unknown": unknownName("step of this dish", "Write the id of a step of the method."),
  "food-unlisted": unknownName("making of this dish", "Add it to the makings, or take it out of the step."),
  "step-cyclic": ({ received }) => ({
    says: `makes the step ${quote(received)} wait for itself`,
    remedy: 'Take one of the steps out of "after".',
  }),
  "version-newer": ({ received }) => ({
    says: `is ${received}: a newer Halfloaf wrote this`,
    remedy: "Get a newer Halfloaf; changing the number would not make it readable.",
  }),
};
