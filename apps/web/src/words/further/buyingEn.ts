import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts at the shelf in English; the other languages have the same keys. */
export const buyingEn = {
  shelf: {
    legend: "At the shelf:",
    kinds: { price: "Other price", size: "Other size", gone: "Not there" },
    price: "Price of one",
    mass: "One holds, in grams",
    together: (count: number, money: string) =>
      counted(count, { one: `One for ${money}:`, other: `${count} for ${money}:` }),
    asDear: "as on the list.",
    dearer: (money: string) => `${money} dearer than on the list.`,
    cheaper: (money: string) => `${money} cheaper than on the list.`,
    otherDearer: "Still worth it; the next best here is",
    otherCheaper: "Better here:",
    other: (count: number, pack: string, money: string) => `${count} × ${pack} for ${money}`,
    noOther: "No other pack of it is known in this shop.",
    needed: (mass: string) => `The week needs ${mass} of it.`,
    buy: (count: number) => counted(count, { one: "Buy it like that", other: `Buy ${count} like that` }),
    leave: "Leave the list",
    notThere: "Not there on this trip",
    isThere: "It is there after all",
    worthIt: "Still worth it: the menu and the list stay as they are.",
    ticked: (done: number, all: number) =>
      counted(all, { one: `${done} of ${all} line`, other: `${done} of ${all} lines` }),
    bag: (now: string, all: string) => `${now} of ${all} in the bag`,
    tooHeavy: (most: string) => `More than the ${most} that can be carried from there.`,
    fare: (money: string) => `The way costs ${money}; it is noted with the first tick.`,
  },
  /** What a part of a shop is called, by its name in the shop's own file. */
  section: (name: string) => (name === "other" || name === "not told" ? "other things" : name),
  scan: {
    open: "Find by bar code",
    title: "Number under the bars",
    look: "Look through the camera",
    stop: "Stop looking",
    picture: "Picture of the camera",
    hold: "Hold the bars across the middle of the picture.",
    refused: "The camera was refused. Allow it in the browser's settings for this page, or type the number.",
    missing: "No camera can be used here. Type the number.",
    typed: "Number, as printed",
    find: "Find",
    invalid: "That is no such number: a digit is wrong or missing.",
    found: (pack: string) => `${pack}.`,
    unknown: (digits: string) => `No pack of this shop has the number ${digits} yet.`,
    whose: "Which pack is it?",
    choose: "choose a pack",
    remember: "Remember the number",
  },
  besides: {
    title: "Bought besides the list",
    find: "Find a pack of this shop",
    count: "How many",
    bought: "Bought",
  },
};
