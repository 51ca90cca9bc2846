import type { CalendarWords } from "halfloaf/sheet";

const BEGIN = { thaw: "Thaw", soak: "Soak", ahead: "Begin" } as const;

/** The calendar in English. */
export const CALENDAR_WORDS: CalendarWords = {
  name: (kitchen) => `${kitchen}: cooking and shopping`,
  cook: (dishes) => `Cook ${dishes}`,
  // A server fills in the number as a text, so no form of a word may hang on it.
  cookDish: (dish, portions, minutes) => `${dish} (portions: ${portions}), ready in ${minutes}`,
  trip: (shop) => `Shop at ${shop}`,
  tripLine: (count, label, price) => `${count} x ${label}, ${price}`,
  tripTill: (till) => `Till ${till}`,
  begin: (kind, what, dish) => `${BEGIN[kind]} ${what} for ${dish}`,
  useUp: (food, mass) => `Last day: ${food}, ${mass}`,
  useUpNote: "The label on the pack comes first.",
};
