import type { Dish, KitPart, Step } from "./dish.ts";
import { orderSteps, type StepOrder } from "./stepOrder.ts";

/** Parts that are filled or soiled, and washed up after. */
export const VESSELS = ["pan", "pot", "tray", "board", "bowl", "blender"] as const satisfies readonly KitPart[];
export type Vessel = (typeof VESSELS)[number];

const HEAT_SOURCES: ReadonlySet<KitPart> = new Set(["ring", "oven", "microwave", "kettle"]);
const HEAT_STEPS: ReadonlySet<Step["kind"]> = new Set([
  "heat-water",
  "boil",
  "simmer",
  "steam",
  "fry",
  "bake",
  "grill",
  "microwave",
]);

/** The least kit that a dish can be cooked with. */
export interface KitNeeded {
  /** 1 where any step needs a ring: such steps can be done one after the other. */
  readonly rings: 0 | 1;
  readonly pans: number;
  readonly pots: number;
  readonly trays: number;
  readonly bowls: number;
  readonly boards: 0 | 1;
  readonly oven: boolean;
  readonly microwave: boolean;
  readonly kettle: boolean;
  readonly blender: boolean;
}

/**
 * The least kit that a dish can be cooked with. A pan, pot, tray or bowl serves several steps where each of them comes
 * after the one before; steps without an order between them need one each. A board and a blender are rinsed between steps.
 */
export function kitNeeded(dish: Pick<Dish, "method">): KitNeeded {
  const uses = (part: KitPart) => dish.method.some(({ kit }) => kit.includes(part));
  const { precedes } = orderSteps(dish.method);
  const count = (part: KitPart) => countVessels(dish.method, part, precedes);
  return {
    rings: uses("ring") ? 1 : 0,
    pans: count("pan"),
    pots: count("pot"),
    trays: count("tray"),
    bowls: count("bowl"),
    boards: uses("board") ? 1 : 0,
    oven: uses("oven"),
    microwave: uses("microwave"),
    kettle: uses("kettle"),
    blender: uses("blender"),
  };
}

/** What is washed up after cooking: each vessel and how many of it, those used at all, in the order of `VESSELS`. */
export function vesselsOf(dish: Pick<Dish, "method">): { readonly vessel: Vessel; readonly count: number }[] {
  const needed = kitNeeded(dish);
  const counts: Record<Vessel, number> = {
    pan: needed.pans,
    pot: needed.pots,
    tray: needed.trays,
    board: needed.boards,
    bowl: needed.bowls,
    blender: needed.blender ? 1 : 0,
  };
  return VESSELS.map((vessel) => ({ vessel, count: counts[vessel] })).filter(({ count }) => count > 0);
}

/** True where any step, also one done ahead, heats something: the dish can't be cooked where nothing can be heated. */
export function needsHeat(dish: Pick<Dish, "method">): boolean {
  return dish.method.some(({ kind, kit }) => HEAT_STEPS.has(kind) || kit.some((part) => HEAT_SOURCES.has(part)));
}

/** True where a portion can be taken along and eaten cold. */
export function isTravelling(dish: Pick<Dish, "travels" | "served">): boolean {
  return dish.travels && dish.served.includes("cold");
}

/**
 * Fewest vessels for the steps that use one: the fewest chains of the order that hold them all, which is their number less
 * the largest matching of each step with a later one. A step that names the part twice needs two of it.
 * **Source**: Dilworth 1950, Annals of Mathematics 51, 161-166; Fulkerson 1956, Proc. AMS 7, 701-702.
 */
function countVessels(method: Dish["method"], part: KitPart, precedes: StepOrder["precedes"]): number {
  const uses = method.flatMap(({ kit }, at) => kit.filter((each) => each === part).map(() => at));
  const previous: (number | undefined)[] = uses.map(() => undefined);
  const findNext = (use: number, tried: Set<number>): boolean =>
    uses.some((step, next) => {
      if (tried.has(next) || !precedes[uses[use] as number]?.[step]) return false;
      tried.add(next);
      const holder = previous[next];
      if (holder !== undefined && !findNext(holder, tried)) return false;
      previous[next] = use;
      return true;
    });
  return uses.length - uses.filter((_, use) => findNext(use, new Set())).length;
}
