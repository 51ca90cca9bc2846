import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts at the stove in English; the other languages have the same keys. */
export const workEn = {
  stove: {
    behind: (minutes: number) => `${minutes} min behind`,
    besides: "With it:",
    cautions: (count: number) => counted(count, { one: "1 caution below", other: `${count} cautions below` }),
    minLeft: "min left",
    otherTimes: "As much is done by",
    twoCooks: "Two cook together",
    cook: (number: number) => `Cook ${number}`,
    atPace: "Timed at the pace that earlier cookings showed; it is told, and set back, in",
    over: "Time is up",
    longer: "2 minutes more",
    allDone: "All is done. Serve, and tell the stores.",
    toStores: "Done: tell the stores",
    parts: {
      ring: "ring",
      pan: "pan",
      pot: "pot",
      oven: "oven",
      tray: "tray",
      microwave: "microwave",
      kettle: "kettle",
      board: "board, knife and hands",
      bowl: "bowl",
      blender: "blender",
    },
  },
  finish: {
    title: "Tell the stores",
    end: "Close the order of work",
    about:
      "What went in leaves the stores, what is eaten is accounted, what is left becomes portions in the fridge or the freezer.",
    portions: "Portions cooked",
    eatenAt: "Eaten at",
    later: "not yet",
    plates: "Who ate how many portions",
    boxes: (count: number, told: string) =>
      counted(count, {
        one: `Boxes of ${told} portion into the freezer`,
        other: `Boxes of ${told} portions into the freezer`,
      }),
    left: (count: number, told: string, keeps: string) =>
      counted(count, {
        one: `${told} portion is left. ${keeps}; chill it soon.`,
        other: `${told} portions are left. ${keeps}; chill them soon.`,
      }),
    nothingLeft: "Nothing is left.",
    tooMuch: "More is eaten or frozen than was cooked.",
    used: "What really went in",
    usedNote: "Grams as bought. Change only what differed; 0 = left out.",
    learn: (count: number) =>
      counted(count, {
        one: "Learn my pace from the one step that was told as it was done",
        other: `Learn my pace from the ${count} steps that were told as they were done`,
      }),
    book: "Tell the stores",
    back: "Back to the stove",
  },
};
