import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of Today where it comes out otherwise in English; the other languages have the same keys. */
export const todayEn = {
  otherwise: {
    title: "It comes out otherwise",
    without: (eater: string) => `Without ${eater}`,
    guests: "Portions for guests",
    guestsCome: "Guests eat here",
    cost: "What it costs elsewhere, if known",
    ateOut: "Eaten elsewhere",
  },
  untold: {
    title: "Not told yet",
    count: (count: number) =>
      counted(count, { one: "1 meal of the last days", other: `${count} meals of the last days` }),
    about: "Planned, and nobody said whether it was cooked and eaten. Stores and accounts follow once you do.",
    all: "All as planned",
  },
  follow: {
    title: "Otherwise than planned",
    news: {
      price: (pack: string, money: string) => `${pack}: ${money} now`,
      gone: (pack: string) => `${pack}: not there`,
      nobody: (at: string) => `${at}: nobody eats here`,
      without: (at: string, eater: string) => `${at}: without ${eater}`,
      guests: (at: string, count: number, told: string) =>
        `${at}: guests, ${counted(count, { one: `${told} portion`, other: `${told} portions` })}`,
      lost: (food: string, mass: string) => `${food}: ${mass} are gone`,
      ends: (food: string, day: string) => `${food}: good until ${day} only`,
      never: (food: string) => `${food}: never came home`,
      came: (food: string, mass: string) => `${food}: ${mass} more here than planned`,
    },
    count: (count: number) =>
      counted(count, {
        one: "One thing came out otherwise than the week took it to be.",
        other: `${count} things came out otherwise than the week took them to be.`,
      }),
  },
};
