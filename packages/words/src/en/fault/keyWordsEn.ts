/** What belongs under a key, for who has left it out or written something else there. */
export const HINTS_EN: Readonly<Record<string, string>> = {
  content: 'what the pack holds, as {"massG": 500}, {"pieces": 6} or {"volumeMl": 1000}',
  priceMinor: "the price in whole minor units, 79 for 0.79",
  amount: 'how much, as {"value": 200, "unit": "g"} or "to-taste"',
  minutes: 'minutes, as {"fixed": 5, "perPortion": 1}',
  startsOn: "the first day to plan, as YYYY-MM-DD",
  seen: 'when and where the price was seen, as {"on": "2026-11-28", "at": "the shelf"}, or "estimate": true instead',
  trip: 'what one visit takes, as {"costMinor": 0, "minutes": 20}',
  kit: "what there is to cook with: rings, pans, pots and the like",
  limits: "the limits of a week, with handsOnMinutes and tripsPerWeek at least",
  worth: 'what a minute is worth, as {"minuteMinor": 3}',
  energySharePct: 'shares of the day, as {"morning": 25, "midday": 35, "evening": 40}',
  authorities: 'whose figures hold, as {"intake": "efsa"} or {"intake": "nasem"}',
  keeps: 'how long a portion keeps, as {"fridgeDays": 2, "authority": "who says so"}',
  openDays: "weekdays from Monday = 1 to Sunday = 7",
  on: "weekdays from Monday = 1 to Sunday = 7",
  format: '"halfloaf-kitchen"',
  version: "1",
};

/** What to do about a wrong value, where the key knows better than the kind of fault. */
export const REMEDIES_EN: Readonly<Record<string, string>> = {
  priceMinor: "Write the price in whole minor units from 0 on: 79 for 0.79.",
  costMinor: "Write the cost in whole minor units from 0 on: 79 for 0.79.",
  budgetMinor: "Write the budget in whole minor units from 0 on: 6200 for 62.00.",
  massG: "Write the mass in g, above 0.",
  volumeMl: "Write the volume in mL, above 0.",
  id: "Write lower-case words joined by hyphens, each id once.",
  startsOn: "Write a day of the calendar as YYYY-MM-DD.",
  boughtOn: "Write a day of the calendar as YYYY-MM-DD, not after the days that follow from it.",
  openedOn:
    "Write a day of the calendar as YYYY-MM-DD, from the day of buying on; leave it out where nothing was opened.",
  useBy: "Write a day of the calendar as YYYY-MM-DD.",
  bestBefore: "Write a day of the calendar as YYYY-MM-DD.",
  until: "Write a day of the calendar as YYYY-MM-DD.",
  handsOnMinutes: "Write one number of minutes from 0 on, or seven in brackets, Monday first.",
  currency: "Write a code of ISO 4217 in capitals, such as EUR, GBP or USD.",
  seen: 'Say either where and when the price was seen or that it is an "estimate", and not both.',
  offer: "The packs together can cost no more than one by one.",
};
