import type { MenuProblem } from "../problem.ts";

/** Sittings that are alike but for their day: one count of servings a dish stands for all of them. */
export interface SittingKind {
  readonly sittings: readonly number[];
  readonly portions: number;
  readonly variety: boolean;
  /** True where the portions are put by. */
  readonly putBy: boolean;
  /** Profiles that attend. */
  readonly profiles: readonly number[];
  /** Profiles whose energy of that day is bounded. */
  readonly fed: readonly number[];
}

/** Groups the sittings of a problem by portions, eaters and the dishes offered. */
export function groupSittings(problem: MenuProblem): SittingKind[] {
  const groups = new Map<string, SittingKind & { sittings: number[] }>();
  problem.sittings.forEach((sitting, k) => {
    const profiles = problem.profiles.flatMap((profile, p) => (profile.sittings.includes(k) ? [p] : []));
    const fed = profiles.filter((p) => (problem.profiles[p]?.energyKj[sitting.day] as number) > 0);
    const key = JSON.stringify([
      sitting.portions,
      profiles,
      fed,
      sitting.variety,
      sitting.packed,
      sitting.putBy === true,
      [...sitting.dishes].sort((a, b) => a - b),
    ]);
    const known = groups.get(key);
    if (known) known.sittings.push(k);
    else {
      const { portions, variety, putBy = false } = sitting;
      groups.set(key, { sittings: [k], portions, variety, putBy, profiles, fed });
    }
  });
  return [...groups.values()];
}
