import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of a week that is planned again in English; the other languages have the same keys. */
export const mendedEn = {
  mended: {
    ask: "Let the plan follow",
    busy: "Looking at the whole week …",
    failed: "The week could not be planned again. The list stands as it is.",
    none: "No menu near this one keeps every limit then. The menu and the list stay as they are until you take another.",
    unfit: "This week no longer fits the kitchen. Plan anew under Menu.",
    same: "The menu and the list stay as they are.",
    sameDishes: "Every dish stays; the buying changes.",
    otherDishes: (count: number) => counted(count, { one: "One dish changes:", other: `${count} dishes change:` }),
    insteadOf: (dish: string) => `instead of ${dish}`,
    dearer: (money: string) => `keeping that would cost ${money} more`,
    why: { "not-offered": "that can't be made any more", breaks: "that would break a limit" },
    more: (count: number, pack: string) => `+ ${count} × ${pack}`,
    fewer: (count: number, pack: string) => `− ${count} × ${pack}`,
    tills: (after: string, before: string) => `All tills of the week: ${after} instead of ${before}.`,
    accept: "Take the changed week",
    keep: "Leave it so",
    behind: {
      title: "The kitchen was changed",
      about: "This menu was planned before that. What is left of it can follow; what is over stays as it was.",
      here: "The menu of these days was planned before that.",
      way: "Let it follow, under Menu",
      later: {
        eaters:
          "This counts from the next menu that is planned. In the one of these days tell guests, and who stays away, under Today.",
        kit: "This counts from the next menu that is planned; the one of these days was planned with the kit of before.",
        sittings:
          "Who sits down when counts from the next menu that is planned; minutes can be followed in the one of these days.",
        variety: "This counts from the next menu that is planned; the one of these days was planned before.",
        rise: "By how much prices may rise counts from the next menu that is planned.",
      },
    },
  },
};
