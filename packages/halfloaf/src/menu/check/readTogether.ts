import type { MenuCooking, MenuMinutes, MenuProblem } from "../problem.ts";
import { exceeds } from "./PlanFault.ts";
import type { ReadBatch, ReadPlan } from "./readPlan.ts";

/** Batches that are begun and served at once. */
export interface Together {
  readonly day: number;
  /** At least two. */
  readonly batches: readonly ReadBatch[];
  readonly elapsedMinutes: number;
  /** Hands-on minutes beyond those of each batch. */
  readonly washMinutes: number;
}

/** All batches that share a cooking with another, by the sittings they are cooked for. */
export function readTogether(problem: MenuProblem, { batches }: ReadPlan): Together[] {
  const byLabel = new Map<number, ReadBatch[]>();
  for (const batch of batches) {
    const { together } = batch.fresh.sitting;
    if (together !== undefined) byLabel.set(together, [...(byLabel.get(together) ?? []), batch]);
  }
  return [...byLabel.values()]
    .filter((own) => own.length > 1)
    .map((own) => ({ day: own[0]?.fresh.sitting.day as number, batches: own, ...reckon(problem, own) }));
}

function reckon({ cookings = [], isApart }: MenuProblem, batches: readonly ReadBatch[]) {
  const known = cookings.filter(({ dishes }) =>
    dishes.every(({ dish, portions }) =>
      batches.some((batch) => batch.dishIndex === dish && !exceeds(portions, batch.portions)),
    ),
  );
  const minutesOf = ({ fixed, perPortion }: MenuMinutes, { portions }: ReadBatch): number =>
    fixed + perPortion * portions;
  const single = batches.map((batch) => minutesOf(batch.dish.elapsed, batch));
  const inTurn = single.reduce((sum, minutes) => sum + minutes, 0);
  const shared: number[] = [];
  for (const batch of batches) {
    batch.dish.loads?.forEach((load, thing) => {
      shared[thing] = (shared[thing] ?? 0) + minutesOf(load, batch);
    });
  }
  const isApartHere = isApart === true && !known.some((cooking) => isOf(cooking, batches));
  return {
    elapsedMinutes: Math.max(
      ...single,
      ...shared,
      ...known.map(({ elapsedMinutes }) => elapsedMinutes),
      isApartHere ? inTurn : 0,
    ),
    washMinutes: Math.max(0, ...known.map(({ washMinutes }) => washMinutes)),
  };
}

/** True where the cooking is of these batches, no more and no less. */
function isOf({ dishes }: MenuCooking, batches: readonly ReadBatch[]): boolean {
  return (
    dishes.length === batches.length &&
    batches.every(({ dishIndex, portions }) =>
      dishes.some(
        (each) => each.dish === dishIndex && !exceeds(each.portions, portions) && !exceeds(portions, each.portions),
      ),
    )
  );
}
