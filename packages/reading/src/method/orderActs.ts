import { type DraftStep, type Field, reckoned } from "./DraftStep.ts";
import { preheated, type StepKind } from "./workWords.ts";

/** Words that say that something is done while what was started before goes on by itself. */
const MEANWHILE =
  /\b(?:meanwhile|in the meantime|at the same time)\b|\bwhile (?:the|it|they|that|these|this|your)\b.{0,40}\b(?:cooks?|bakes?|boils?|simmers?|fry|fries|rests?|soaks?|heats?|stands?|chills?|rises?|roasts?|cooking|baking|simmering|boiling)\b/i;
const HOT_WATER =
  /\b(?:boiling|hot|just-boiled|boiled) (?:salted )?(?:water|stock)\b|\bkettle\b|\bthe (?:boiling )?water\b/i;
const IN_WATER: ReadonlySet<StepKind> = new Set(["boil", "steam"]);

type Unordered = Pick<DraftStep, "id" | "text" | "kind" | "hands">;

/**
 * For each step what it waits for. One step follows the other as they are written, but: an oven or water is heated from the
 * start, and what needs it waits for it; what is done "meanwhile" waits only for what the step before it waits for, and
 * what follows waits for both. All of it is a rule of thumb and marked so.
 */
export function orderActs(steps: readonly Unordered[]): Field<readonly string[]>[] {
  const heating = new Map<"oven" | "grill" | "water", string>();
  const waits = new Map<string, readonly string[]>();
  let last: readonly string[] = [];
  return steps.map((step): Field<readonly string[]> => {
    const source = heatSource(step);
    if (source !== undefined) {
      heating.set(source, step.id);
      waits.set(step.id, []);
      return reckoned([], "likely", "order-heats-from-start");
    }
    const needed = needsHeated(step).flatMap((part) => take(heating, part));
    const isMeanwhile = MEANWHILE.test(step.text) && last.length > 0;
    const before = isMeanwhile ? (waits.get(last.at(-1) as string) ?? []) : last;
    const after = [...new Set([...before, ...needed])];
    waits.set(step.id, after);
    last = isMeanwhile ? [...last, step.id] : [step.id];
    return reckoned(after, "likely", isMeanwhile ? "order-meanwhile" : "order-as-written");
  });
}

function heatSource({ text, kind, hands }: Unordered): "oven" | "grill" | "water" | undefined {
  const part = preheated(text);
  if (part !== undefined) return part === "bake" ? "oven" : "grill";
  return kind.value === "heat-water" && hands.value === "none" ? "water" : undefined;
}

function needsHeated({ text, kind }: Unordered): ("oven" | "grill" | "water")[] {
  const water = IN_WATER.has(kind.value) || HOT_WATER.test(text);
  return [
    ...(kind.value === "bake" ? ["oven" as const] : []),
    ...(kind.value === "grill" ? ["grill" as const] : []),
    ...(water ? ["water" as const] : []),
  ];
}

function take(heating: Map<"oven" | "grill" | "water", string>, part: "oven" | "grill" | "water"): string[] {
  const id = heating.get(part);
  if (part === "water") heating.delete(part);
  return id === undefined ? [] : [id];
}
