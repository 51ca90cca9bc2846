/** Texts of the first use in English; the other languages have the same keys. */
export const firstEn = {
  first: {
    steps: ["Who eats", "Kit", "Money", "Time"],
    step: (at: number, of: number) => `Step ${at} of ${of}`,
    howMany: "How many eat here?",
    whoNote:
      "Age, sex, height, weight and activity serve one thing: how much energy a person needs, so that plates are large enough. They stay on this device, and nothing here is a target. Usual figures stand here; put in your own.",
    kitNote: "Only dishes that this kit can cook are planned.",
    kits: {
      small: ["One ring", "one pot, one pan, a kettle, a small fridge"],
      middle: ["Two rings", "a microwave, a kettle, a fridge with a freezer box"],
      full: ["A cooker with an oven", "four rings, a fridge, a freezer, a blender"],
    },
    kitDetails: "In detail",
    money: "Money for food in a week",
    moneyNote:
      "Packs and prices come from invented shops, all as estimates, until you see yours at the shelf. In other currencies the figures stand as they are.",
    currency: "Currency",
    cupboard: "What is in the cupboard already",
    cupboardNote: "Tick what is there; amounts are estimated until you count.",
    timeNote: "Minutes at hand for each sitting, from the first step to the plate.",
    eatsHere: "Eaten from this kitchen",
    minutesWeek: "Minutes, Monday to Friday",
    minutesEnd: "Minutes, Saturday and Sunday",
    packedWeek: "Monday to Friday taken along",
    done: "Make the kitchen and plan",
    making: "Making the kitchen …",
    failed: "The kitchen could not be made. The browser may refuse storage.",
    myKitchen: "Our kitchen",
    person: (at: number) => `Person ${at}`,
    shops: ["The big shop", "The corner shop"],
  },
};
