/** How hard each kind of broken limit weighs in the search, in minor units; raised when no plan is found. */
export interface Penalties {
  /** For each hands-on minute beyond a day's limit, and each minute beyond a sitting's. */
  readonly minute: number;
  readonly elapsed: number;
  readonly energy: number;
  readonly use: number;
  readonly main: number;
  readonly distinct: number;
  /** For each serving that a wish which must hold has too few or too many. */
  readonly wish: number;
  readonly budget: number;
  readonly batch: number;
  readonly bound: number;
  readonly trip: number;
  /** For each kilogram that a trip carries too much. */
  readonly carry: number;
  /** For each litre too much in fridge or freezer on a day. */
  readonly cold: number;
  /** For each time that a making cannot be had. */
  readonly missing: number;
  /** For stock that had to be used up and was not. */
  readonly unused: number;
  /** For each sitting without a dish. */
  readonly unserved: number;
}

export const FIRST_PENALTIES: Penalties = {
  minute: 60,
  elapsed: 60,
  energy: 3000,
  use: 600,
  main: 600,
  distinct: 600,
  wish: 600,
  budget: 2,
  batch: 4000,
  bound: 3000,
  trip: 800,
  carry: 150,
  cold: 60,
  missing: 700,
  unused: 1000,
  unserved: 4000,
};

/** All kinds of limit. */
export const LIMIT_KINDS = Object.keys(FIRST_PENALTIES) as readonly (keyof Penalties)[];

function onlyPenalty(kind: keyof Penalties): Penalties {
  const nothing = Object.fromEntries(LIMIT_KINDS.map((other) => [other, 0])) as Record<keyof Penalties, number>;
  return { ...nothing, [kind]: 1 };
}

/** For each kind of limit, penalties that look at no other. */
export const ONLY = Object.fromEntries(LIMIT_KINDS.map((kind) => [kind, onlyPenalty(kind)])) as Readonly<
  Record<keyof Penalties, Penalties>
>;

/** A broken limit costs at least this, so that a hair's breadth is never worth it. */
const STEP_MINOR = 30;

/** What going beyond a limit by an amount above 0 costs; nothing where the limit is not held (a penalty of 0). */
export function charge(penalty: number, amount: number): number {
  return penalty > 0 ? STEP_MINOR + penalty * amount : 0;
}
