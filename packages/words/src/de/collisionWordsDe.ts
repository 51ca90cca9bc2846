import type { CollisionWords } from "../CollisionWords.ts";

/** What is said of limits that can't all hold, in German. */
export const COLLISION_WORDS_DE: CollisionWords = {
  limits: {
    budget: "das Geld für die Woche",
    "hands-on": "die Minuten mit beiden Händen an den Tagen",
    elapsed: "die Minuten, die für die Mahlzeiten da sind",
    energy: "die Energie jedes Tages",
    bound: "die festen Grenzen der Zufuhr",
    uses: "wie oft es ein Gericht geben darf",
    main: "wie oft es eine Hauptzutat geben darf",
    distinct: "die verschiedenen Gerichte am Abend",
    wish: "was gewünscht ist",
    trips: "die Zahl der Gänge",
    pot: "die Größe des Topfs",
    carry: "was zu tragen ist",
    fridge: "der Platz im Kühlschrank",
    freezer: "der Platz im Gefrierfach",
    "must-use": "was aufgebraucht werden muss",
  },
  collide: (limits) =>
    `Diese vertragen sich nicht: ${limits.join(" und ")}. Fällt eines davon weg, gibt es einen Plan.`,
  stands: (limit) => `Es fand sich kein Plan, der dies einhält, selbst wenn jede andere Grenze wegfällt: ${limit}.`,
  wholePacks: "Es liegt nur daran, dass Packungen ganz gekauft werden: mit beliebig geteilten fand sich ein Plan.",
  noneAlone: "Es fand sich keine einzelne Art von Grenze, deren Lockerung allein genügt.",
  possible: "Bei der Suche mit gelockerten Grenzen fand sich ein Plan, der alle einhält, wie sie sind.",
};
