import { toCounted } from "@halfloaf/words/toCounted";
import type { buyingEn } from "./buyingEn.ts";

const counted = toCounted("de");

/** Texts at the shelf in German. */
export const buyingDe: typeof buyingEn = {
  shelf: {
    legend: "Am Regal:",
    kinds: { price: "Anderer Preis", size: "Andere Größe", gone: "Nicht da" },
    price: "Preis von einer",
    mass: "In einer sind, in Gramm",
    together: (count, money) => counted(count, { one: `Eine für ${money}:`, other: `${count} für ${money}:` }),
    asDear: "wie auf der Liste.",
    dearer: (money) => `${money} teurer als auf der Liste.`,
    cheaper: (money) => `${money} billiger als auf der Liste.`,
    otherDearer: "Lohnt sich noch; das nächste hier wäre",
    otherCheaper: "Besser hier:",
    other: (count, pack, money) => `${count} × ${pack} für ${money}`,
    noOther: "Eine andere Packung davon ist in diesem Laden nicht bekannt.",
    needed: (mass) => `Die Woche braucht davon ${mass}.`,
    buy: (count) => counted(count, { one: "So kaufen", other: `${count} so kaufen` }),
    leave: "Liste lassen",
    notThere: "Auf diesem Gang nicht da",
    isThere: "Doch da",
    worthIt: "Lohnt sich noch: Speiseplan und Liste bleiben, wie sie sind.",
    ticked: (done, all) => counted(all, { one: `${done} von ${all} Zeile`, other: `${done} von ${all} Zeilen` }),
    bag: (now, all) => `${now} von ${all} in der Tasche`,
    tooHeavy: (most) => `Mehr als die ${most}, die sich von dort tragen lassen.`,
    fare: (money) => `Der Weg kostet ${money}; das wird mit dem ersten Haken vermerkt.`,
  },
  scan: {
    open: "Am Strichcode finden",
    title: "Nummer unter dem Strichcode",
    look: "Durch die Kamera schauen",
    stop: "Nicht mehr schauen",
    picture: "Bild der Kamera",
    hold: "Halt den Strichcode quer in die Mitte des Bildes.",
    refused:
      "Die Kamera wurde verweigert. Erlaub sie in den Einstellungen des Browsers für diese Seite, oder tipp die Nummer.",
    missing: "Hier lässt sich keine Kamera benutzen. Tipp die Nummer.",
    typed: "Nummer, wie gedruckt",
    find: "Suchen",
    invalid: "Das ist keine solche Nummer: eine Ziffer ist falsch oder fehlt.",
    found: (pack) => `${pack}.`,
    unknown: (digits) => `Noch keine Packung dieses Ladens hat die Nummer ${digits}.`,
    whose: "Welche Packung ist es?",
    choose: "Packung wählen",
    remember: "Nummer merken",
  },
  besides: {
    title: "Außer der Liste gekauft",
    find: "Packung dieses Ladens suchen",
    count: "Wie viele",
    bought: "Gekauft",
  },
};
