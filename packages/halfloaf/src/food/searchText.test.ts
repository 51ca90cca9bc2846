import fc from "fast-check";
import { expect, test } from "vitest";
import { isFound, isSameText, toSearchText } from "./searchText.ts";

test.each(["Möhre", "MÖHRE", "moehre", "Moehre", "mohre", "mo\u0308hre", "öhr"])("a carrot is found by %s", (asked) => {
  expect(isFound(toSearchText("gelbe Möhre"), asked)).toBe(true);
});

test.each(["Weißkohl", "Weisskohl", "WEISSKOHL", "weiß", "kohl weiss"])("white cabbage is found by %s", (asked) => {
  expect(isFound(toSearchText("Weißkohl"), asked)).toBe(true);
});

test("all words must be found, and nothing asked is found everywhere", () => {
  expect(isFound(toSearchText("rote Zwiebel"), "rote Beete")).toBe(false);
  expect(isFound(toSearchText("crème fraîche"), "creme fraiche")).toBe(true);
  expect(isFound(toSearchText("rote Zwiebel"), "")).toBe(true);
});

test("a text is found by each of its parts, and is the same as itself, however it is written", () => {
  const text = fc.string({ unit: fc.constantFrom(..."aeiouäöüßéÄÖÜ strz") });
  fc.assert(
    fc.property(text, fc.nat(), fc.nat(), (name, from, length) => {
      const part = name.slice(from % (name.length + 1)).slice(0, length % 9);
      expect(isFound(toSearchText(name), part.trim())).toBe(true);
      expect(isFound(toSearchText(name), part.toUpperCase().trim())).toBe(true);
      expect(isSameText(name, name.toLowerCase().replaceAll("ß", "ss"))).toBe(true);
    }),
    { endOnFailure: true },
  );
});
