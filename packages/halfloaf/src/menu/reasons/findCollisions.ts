import type { LimitKind } from "./relaxLimit.ts";

/** What is known before collisions are looked for. */
export interface CollisionClues {
  /** The kinds of limit that are stated. */
  readonly kinds: readonly LimitKind[];
  /** Kinds seen to be enough when dropped alone: they are in every minimal set, so that there is only one. */
  readonly helps: ReadonlySet<LimitKind>;
  /** Kinds that a plan was seen to be enough to drop all together; absent where no such plan is known. */
  readonly suspects?: ReadonlySet<LimitKind>;
  /** Tells whether a plan is found with some kinds dropped. */
  readonly isPossible: (dropped: readonly LimitKind[]) => boolean;
  /** The same after a longer search. */
  readonly isPossibleAtLength: (dropped: readonly LimitKind[]) => boolean;
}

/** Collisions that stand in the way each by itself are looked for until so many are found. */
const MOST_COLLISIONS = 3;

/**
 * Minimal sets of kinds that collide: the rest dropped there is still no plan, any one of them dropped too there is one.
 * Found by deletion; where the problem stays impossible without a set, there is another one among the rest. None where
 * with all dropped there is no plan either.
 */
export function findCollisions(clues: CollisionClues): LimitKind[][] {
  const { kinds, helps, suspects, isPossible, isPossibleAtLength } = clues;
  const likely = helps.size > 0 ? helps : (suspects ?? new Set<LimitKind>());
  if (likely.size === 0 && !isPossible(kinds)) return [];
  const collisions: LimitKind[][] = [];
  let dropped: LimitKind[] = [];
  do {
    const collision = deleteFrom(clues, likely, dropped);
    collisions.push(collision);
    dropped = [...dropped, ...collision];
  } while (helps.size === 0 && collisions.length < MOST_COLLISIONS && !isPossibleAtLength(dropped));
  return collisions;
}

/** The kinds that are left when each is dropped for good where the problem stays impossible without it. */
function deleteFrom(
  { kinds, helps, isPossible }: CollisionClues,
  likely: ReadonlySet<LimitKind>,
  already: readonly LimitKind[],
): LimitKind[] {
  const dropped: LimitKind[] = [...already];
  const left = kinds.filter((kind) => !already.includes(kind));
  const unlikely = left.filter((kind) => !likely.has(kind));
  // Mostly what is not likely plays no part, which one search tells for all of it.
  const areIdle = unlikely.length > 0 && unlikely.length < left.length && !isPossible([...dropped, ...unlikely]);
  if (areIdle) dropped.push(...unlikely);
  for (const kind of left) {
    const isSettled = helps.has(kind) || (areIdle && unlikely.includes(kind));
    if (!isSettled && !isPossible([...dropped, kind])) dropped.push(kind);
  }
  return left.filter((kind) => !dropped.includes(kind));
}
