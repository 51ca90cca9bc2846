import type { CivilDate } from "../../../quantity/index.ts";
import { firstExpiredFirstOut, isGoneOff, type LotState, MASS_TOLERANCE_G } from "../../../stores/index.ts";
import type { SittingKind } from "../../datedSittings.ts";
import type { EventOf, Plate } from "../event.ts";
import type { Pen } from "../Pen.ts";
import type { RecordState } from "../recordState.ts";

/** What was eaten by whom at a sitting. */
export interface EatWish {
  readonly on: CivilDate;
  readonly sitting: SittingKind;
  /** Portions of a dish that was cooked before, or g as purchased of a food eaten as it is. Without `eater` a guest ate. */
  readonly plates: readonly PlateWish[];
}

/** One plate, or what of it could not be had. */
export type PlateWish =
  | { readonly eater?: string; readonly dish: string; readonly portions: number }
  | { readonly eater?: string; readonly food: string; readonly massG: number };

/** The event of a sitting, and what was said to be eaten but is not in the stores. */
export interface EatingWritten {
  /** Absent where the stores have nothing of it. */
  readonly eaten?: EventOf<"eaten">;
  readonly short: readonly PlateWish[];
}

/**
 * What was eaten at a sitting as an event: portions and foods leave the good lots first expired first out. Throws where a
 * plate is not positive.
 */
export function eat(state: RecordState, { on, sitting, plates }: EatWish, pen: Pen): EatingWritten {
  const leftG = new Map([...state.lots.values()].map(({ id, leftG: left }) => [id, left]));
  const short: PlateWish[] = [];
  const served = plates.flatMap((wish): Plate[] => {
    const { taken, missing } = fill(wish, listServed(state, wish, on), leftG);
    if (missing !== undefined) short.push(missing);
    const { eater } = wish;
    return taken.map((plate) => (eater === undefined ? plate : { eater, ...plate }));
  });
  if (served.length === 0) return { short };
  return { eaten: pen.write({ kind: "eaten", on, sitting, plates: served }), short };
}

/** How many of so many portions of a dish could not be eaten on a day, by what is in the stores now: 0 to all of them. */
export function portionsShort(
  state: RecordState,
  wish: { readonly dish: string; readonly portions: number },
  on: CivilDate,
): number {
  const { dish, portions } = wish;
  const lots = listServed(state, { dish, portions }, on);
  const { missing } = fill({ dish, portions }, lots, new Map(lots.map(({ id, leftG }) => [id, leftG])));
  return missing !== undefined && "dish" in missing ? missing.portions : 0;
}

/** The lots that a plate may come from, in the order in which it does. */
function listServed(state: RecordState, wish: PlateWish, on: CivilDate): LotState[] {
  return firstExpiredFirstOut(state.lots.values()).filter((lot) => {
    const isIt = "dish" in wish ? lot.cooked?.dish === wish.dish : lot.food === wish.food;
    return isIt && lot.since <= on && lot.keeps?.ok === true && !isGoneOff(lot.keeps, on);
  });
}

/** Takes a plate out of the lots in turn; a portion weighs what it weighs in the lot it comes from. */
function fill(
  wish: PlateWish,
  lots: readonly LotState[],
  leftG: Map<string, number>,
): { readonly taken: Plate[]; readonly missing?: PlateWish } {
  let wanted = "dish" in wish ? wish.portions : wish.massG;
  if (!(wanted > 0)) throw new RangeError(`${wanted} is no plate`);
  const taken: Plate[] = [];
  for (const { id, cooked } of lots) {
    const unitG = cooked?.portionG ?? 1;
    const massG = Math.min(leftG.get(id) as number, wanted * unitG);
    if (massG <= MASS_TOLERANCE_G) continue;
    leftG.set(id, (leftG.get(id) as number) - massG);
    taken.push({ lot: id, massG });
    wanted -= massG / unitG;
  }
  if (wanted <= MASS_TOLERANCE_G) return { taken };
  return { taken, missing: "dish" in wish ? { ...wish, portions: wanted } : { ...wish, massG: wanted } };
}
