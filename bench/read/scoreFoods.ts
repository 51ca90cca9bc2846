import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { loadStarterFoods } from "@halfloaf/data";
import { type English, FoodIndex, findFoodOfChoice, readMakingsLine } from "@halfloaf/reading";
import { parseFoodTable } from "halfloaf/food";
import { parseCsv } from "./parseCsv.ts";

/** How often the first food offered is one of those that the label allows. A line that is read as no making counts as wrong. */
export interface FoodScore {
  readonly lines: number;
  /** Share of lines whose label comes first; of lines labelled as not in the table, those answered so. */
  readonly firstRight: number;
  /** Share of lines whose label is among the foods offered, or rightly none is. */
  readonly amongOffered: number;
  /** Lines answered as sure with another food than the label: each is a silent wrong guess. */
  readonly surelyWrong: readonly string[];
}

/** A line with the ids of the foods of the starter table that are right for it; none where the table has no such food. */
export interface LabelledFood {
  readonly line: string;
  readonly foods: readonly string[];
  /** The English of the line; the column may be left out, and is british then. */
  readonly english: English;
}

const SAMPLE = fileURLToPath(new URL("sample.csv", import.meta.url));

/**
 * Reads a labelled sample with the columns line and food, several foods parted by `|`; undefined where the file is not
 * there.
 */
export function loadSample(path = SAMPLE): LabelledFood[] | undefined {
  if (!existsSync(path)) return undefined;
  const rows = parseCsv(readFileSync(path, "utf8"));
  const ids = new Set(loadFoods().keys());
  return rows.map(({ line, food, english = "british" }, at) => {
    if (line === undefined || food === undefined) throw new Error(`${path}, row ${at + 1}: line or food is missing`);
    const foods = food === "" ? [] : food.split("|");
    const strange = foods.find((id) => !ids.has(id));
    if (strange !== undefined) throw new Error(`${path}, row ${at + 1}: "${strange}" is no food of the table`);
    if (english !== "british" && english !== "american") {
      throw new Error(`${path}, row ${at + 1}: english is "${english}", neither british nor american`);
    }
    return { line, foods, english };
  });
}

/** Finds the food of each line's first choice and holds it against the label. */
export function scoreFoods(sample: readonly LabelledFood[]): FoodScore {
  const index = new FoodIndex(loadFoods().values());
  const surelyWrong: string[] = [];
  let first = 0;
  let among = 0;
  for (const { line, foods, english } of sample) {
    const read = readMakingsLine(line);
    if (read.kind !== "making") continue;
    const finding = findFoodOfChoice(index, read, read.choices[0], english);
    const none = finding.kind === "not-in-table";
    const isRight = (id: string): boolean => foods.includes(id);
    const right = none ? foods.length === 0 : isRight(finding.best.food);
    if (right) first++;
    if (right || (!none && finding.nearest.some((each) => isRight(each.food)))) among++;
    if (!right && finding.kind === "found")
      surelyWrong.push(`${line}: ${finding.best.food}, not ${foods.join(" or ") || "none"}`);
  }
  return { lines: sample.length, firstRight: first / sample.length, amongOffered: among / sample.length, surelyWrong };
}

function loadFoods() {
  const parsed = parseFoodTable(loadStarterFoods());
  if (!parsed.ok) throw new Error("the starter foods have faults; run the tests of data/");
  return parsed.table;
}
