import fc from "fast-check";
import { expect, test } from "vitest";
import type { CalendarWords } from "../words/CalendarWords.ts";
import { fromCalendarTemplates, toCalendarTemplates } from "./calendarTemplates.ts";

const WORDS: CalendarWords = {
  name: (kitchen) => `${kitchen}: pots and bags`,
  cook: (dishes) => `On the ring: ${dishes}`,
  cookDish: (dish, portions, minutes) => `${minutes} for ${portions} of ${dish}`,
  trip: (shop) => `To ${shop}`,
  tripLine: (count, label, price) => `${count} ${label} ${price}`,
  tripTill: (till) => `Pay ${till}`,
  begin: (kind, what, dish) => `${kind} ${what}, ${dish}`,
  useUp: (food, mass) => `${mass} ${food} today`,
  useUpNote: "Look at the label.",
};

test("Words that went through templates say the same of every name, also of one with braces or signs of its own", () => {
  const again = fromCalendarTemplates(toCalendarTemplates(WORDS));
  const name = fc.oneof(fc.string(), fc.constantFrom("{dish}", "$&", "{portions} $1", "{__proto__}"));
  fc.assert(
    fc.property(name, name, name, fc.constantFrom("thaw", "soak", "ahead" as const), (a, b, c, kind) => {
      for (const word of ["name", "cook", "trip", "tripTill"] as const) expect(again[word](a)).toBe(WORDS[word](a));
      expect(again.cookDish(a, b, c)).toBe(WORDS.cookDish(a, b, c));
      expect(again.tripLine(a, b, c)).toBe(WORDS.tripLine(a, b, c));
      expect(again.begin(kind as "thaw", a, b)).toBe(WORDS.begin(kind as "thaw", a, b));
      expect(again.useUp(a, b)).toBe(WORDS.useUp(a, b));
    }),
  );
  expect(again.useUpNote).toBe(WORDS.useUpNote);
});

test("A name in braces that no word has stays as it is written", () => {
  const templates = { ...toCalendarTemplates(WORDS), cook: "{dishes} {constructor} {kitchen}" };
  expect(fromCalendarTemplates(templates).cook("Soup")).toBe("Soup {constructor} {kitchen}");
});
