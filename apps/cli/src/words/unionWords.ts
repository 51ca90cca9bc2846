import { type Issue, UNIT_CODES } from "halfloaf/quantity";
import type { CodeWords } from "./codeWords.ts";
import { tellValue, valueAt } from "./valueWords.ts";

/**
 * Words for a value that fits none of several shapes: an amount, the content of a pack, minutes of one day or of seven.
 * The schema can't say which shape was meant, so the value itself is looked at. Undefined where nothing is known of it.
 */
export function tellUnion(issue: Issue, value: unknown): CodeWords | undefined {
  const key = issue.path.at(-1);
  if (key === "amount") return () => tellAmount(value);
  if (key === "content") {
    return (_issue, told) => ({
      says: `is ${told}, which gives no size of the pack`,
      remedy: 'Say what the pack holds in one way: {"massG": 500}, {"pieces": 6} or {"volumeMl": 1000}.',
    });
  }
  if (key === "handsOnMinutes") {
    return (_issue, told) => ({
      says: `is ${told}`,
      remedy: "Write one number of minutes from 0 on, or seven in brackets, Monday first.",
    });
  }
  return undefined;
}

function tellAmount(value: unknown): { says: string; remedy: string } {
  const unit = valueAt(value, ["unit"]);
  const units: readonly unknown[] = [...UNIT_CODES, "piece"];
  if (typeof unit === "string" && !units.includes(unit)) {
    return { says: `has the unit ${tellValue(unit)}, which is not known`, remedy: `Write one of ${units.join(", ")}.` };
  }
  const remedy =
    'Write {"value": 200, "unit": "g"}, {"from": 2, "to": 3, "unit": "piece"} or "to-taste", numbers above 0.';
  return { says: `is ${tellValue(value)}, which is no amount`, remedy };
}
