import { toCounted } from "@halfloaf/words/toCounted";
import type { mendedEn } from "./mendedEn.ts";

const counted = toCounted("de");

/** Texts of a week that is planned again in German. */
export const mendedDe: typeof mendedEn = {
  mended: {
    ask: "Den Plan folgen lassen",
    busy: "Die ganze Woche wird angesehen …",
    failed: "Die Woche ließ sich nicht neu planen. Die Liste bleibt, wie sie ist.",
    none: "So hält kein naher Speiseplan alle Grenzen ein. Speiseplan und Liste bleiben, wie sie sind, bis du einen anderen nimmst.",
    unfit: "Diese Woche passt nicht mehr zur Küche. Plan unter Speiseplan neu.",
    same: "Speiseplan und Liste bleiben, wie sie sind.",
    sameDishes: "Alle Gerichte bleiben, nur der Einkauf ändert sich.",
    otherDishes: (count) =>
      counted(count, { one: "Ein Gericht ändert sich:", other: `${count} Gerichte ändern sich:` }),
    insteadOf: (dish) => `statt ${dish}`,
    dearer: (money) => `dabei zu bleiben würde ${money} mehr kosten`,
    why: { "not-offered": "das geht nicht mehr", breaks: "damit wäre eine Grenze überschritten" },
    more: (count, pack) => `+ ${count} × ${pack}`,
    fewer: (count, pack) => `− ${count} × ${pack}`,
    tills: (after, before) => `Alle Kassen der Woche: ${after} statt ${before}.`,
    accept: "Geänderte Woche nehmen",
    keep: "So lassen",
    behind: {
      title: "Die Küche wurde geändert",
      about:
        "Dieser Speiseplan ist von vorher. Was von ihm übrig ist, kann folgen; was vorbei ist, bleibt, wie es war.",
      here: "Der Speiseplan dieser Tage ist von vorher.",
      way: "Unter Speiseplan folgen lassen",
      against: {
        title: "Nicht für alle am Tisch",
        plate: (when, dish, eater, foods) => `${when}: ${dish} ist nichts für ${eater}, denn darin ist: ${foods}.`,
        more: (count) =>
          counted(count, {
            one: "Ein weiterer Teller ist es auch nicht.",
            other: `${count} weitere Teller sind es auch nicht.`,
          }),
        about:
          "Das wurde erst nach dem Planen bekannt. Niemand soll essen, was ihm schadet: Packungsetikett und Arzt gehen vor.",
      },
      later: {
        eaters:
          "Wie viel jemand isst und wer neu dabei ist, gilt ab dem nächsten Speiseplan. Für diese Tage trag Gäste unter Heute ein.",
        kit: "Was neu ist, wie viel Platz zum Lagern ist und wie viel länger es mit weniger dauert, gilt ab dem nächsten Speiseplan.",
        sittings:
          "Wer öfter mitisst und was mitgenommen wird, gilt ab dem nächsten Speiseplan. Für diese Tage trag Gäste unter Heute ein.",
      },
    },
  },
};
