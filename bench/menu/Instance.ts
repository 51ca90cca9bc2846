import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { MenuProblem } from "halfloaf/menu";
import { generateProblem, type Size } from "./generateProblem.ts";

/** One problem to plan, and the group whose medians it counts in. */
export interface Instance {
  readonly group: string;
  readonly name: string;
  readonly seed: number;
  readonly problem: MenuProblem;
}

/** What a problem must have to be planned at all, by the kind of value. */
const LISTS = ["periodDay", "foods", "dishes", "sittings", "lots", "packs", "trips", "components", "profiles"] as const;
const RECORDS = ["limits", "worth"] as const;

/** The problems in the `.json` files of a folder. Throws where a file is no problem, with what it lacks. */
export function readInstances(folder: string): Instance[] {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort();
  if (names.length === 0) throw new Error(`${folder} holds no .json file`);
  return names.map((name, i) => {
    const problem = readProblem(readFileSync(join(folder, name), "utf8"), name);
    return { group: "instances", name, seed: i + 1, problem };
  });
}

function readProblem(text: string, name: string): MenuProblem {
  const content: unknown = JSON.parse(text);
  if (typeof content !== "object" || content === null) throw new Error(`${name} is no problem: it is no object`);
  const fields = content as Record<string, unknown>;
  const lacking = [
    ...LISTS.filter((key) => !Array.isArray(fields[key])),
    ...RECORDS.filter((key) => typeof fields[key] !== "object" || fields[key] === null),
    ...(["days", "shopCount"] as const).filter((key) => typeof fields[key] !== "number"),
  ];
  if (lacking.length > 0) throw new Error(`${name} is no problem: it lacks ${lacking.join(", ")}`);
  return content as MenuProblem;
}

/** Seeded weeks of a size, seeds 1 to `seeds`. */
export function seedInstances(size: Size, seeds: number): Instance[] {
  return listSeeds(seeds).map((seed) => ({
    group: size,
    name: `${size}${seed}`,
    seed,
    problem: generateProblem(size, seed),
  }));
}

/** The long plan of the table: 28 days, 6 eaters, 400 dishes. */
export function seedLongInstances(seeds: number): Instance[] {
  return listSeeds(seeds).map((seed) => ({
    group: "long",
    name: `long${seed}`,
    seed,
    problem: generateProblem("L", seed, { days: 28, eaters: 6 }),
  }));
}

function listSeeds(seeds: number): number[] {
  return Array.from({ length: seeds }, (_, i) => i + 1);
}
