import type { Cooking } from "./Cooking.ts";
import { isFrozen, type PlacedCautions } from "./placeCautions.ts";
import type { TimedCooking } from "./solveCooking.ts";
import type { AheadLine } from "./WorkSheet.ts";

/**
 * What is done ahead, by its latest start: each step ends before the first that waits for it begins. A dish that is done
 * whole ahead is ready when it is served.
 */
export function listAhead({ cooking, plan }: TimedCooking, placed: readonly PlacedCautions[]): AheadLine[] {
  const latest = latestStarts(cooking, plan.starts, plan.serveMinutes);
  return cooking.ahead
    .map(({ dish, step, minutes }, k): AheadLine => {
      const place = cooking.wish.dishes[dish]?.dish.method.findIndex(({ id }) => id === step.id) as number;
      return {
        dish,
        step: step.id,
        text: step.text,
        kind: kindOf(cooking, k),
        minutes,
        latestStartMinutes: latest[k] as number,
        cautions: placed[dish]?.steps.get(place) ?? [],
      };
    })
    .sort((a, b) => a.latestStartMinutes - b.latestStartMinutes);
}

/** Latest starts, each reckoned from those that wait for it. */
function latestStarts({ ahead }: Cooking, starts: readonly number[], serveMinutes: number): number[] {
  const latest: (number | undefined)[] = ahead.map(() => undefined);
  const reckon = (k: number): number => {
    const known = latest[k];
    if (known !== undefined) return known;
    const { leadsToAhead, leadsToSteps, minutes } = ahead[k] as Cooking["ahead"][number];
    const waiting = [...leadsToAhead.map(reckon), ...leadsToSteps.map((i) => starts[i] as number)];
    // By then the cook is at work; what was to be done hours before has ended when the cooking begins.
    const end = Math.min(...waiting, waiting.length > 0 && leadsToSteps.length > 0 ? 0 : serveMinutes);
    latest[k] = end - minutes;
    return end - minutes;
  };
  return ahead.map((_, k) => reckon(k));
}

function kindOf({ ahead, wish }: Cooking, k: number): AheadLine["kind"] {
  const { step } = ahead[k] as Cooking["ahead"][number];
  if (step.kind === "soak") return "soak";
  const thaws = step.kind === "rest" && step.foods.some((id) => isFrozen(wish.tables.foods.get(id)));
  return thaws ? "thaw" : "other";
}
