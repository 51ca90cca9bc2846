import type { Food } from "../food/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import { firstExpiredFirstOut } from "./firstExpiredFirstOut.ts";
import { isGoneOff } from "./keepsUntil.ts";
import { type LotState, MASS_TOLERANCE_G } from "./lotState.ts";
import type { Movement } from "./movement.ts";

/** The movements that take a mass out of the stores, or by how much the stores fall short. */
export type Taken =
  | { readonly ok: true; readonly movements: readonly Movement[] }
  | {
      readonly ok: false;
      readonly shortG: number;
      /** Ids of lots that might help but of which nobody knows whether they are still good. */
      readonly doubtful: readonly string[];
    };

/**
 * Takes so many g as purchased of a food out of the lots on a day, first expired first out. Only lots are touched that are
 * there and known to be still good that day. A pack of which some stays is opened, and where it does not keep opened in its
 * place it goes to the fridge. `use` names what the food is used for.
 * Throws where the mass is not positive.
 */
export function take(lots: Iterable<LotState>, food: Food, massG: number, on: CivilDate, use?: string): Taken {
  if (!(massG > 0)) throw new RangeError(`${massG} g cannot be taken`);
  const ours = [...lots].filter((lot) => lot.food === food.id && (lot.placedOn ?? lot.boughtOn) <= on);
  const ordered = firstExpiredFirstOut(ours);
  const movements: Movement[] = [];
  let wantedG = massG;
  for (const lot of ordered) {
    const { keeps } = lot;
    if (wantedG <= MASS_TOLERANCE_G) break;
    if (!keeps?.ok || isGoneOff(keeps, on)) continue;
    const usedG = Math.min(wantedG, lot.leftG);
    const isRestLeft = lot.leftG - usedG > MASS_TOLERANCE_G;
    if (isRestLeft) movements.push(...breakInto(lot, food, on));
    const used = { kind: "used", on, lot: lot.id, massG: usedG } as const;
    movements.push(use === undefined ? used : { ...used, for: use });
    wantedG -= usedG;
  }
  if (wantedG <= MASS_TOLERANCE_G) return { ok: true, movements };
  const doubtful = ordered.filter(({ keeps }) => !keeps?.ok).map(({ id }) => id);
  return { ok: false, shortG: wantedG, doubtful };
}

/** What happens to a pack when some of it is taken and some stays. */
function breakInto(lot: LotState, { keeping }: Food, on: CivilDate): Movement[] {
  if (lot.loose || lot.openedOn !== undefined) return [];
  const opened: Movement = { kind: "opened", on, lot: lot.id };
  const mustGo = lot.place === "dry-store" && keeping.opened["dry-store"] === undefined;
  return mustGo && keeping.opened.fridge !== undefined
    ? [opened, { kind: "moved", on, lot: lot.id, to: "fridge" }]
    : [opened];
}
