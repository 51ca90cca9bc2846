import type { LessonWords } from "halfloaf/sheet";
import { tellPortions } from "../amountWords.ts";

/** The page for teaching in English. */
export const LESSON_WORDS: LessonWords = {
  title: (dish) => dish,
  dayTitle: (kitchen, day) => `What a day costs: ${kitchen}, ${day}`,
  intro: (portions, minutes) => `${tellPortions(portions)}, on the table in ${minutes} from the first step.`,
  makings: "Makings",
  method: "Method",
  step: (minutes, isHandsFree) => (isHandsFree ? `(${minutes}, by itself)` : `(${minutes})`),
  ahead: "hours before",
  sums: "The sums, unfolded",
  batchSum: (cost, plates) => `What went in cost ${cost}: ${plates}. Open a line to see where it comes from.`,
  plate: (name, cost) => `${name}: ${cost}`,
  portion: (number) => `Portion ${number}`,
  later: "Put by for later weeks",
  packSum: "What all of it took of each pack",
  pack: "pack",
  price: "price seen",
  taken: "taken",
  cost: "cost",
  together: "Together",
  ofPack: (mass, cost) => `(of ${mass} for ${cost})`,
};
