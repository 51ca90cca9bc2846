import { checkOwnFoods, type FoodTable, parseOwnFoods, withOwnFoods } from "halfloaf/food";
import type { Found } from "../../words/Fault.ts";
import { tellIssue } from "../../words/issueWords.ts";
import { type FileReading, NO_FINDINGS } from "../FileReading.ts";
import type { FoodBeside } from "../ReadReport.ts";

/** A file of own foods and overrides, laid over the foods of a kitchen to see whether it fits. */
export function readOwnFoods(
  name: string,
  content: unknown,
  kitchenFoods: FoodTable,
  starter: FoodTable,
  english: "british" | "american",
): Found<FileReading> {
  const parsed = parseOwnFoods(content);
  if (!parsed.ok) return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
  const own = parsed.value;
  // A food of the kitchen's own that the file brings anew takes the place of the one that is there.
  const brought = new Set(own.foods.map(({ id }) => id));
  const foods = new Map([...kitchenFoods].filter(([id]) => starter.has(id) || !brought.has(id)));
  const issues = checkOwnFoods(foods, own);
  if (issues.length > 0) return { ok: false, faults: issues.map((issue) => tellIssue(issue, content)) };
  const laid = withOwnFoods(foods, own);
  const named = (id: string) => ({ id, name: laid.get(id)?.names[english][0] ?? id });
  const taken = own.overrides.map(({ food, from, figures, sources, unknown }): FoodBeside => {
    const before = foods.get(food) ?? laid.get(food);
    const now = (component: string) => {
      const figure = before?.composition[component as keyof typeof figures];
      return figure === undefined
        ? undefined
        : { figure, source: before?.figureSources[component] ?? before?.source ?? "" };
    };
    const changes = Object.entries(figures).map(([component, figure]): FoodBeside["changes"][number] => {
      const old = now(component);
      const source = sources[component as keyof typeof sources] ?? "";
      const kind = old === undefined ? "gained" : old.figure === figure ? "same" : "changed";
      return { component, kind, ...(old && { now: old }), taken: { figure, source } };
    });
    const forgotten = unknown.map((component): FoodBeside["changes"][number] => {
      const old = now(component);
      return { component, kind: "forgotten", ...(old && { now: old }) };
    });
    return { food: named(food), from, changes: [...changes, ...forgotten], contradictions: [] };
  });
  return {
    ok: true,
    value: {
      part: { kind: "foods", file: name, foods: own.foods.map(({ id }) => named(id)), taken },
      findings: { ...NO_FINDINGS, foods: own.foods, overrides: own.overrides },
      open: [],
    },
  };
}
