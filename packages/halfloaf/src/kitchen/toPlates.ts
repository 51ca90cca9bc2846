import type { MenuPlan } from "../menu/index.ts";
import { addDays, splitByLargestRemainder } from "../quantity/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";
import type { WeekPlan } from "./weekPlan.ts";

type Sitting = WeekPlan["sittings"][number];
type Cooking = WeekPlan["batches"][number];
type Box = NonNullable<WeekPlan["boxes"]>[number];

/** Standard portions of some sittings together. */
export function portionsOf(stated: KitchenProblem, sittings: readonly number[]): number {
  return sittings.reduce((sum, k) => sum + (stated.problem.sittings[k]?.portions ?? 0), 0);
}

/**
 * Splits each batch's cost over the plates and boxes it fills, by the portions of each eater at each sitting and of each
 * box. A sitting that no batch feeds is left out.
 */
export function toPlates(
  stated: KitchenProblem,
  plan: MenuPlan,
  batches: readonly Cooking[],
): { readonly sittings: Sitting[]; readonly boxes: Box[] } {
  const portionsOfEater = new Map(stated.shares.map((share) => [share.eater.id, share.portions]));
  const placed: Sitting[] = [];
  const boxes: Box[] = [];
  plan.batches.forEach(({ dish, sittings }, batch) => {
    const cooking = batches[batch] as Cooking;
    const plates = sittings.flatMap((k) => {
      const at = stated.sittings[k];
      if (at?.putBy) return [{ k, portions: portionsOf(stated, [k]) }];
      return (at?.eaters ?? []).map((eater) => ({ k, portions: portionsOfEater.get(eater) ?? 1 }));
    });
    const costs = splitByLargestRemainder(
      cooking.costMinor,
      plates.map((plate) => plate.portions),
    );
    sittings.forEach((k, i) => {
      const at = stated.sittings[k];
      if (!at) return;
      const plateMinor = costs.filter((_, plate) => plates[plate]?.k === k);
      if (at.putBy) {
        boxes.push(toBox(stated, { at, dish, batch, cooking, k, costMinor: plateMinor[0] as number }));
        return;
      }
      const leftover = i > 0;
      placed[k] = {
        date: at.date,
        kind: at.kind,
        eaters: [...at.eaters],
        heat: at.heat,
        packed: at.packed,
        dish: cooking.dish,
        batch,
        leftover,
        portions: portionsOf(stated, [k]),
        handsOnMinutes: leftover ? stated.problem.worth.leftoverMinutes : cooking.handsOnMinutes,
        elapsedMinutes: leftover ? stated.problem.worth.leftoverMinutes : cooking.elapsedMinutes,
        plateMinor,
      };
    });
  });
  return { sittings: placed.filter((sitting) => sitting !== undefined), boxes };
}

interface Filled {
  readonly at: DatedSitting;
  readonly dish: number;
  readonly batch: number;
  readonly cooking: Cooking;
  readonly k: number;
  readonly costMinor: number;
}

function toBox(stated: KitchenProblem, { at, dish, batch, cooking, k, costMinor }: Filled): Box {
  const fitted = stated.dishes[dish];
  if (fitted === undefined) throw new RangeError(`batch ${batch} puts by a dish that is not the problem's`);
  return {
    id: `${cooking.dish}-box-day-${at.day + 1}`,
    dish: cooking.dish,
    batch,
    portions: portionsOf(stated, [k]),
    place: "freezer",
    cookedOn: cooking.date,
    on: at.date,
    keepsUntil: addDays(cooking.date, fitted.dish.keeps.freezerDays ?? 0),
    costMinor,
    foods: [...new Set(fitted.dish.makings.flatMap((making) => fitted.choose(making)?.food ?? []))],
  };
}
