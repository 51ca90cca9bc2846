/** What belongs under a key, in German. */
export const HINTS_DE: Readonly<Record<string, string>> = {
  content: 'was in der Packung ist, als {"massG": 500}, {"pieces": 6} oder {"volumeMl": 1000}',
  priceMinor: "den Preis in ganzen kleinsten Einheiten, 79 für 0,79",
  amount: 'wie viel, als {"value": 200, "unit": "g"} oder "to-taste"',
  minutes: 'Minuten, als {"fixed": 5, "perPortion": 1}',
  startsOn: "den ersten Tag, der geplant wird, als JJJJ-MM-TT",
  seen: 'wann und wo der Preis gesehen wurde, als {"on": "2026-11-28", "at": "am Regal"}, oder stattdessen "estimate": true',
  trip: 'was ein Gang kostet, als {"costMinor": 0, "minutes": 20}',
  kit: "womit gekocht wird: Kochstellen, Pfannen, Töpfe und so weiter",
  limits: "die Grenzen einer Woche, mindestens handsOnMinutes und tripsPerWeek",
  worth: 'was eine Minute wert ist, als {"minuteMinor": 3}',
  energySharePct: 'Anteile am Tag, als {"morning": 25, "midday": 35, "evening": 40}',
  authorities: 'wessen Werte gelten, als {"intake": "efsa"} oder {"intake": "nasem"}',
  keeps: 'wie lange eine Portion hält, als {"fridgeDays": 2, "authority": "wer das sagt"}',
  openDays: "Wochentage von Montag = 1 bis Sonntag = 7",
  on: "Wochentage von Montag = 1 bis Sonntag = 7",
  format: '"halfloaf-kitchen"',
  version: "1",
};

/** What to do about a wrong value where the key knows, in German. */
export const REMEDIES_DE: Readonly<Record<string, string>> = {
  priceMinor: "Schreib den Preis in ganzen kleinsten Einheiten ab 0: 79 für 0,79.",
  costMinor: "Schreib die Kosten in ganzen kleinsten Einheiten ab 0: 79 für 0,79.",
  budgetMinor: "Schreib das Geld in ganzen kleinsten Einheiten ab 0: 6200 für 62,00.",
  massG: "Schreib die Masse in g, über 0.",
  volumeMl: "Schreib das Volumen in mL, über 0.",
  id: "Schreib kleine Wörter mit Bindestrichen, jeden Namen einmal.",
  startsOn: "Schreib einen Tag des Kalenders als JJJJ-MM-TT.",
  boughtOn: "Schreib einen Tag des Kalenders als JJJJ-MM-TT, nicht nach den Tagen, die darauf folgen.",
  openedOn:
    "Schreib einen Tag des Kalenders als JJJJ-MM-TT, ab dem Tag des Kaufs; lass es weg, wo nichts geöffnet wurde.",
  useBy: "Schreib einen Tag des Kalenders als JJJJ-MM-TT.",
  bestBefore: "Schreib einen Tag des Kalenders als JJJJ-MM-TT.",
  until: "Schreib einen Tag des Kalenders als JJJJ-MM-TT.",
  handsOnMinutes: "Schreib eine Zahl von Minuten ab 0, oder sieben in eckigen Klammern, Montag zuerst.",
  currency: "Schreib ein Kürzel nach ISO 4217 in Großbuchstaben, etwa EUR, GBP oder USD.",
  seen: 'Sag entweder, wo und wann der Preis gesehen wurde, oder dass er geschätzt ist ("estimate"), nicht beides.',
  offer: "Die Packungen zusammen können nicht mehr kosten als einzeln.",
};
