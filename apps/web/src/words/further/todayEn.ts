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
    count: (count: number) =>
      counted(count, {
        one: "One thing came out otherwise than the week took it to be.",
        other: `${count} things came out otherwise than the week took them to be.`,
      }),
  },
};
