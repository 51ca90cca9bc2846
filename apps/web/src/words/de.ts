import type { Words } from "./en.ts";

/** Alle Texte der Oberfläche auf Deutsch. */
export const de: Words = {
  shell: {
    skip: "Zur Seite springen",
    ways: "Ansichten",
    more: "Mehr",
    loading: "Einen Augenblick …",
    lost: "Diese Ansicht gibt es nicht.",
    toToday: "Zu Heute",
  },
  screens: {
    today: "Heute",
    menu: "Speiseplan",
    buying: "Einkauf",
    work: "Ablauf",
    workShort: "Ablauf",
    stores: "Vorräte",
    dishes: "Gerichte",
    prices: "Preise",
    accounts: "Abrechnung",
    kitchen: "Küche",
  },
  opening: {
    noKitchen: "Auf diesem Gerät ist noch keine Küche",
    missing: "Der Browser hat diese Küche gelöscht",
    missingRemedy: "Hol sie aus einer Sicherung zurück oder von einem Gerät, das sie teilt.",
    newer: "Diese Küche hat ein neueres Halfloaf geschrieben",
    newerRemedy: "Lade die Seite neu, um das neuere Programm zu bekommen. Geändert wurde nichts.",
    unopenable: "Diese Küche lässt sich nicht öffnen",
    unopenableRemedy: "Schließ andere Tabs von Halfloaf und lade die Seite neu.",
    notKept: "Die letzte Änderung ist nicht gespeichert",
    full: "Auf dem Gerät ist kein Platz mehr. Schaff Platz und versuch es noch einmal; lass die Seite so lange offen.",
    tryAgain: "Noch einmal",
  },
  first: {
    title: "Eine eigene Küche",
    promise:
      "Halfloaf plant das Essen aus ganzen Packungen, legt den Ablauf beim Kochen fest und rechnet aus, was alles wirklich kostet. Alles bleibt auf diesem Gerät.",
    demo: "In einer Probeküche umsehen",
    make: "Meine Küche anlegen",
    restore: "Sicherung zurückholen",
    demos: {
      "port-ansel": "Zwei in einer Wohnung, zwei Kochstellen, ein kleiner Kühlschrank",
      "one-ring": "Eine Person, eine Kochstelle, kein Ofen",
      "six-flat": "Sechs in einer Wohnung, eine volle Küche",
    },
  },
  menu: {
    none: "Für diese Tage gibt es noch keinen Plan.",
    plan: "Tage planen",
  },
};
