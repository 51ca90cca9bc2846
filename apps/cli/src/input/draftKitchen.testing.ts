import { writeFileSync } from "node:fs";
import { loadDemoKitchens } from "@halfloaf/data";

/** A kitchen as plain data, to be changed or spoilt at will. */
// biome-ignore lint/suspicious/noExplicitAny: what is spoilt on purpose keeps to no type.
export type Draft = Record<string, any>;

/** A copy of a demo kitchen. */
export function draftKitchen(name: string): Draft {
  const demo = loadDemoKitchens().find((each) => each.name === name);
  if (demo === undefined) throw new Error(`there is no demo kitchen ${name}`);
  return structuredClone(demo.content) as Draft;
}

/** Writes a changed copy of a demo kitchen as a file, over several lines. */
export function writeKitchen(path: string, demo: string, change: (kitchen: Draft) => void): void {
  const kitchen = draftKitchen(demo);
  change(kitchen);
  writeFileSync(path, JSON.stringify(kitchen, undefined, 1));
}

/** A dish of somebody's own that is sound. */
export const OWN_DISH = {
  id: "own-pot",
  title: "Own pot",
  cooking: "home",
  manner: "stew",
  fits: ["evening"],
  main: "onion",
  portions: 2,
  portionMassG: 300,
  makings: [{ food: "onion", amount: { value: 200, unit: "g" } }],
  method: [{ id: "boil", text: "Boil.", kind: "boil", minutes: { fixed: 5 }, hands: "eye" }],
  keeps: { fridgeDays: 2, authority: "UK FSA" },
  travels: false,
  served: ["hot"],
};

/** Limits so wide that any few thousand moves find a plan. */
export function widenLimits(kitchen: Draft): void {
  kitchen.useUp = [];
  Object.assign(kitchen.limits, {
    budgetMinor: 30000,
    handsOnMinutes: 300,
    energyTolerancePct: 40,
    distinctEvenings: 1,
    tripsPerWeek: 7,
  });
}
