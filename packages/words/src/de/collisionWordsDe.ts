import type { CollisionWords } from "../CollisionWords.ts";

/** What is said of limits that can't all hold, in German. */
export const COLLISION_WORDS_DE: CollisionWords = {
  limits: {
    budget: "das Geld für die Woche",
    "hands-on": "die Minuten mit beiden Händen an den Tagen",
    elapsed: "die Minuten, die für die Mahlzeiten da sind",
    energy: "die Energie jedes Tages",
    bound: "die festen Grenzen der Aufnahme",
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
  collide: (limits) => `Diese stoßen zusammen: ${limits.join(" und ")}. Lässt man eines davon los, fand sich ein Plan.`,
  stands: (limit) =>
    `Kein Plan fand sich, der dies einhält, selbst wenn jede andere Grenze losgelassen wird: ${limit}.`,
  wholePacks: "Nur weil Packungen ganz gekauft werden: mit beliebig geteilten fand sich ein Plan.",
  noneAlone: "Keine einzelne Art von Grenze fand sich, die zu lockern für sich genug wäre.",
  possible: "Bei der Suche mit gelockerten Grenzen fand sich ein Plan, der alle einhält, wie sie sind.",
};
