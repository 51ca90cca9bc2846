import { type Food, namesOf } from "halfloaf/food";
import { nearness, toFolded } from "./nearness.ts";
import type { OfficialFood, OfficialTable } from "./OfficialTable.ts";

/** An official food that may be the one meant; `number` where the food's own source names it by its number. */
export interface OfficialCandidate {
  readonly official: OfficialFood;
  readonly by: "number" | "name";
  /** Likeness of the names from 0 to 1. */
  readonly nearness: number;
}

const LEAST_NEARNESS = 0.35;

/**
 * Official foods that a food may be compared with, the likeliest first: the one whose number stands in the source of the
 * food, then those of the nearest names. They are offered, not chosen: names of tables are long and mean fine differences.
 */
export function findOfficialFoods(food: Food, { foods }: OfficialTable, most = 3): OfficialCandidate[] {
  const names = namesOf(food).map(toFolded);
  const number = /\bNDB (\d+)/.exec(food.source)?.[1];
  const candidates = [...foods.values()].flatMap((official): OfficialCandidate[] => {
    const folded = toFolded(official.name);
    const near = Math.max(...names.map((name) => nearness(name, folded)));
    if (
      number !== undefined &&
      official.formerNumber !== undefined &&
      Number(official.formerNumber) === Number(number)
    ) {
      return [{ official, by: "number", nearness: near }];
    }
    return near < LEAST_NEARNESS ? [] : [{ official, by: "name", nearness: near }];
  });
  const rank = ({ by }: OfficialCandidate): number => (by === "number" ? 1 : 0);
  return candidates.sort((a, b) => rank(b) - rank(a) || b.nearness - a.nearness).slice(0, most);
}
