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
  follow: {
    title: "Otherwise than planned",
    count: (count: number) =>
      counted(count, {
        one: "One thing came out otherwise than the week took it to be.",
        other: `${count} things came out otherwise than the week took them to be.`,
      }),
  },
};
