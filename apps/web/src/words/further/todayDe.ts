import { toCounted } from "@halfloaf/words/toCounted";
import type { todayEn } from "./todayEn.ts";

const counted = toCounted("de");

/** Texts of Today where it comes out otherwise in German. */
export const todayDe: typeof todayEn = {
  otherwise: {
    title: "Es kommt anders",
    without: (eater) => `Ohne ${eater}`,
    guests: "Portionen für Gäste",
    guestsCome: "Gäste essen hier",
    cost: "Was es anderswo kostet, falls bekannt",
    ateOut: "Anderswo gegessen",
  },
  untold: {
    title: "Noch nicht gesagt",
    count: (count) => counted(count, { one: "1 Essen der letzten Tage", other: `${count} Essen der letzten Tage` }),
    about: "Geplant, und niemand hat gesagt, ob es gekocht und gegessen wurde. Vorräte und Abrechnung folgen dann.",
    all: "Alles wie geplant",
  },
  follow: {
    title: "Anders als geplant",
    news: {
      price: (pack, money) => `${pack}: jetzt ${money}`,
      gone: (pack) => `${pack}: nicht da`,
      nobody: (at) => `${at}: niemand isst hier`,
      without: (at, eater) => `${at}: ohne ${eater}`,
      guests: (at, count, told) =>
        `${at}: Gäste, ${counted(count, { one: `${told} Portion`, other: `${told} Portionen` })}`,
      lost: (food, mass) => `${food}: ${mass} sind weg`,
      ends: (food, day) => `${food}: nur bis ${day} gut`,
      never: (food) => `${food}: kam nie nach Hause`,
      came: (food, mass) => `${food}: ${mass} mehr da als geplant`,
    },
    count: (count) =>
      counted(count, {
        one: "Eines kam anders, als die Woche annahm.",
        other: `${count} Dinge kamen anders, als die Woche annahm.`,
      }),
  },
};
