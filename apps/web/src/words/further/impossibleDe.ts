import { COLLISION_WORDS_DE } from "@halfloaf/words/de/collisions";
import type { impossibleEn } from "./impossibleEn.ts";

/** Texts of a week that can't keep every limit in German. */
export const impossibleDe: typeof impossibleEn = {
  impossible: {
    title: "Kein Speiseplan hält alle Grenzen ein",
    asking: "Es wird gesucht, was im Weg steht …",
    gapTitle: "Für diese Mahlzeiten passt kein Gericht",
    gap: (at: string) => `${at}: kein Gericht bleibt übrig. Erlaube Hitze, mehr Minuten oder mehr Gerichte.`,
    gapTrips: (at) => `${at}: aus den Vorräten wird kein Gericht, und was gekauft wird, kommt erst danach nach Hause.`,
    putDown: "Ist etwas im Haus? Trag es zuerst ein:",
    goEarlier: (shop, sitting) => `Vor „${sitting}“ zu ${shop} gehen, und planen`,
    gapMinutes: (at: string, minutes: string) => `${at}: mit ${minutes} mehr gäbe es eines.`,
    ways: "Der kleinste gefundene Schritt, der genügt",
    way: (at: number) => `Weg ${at}`,
    otherwise: (limits: string) => `Und von Hand: ${limits}.`,
    apply: "So einstellen und planen",
    from: (now: string) => `jetzt ${now}`,
    noWay: "Es fand sich kein kleiner Schritt, der genügt. Lockere mehrere Grenzen unter Küche.",
    limitsNote:
      "Das stellt die Küche um, auch für die Wochen danach. Sonst ändert sich nichts, bevor du die Woche nimmst.",
    collision: COLLISION_WORDS_DE,
    limits: {
      budget: "Geld für eine Woche",
      "hands-on": "Minuten mit beiden Händen",
      elapsed: "Minuten zur Verfügung",
      energy: "Die Energie eines Tages darf abweichen um (%)",
      bound: "Grenzen der Zufuhr",
      uses: "Dasselbe Gericht in der Woche",
      main: "Dieselbe Hauptzutat in der Woche",
      distinct: "Verschiedene Abendgerichte",
      wish: "Wünsche",
      trips: "Gänge in der Woche",
      pot: "Portionen im Topf",
      carry: "Zu tragen (kg)",
      fridge: "Kühlschrank (Liter)",
      freezer: "Gefrierfach (Liter)",
      "must-use": "Was aufgebraucht werden muss",
    },
  },
};
