import { toCounted } from "@halfloaf/words/toCounted";
import type { mendedEn } from "./mendedEn.ts";

const counted = toCounted("de");

/** Texts of a week that is planned again in German. */
export const mendedDe: typeof mendedEn = {
  mended: {
    ask: "Den Plan folgen lassen",
    busy: "Die ganze Woche wird angesehen …",
    failed: "Die Woche ließ sich nicht neu planen. Die Liste bleibt, wie sie ist.",
    none: "So hält kein naher Speiseplan alle Grenzen ein. Lass die Liste, oder plan unter Speiseplan neu.",
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
  },
};
