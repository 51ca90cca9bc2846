import { type Dish, type KitPart, orderSteps, type Step } from "../../dish/index.ts";

/** One piece of kit from the start of one step to the end of another, by place in the method. */
export interface PartUse {
  readonly part: KitPart;
  readonly from: number;
  readonly to: number;
}

/** Parts that hold food from one step to the next; the others are free between steps. */
const KEPT: ReadonlySet<KitPart> = new Set<KitPart>(["pan", "pot", "blender"]);

/** Parts that are limited: of the rest (bowls, trays) a kitchen is taken to have enough. */
const LIMITED = ["ring", "pan", "pot", "microwave", "kettle", "blender"] as const satisfies readonly KitPart[];

/**
 * The kit that the steps of a sitting hold. Pans, pots and the blender go from step to step with what is in them, as few
 * as can be, and on until the step that empties them is done; a ring is free whenever nothing cooks on it.
 */
export function listUses(method: Dish["method"], isAhead: readonly boolean[]): PartUse[] {
  return LIMITED.flatMap((part): PartUse[] => {
    const uses = method.flatMap(({ kit }, at) =>
      isAhead[at] ? [] : kit.filter((each) => each === part).map(() => at),
    );
    if (!KEPT.has(part)) return uses.map((at) => ({ part, from: at, to: at }));
    return chainUses(method, uses).map((chain) => {
      const last = chain.at(-1) as number;
      return { part, from: chain[0] as number, to: findEmptier(method, isAhead, last) };
    });
  });
}

/**
 * Fewest chains of uses in which each comes after the one before; where there is a choice what follows at once goes first.
 * **Source**: as `kitNeeded`: Dilworth 1950; Fulkerson 1956, Proc. AMS 7, 701-702.
 */
function chainUses(method: Dish["method"], uses: readonly number[]): number[][] {
  const { precedes } = orderSteps(method);
  const next: (number | undefined)[] = uses.map(() => undefined);
  const previous: (number | undefined)[] = uses.map(() => undefined);
  const candidates = uses.map((at) => {
    const later = [...uses.keys()].filter((other) => precedes[at]?.[uses[other] as number]);
    const isDirect = (other: number) => isAfter(method, uses[other] as number, at);
    return [...later.filter(isDirect), ...later.filter((other) => !isDirect(other))];
  });
  const findNext = (use: number, tried: Set<number>): boolean =>
    (candidates[use] as number[]).some((other) => {
      if (tried.has(other)) return false;
      tried.add(other);
      const holder = previous[other];
      if (holder !== undefined && !findNext(holder, tried)) return false;
      previous[other] = use;
      next[use] = other;
      return true;
    });
  for (const use of uses.keys()) findNext(use, new Set());
  const firsts = [...uses.keys()].filter((use) => previous[use] === undefined);
  return firsts.map((first) => {
    const chain: number[] = [];
    for (let use: number | undefined = first; use !== undefined; use = next[use]) chain.push(uses[use] as number);
    return chain;
  });
}

function isAfter(method: Dish["method"], at: number, before: number): boolean {
  return (method[at] as Step).after.includes((method[before] as Step).id);
}

/** The first step that follows at once and takes the food out; the step itself where none does. */
function findEmptier(method: Dish["method"], isAhead: readonly boolean[], last: number): number {
  const follower = method.findIndex((_, at) => !isAhead[at] && isAfter(method, at, last));
  return follower < 0 ? last : follower;
}
