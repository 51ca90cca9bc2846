import type { CalendarManner } from "@halfloaf/keep/sync";
import { type CalendarWords, toCalendarTemplates } from "halfloaf/sheet";

const WORDS: CalendarWords = {
  name: (kitchen) => `${kitchen}: pots and bags`,
  cook: (dishes) => `On the ring: ${dishes}`,
  cookDish: (dish, portions, minutes) => `${dish}, ${portions}, ${minutes}`,
  trip: (shop) => `To ${shop}`,
  tripLine: (count, label, price) => `${count} ${label} ${price}`,
  tripTill: (till) => `Pay ${till}`,
  begin: (kind, what, dish) => `${kind} ${what}, ${dish}`,
  useUp: (food, mass) => `${mass} ${food} today`,
  useUpNote: "Look at the label.",
};
/** How a calendar under test is to be written. */
export const MANNER: CalendarManner = {
  language: "en-GB",
  zone: "Europe/Berlin",
  words: { ...toCalendarTemplates(WORDS) },
};
