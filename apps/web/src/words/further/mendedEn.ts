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
    why: { "not-offered": "that is not possible any more", breaks: "that would break a limit" },
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
      against: {
        title: "Not for everyone at the table",
        plate: (when: string, dish: string, eater: string, foods: string) =>
          `${when}: ${dish} is not for ${eater}, as it has: ${foods}.`,
        more: (count: number) =>
          counted(count, { one: "One more plate is not.", other: `${count} more plates are not.` }),
        about:
          "This became known after the menu was planned. Nobody should eat what harms them: the label on the pack and a doctor come first.",
      },
      later: {
        eaters:
          "How much somebody eats, and who is new, counts from the next menu that is planned. In the one of these days tell guests under Today.",
        kit: "What is new, room for keeping, and how much longer it takes with less counts from the next menu that is planned.",
        sittings:
          "Who comes to more sittings, and what is taken along, counts from the next menu that is planned. In the one of these days tell guests under Today.",
      },
    },
  },
};
