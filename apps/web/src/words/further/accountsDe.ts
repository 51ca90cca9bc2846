import { toCounted } from "@halfloaf/words/toCounted";
import type { accountsEn } from "./accountsEn.ts";

const counted = toCounted("de");

/** Texts of Accounts in German. */
export const accountsDe: typeof accountsEn = {
  accounts: {
    stretch: "Je",
    day: "Tag",
    week: "Woche",
    month: "Monat",
    stretches: (from: string, to: string) => `${from} bis ${to}`,
    none: "Es wurde noch nichts geplant, gekauft oder gegessen. Plane die Tage, hak ab, was du kaufst, und sag, was du gegessen hast: die Summen folgen daraus.",
    left: (money: string) => `${money} vom Geld dieser Woche sind übrig`,
    over: (money: string) => `Das Geld dieser Woche ist um ${money} überschritten`,
    budget: (spent: string, budget: string) => `${spent} von ${budget} ausgegeben`,
    noBudget: (spent: string) =>
      `${spent} diese Woche ausgegeben. Ein Wochenbetrag ist nicht festgelegt; das geht unter Küche.`,
    picture: "Geplant, ausgegeben, gegessen und weggeworfen",
    pictureSays: "Balken für jeden Zeitraum; die Tabelle darunter sagt dasselbe.",
    planned: "An der Kasse geplant",
    spent: "An der Kasse bezahlt",
    eaten: "Gegessen",
    wasted: "Weg\u00ADgeworfen",
    fares: "Wege zu Läden",
    ateOut: "Anderswo gegessen",
    opening: "Vorher da",
    entered: "Ohne Kauf dazugekommen",
    carryOver: "Bleibt übrig",
    days: "Tage",
    sums: "Vorher da + dazugekommen + bezahlt = gegessen + weggeworfen + bleibt übrig.",
    plates: "Teller, wie geplant und wie sie waren",
    platesNone: "An diesen Tagen gibt es keine Teller.",
    asPlanned: "Geplant",
    asItWas: "Wie es war",
    elsewhere: (money: string) => `für ${money} anderswo gegessen`,
    nobody: "niemand hat hier gegessen",
    guests: (count, told) => counted(count, { one: `Gäste: ${told} Portion`, other: `Gäste: ${told} Portionen` }),
    energy: "Strom fürs Kochen",
    energyNone: "In diesen Tagen wurde nichts gekocht.",
    energyOf: (kwh: string, count: number) =>
      counted(count, { one: `Etwa ${kwh} kWh für einmal Kochen`, other: `Etwa ${kwh} kWh für ${count}-mal Kochen` }),
    energyCost: (money: string, price: string) => `${money} bei ${price} je kWh`,
    energyEstimate: "der Preis ist geschätzt, bis du ihn setzt unter",
    energyUnpriced: "Was eine kWh kostet, ist nicht bekannt; setze es unter",
    energyUnknown: (count: number) =>
      counted(count, {
        one: "Einmal Kochen eines Gerichts, das es nicht mehr gibt, fehlt darin.",
        other: `${count}-mal Kochen von Gerichten, die es nicht mehr gibt, fehlt darin.`,
      }),
    energyNote: "Geschätzt aus Minuten und üblicher Leistung von Herd, Ofen und Ähnlichem, neben den Summen oben.",
    waste: "Was weggeworfen wurde",
    wasteWhy: "Nach dem, was als Grund gesagt wurde",
    wasteNone: "Nichts wurde weggeworfen.",
    missing: (mass: string) => `davon fehlten ${mass}`,
    savings: {
      "smaller-pack": (count: number, pack: string, money: string) =>
        `${count > 1 ? `${count} × ` : ""}${pack} hätte gereicht und ${money} weniger gekostet`,
      freeze: (day: string) => `bis ${day} eingefroren, wäre es nicht verdorben`,
      eat: (day: string) => `bis ${day} gegessen, wäre es nicht verdorben`,
    },
    earlier: "Früher",
    later: "Später",
  },
};
