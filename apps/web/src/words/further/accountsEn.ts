import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of Accounts in English; the other languages have the same keys. */
export const accountsEn = {
  accounts: {
    stretch: "By",
    day: "day",
    week: "week",
    month: "month",
    stretches: (from: string, to: string) => `${from} to ${to}`,
    none: "Nothing was planned, bought or eaten yet. Plan the days, tick what you buy, and say what you ate: the sums follow.",
    left: (money: string) => `${money} left of this week's money`,
    over: (money: string) => `${money} more than this week's money was spent`,
    budget: (spent: string, budget: string) => `${spent} spent of ${budget}`,
    noBudget: (spent: string) => `${spent} spent this week. No budget is set; set one under Kitchen.`,
    picture: "Planned, spent, eaten and thrown away",
    pictureSays: "Bars for each stretch of days; the table below says the same.",
    planned: "Planned at the till",
    spent: "Spent at the till",
    eaten: "Eaten",
    wasted: "Thrown away",
    fares: "Ways to shops",
    ateOut: "Eaten elsewhere",
    opening: "There before",
    entered: "Came in unbought",
    carryOver: "Carried over",
    days: "Days",
    sums: "There before + came in + spent = eaten + thrown away + carried over.",
    plates: "Plates as planned and as they were",
    platesNone: "No plates in these days.",
    asPlanned: "Planned",
    asItWas: "As it was",
    elsewhere: (money: string) => `eaten elsewhere for ${money}`,
    nobody: "nobody ate here",
    guests: (count: number, told: string) =>
      counted(count, { one: `guests: ${told} portion`, other: `guests: ${told} portions` }),
    energy: "What cooking drew",
    energyNone: "Nothing was cooked in these days.",
    energyOf: (kwh: string, count: number) =>
      counted(count, { one: `About ${kwh} kWh for 1 cooking`, other: `About ${kwh} kWh for ${count} cookings` }),
    energyCost: (money: string, price: string) => `${money} at ${price} a kWh`,
    energyEstimate: "the price is an estimate until you set it in",
    energyUnpriced: "What a kWh costs is not known; set it in",
    energyUnknown: (count: number) =>
      counted(count, {
        one: "1 cooking of a dish that is gone is left out.",
        other: `${count} cookings of dishes that are gone are left out.`,
      }),
    energyNote: "An estimate from minutes and usual ratings of hob, oven and the like, apart from the sums above.",
    waste: "What was thrown away",
    wasteWhy: "By what was said of why",
    wasteNone: "Nothing was thrown away.",
    missing: (mass: string) => `${mass} of it found missing`,
    savings: {
      "smaller-pack": (count: number, pack: string, money: string) =>
        `${count > 1 ? `${count} × ` : ""}${pack} would have been enough and cost ${money} less`,
      freeze: (day: string) => `freezing it by ${day} would have saved it`,
      eat: (day: string) => `eating it by ${day} would have saved it`,
    },
    earlier: "Earlier",
    later: "Later",
  },
};
