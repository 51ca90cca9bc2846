import type { firstEn } from "./firstEn.ts";

/** Texts of the first use in German. */
export const firstDe: typeof firstEn = {
  first: {
    steps: ["Wer isst", "Ausstattung", "Geld", "Zeit"],
    step: (at: number, of: number) => `Schritt ${at} von ${of}`,
    howMany: "Wie viele essen hier?",
    whoNote:
      "Alter, Geschlecht, Größe, Gewicht und Bewegung sagen nur, wie viel Energie jemand braucht, damit die Teller groß genug sind. Sie bleiben auf diesem Gerät, und nichts davon ist ein Ziel. Vorgegeben sind übliche Werte; setz deine eigenen ein.",
    kitNote: "Geplant wird nur, was sich damit kochen lässt.",
    kits: {
      small: ["Eine Kochstelle", "ein Topf, eine Pfanne, Wasserkocher, kleiner Kühlschrank"],
      middle: ["Zwei Kochstellen", "Mikrowelle, Wasserkocher, Kühlschrank mit Fach"],
      full: ["Herd mit Ofen", "vier Kochstellen, Kühlschrank, Gefrierfach, Mixer"],
    },
    kitDetails: "Genauer",
    money: "Geld für Essen in einer Woche",
    moneyNote:
      "Packungen und Preise stammen von erfundenen Läden, alle als Schätzung, bis du deine am Regal siehst. In anderen Währungen bleiben die Zahlen, wie sie sind.",
    currency: "Währung",
    cupboard: "Was schon im Schrank ist",
    cupboardNote: "Kreuz an, was da ist; die Mengen sind geschätzt, bis du zählst.",
    timeNote: "Minuten für jede Mahlzeit, vom ersten Handgriff bis zum Teller.",
    eatsHere: "Kommt aus dieser Küche",
    minutesWeek: "Minuten, Montag bis Freitag",
    minutesEnd: "Minuten, Samstag und Sonntag",
    packedWeek: "Montag bis Freitag mitgenommen",
    done: "Küche anlegen und planen",
    making: "Die Küche wird angelegt …",
    failed: "Die Küche ließ sich nicht anlegen. Vielleicht verweigert der Browser den Speicher.",
    myKitchen: "Unsere Küche",
    person: (at: number) => `Person ${at}`,
    shops: ["Der große Laden", "Der Laden an der Ecke"],
  },
};
