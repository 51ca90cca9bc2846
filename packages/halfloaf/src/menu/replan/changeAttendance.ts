import type { MenuProblem, MenuProfile } from "../problem.ts";
import type { Absent } from "./MenuChange.ts";

/** What a sitting brings of a day's energy, beside the other sittings; only the ratios count. */
export type EnergyWeight = (sitting: number) => number;

/** Weights by the middle energy of the dishes of each sitting, where nobody knows better. */
export function weighByDishes(problem: MenuProblem): EnergyWeight {
  const weights = problem.sittings.map(({ dishes }) => {
    const energies = dishes.map((dish) => problem.dishes[dish]?.energyKj ?? 0).sort((a, b) => a - b);
    return energies[energies.length >> 1] ?? 0;
  });
  return (sitting) => weights[sitting] ?? 0;
}

/**
 * Profiles after somebody stays away from some sittings: wanted energy of those days and the bounds of the week shrink by
 * what these sittings would have brought. Without `absent` nobody comes; with it only so many eaters of one profile don't,
 * and they become a profile of their own where others of it still come.
 */
export function stayAway(
  problem: MenuProblem,
  sittings: readonly number[],
  weight: EnergyWeight,
  absent: Absent | undefined,
): MenuProfile[] {
  const leave = (profile: MenuProfile): MenuProfile => leaveSittings(problem, profile, sittings, weight);
  if (absent === undefined) return problem.profiles.map(leave);
  const { profile: who } = absent;
  const found = who && problem.profiles[who.index];
  if (who === undefined || found === undefined) return [...problem.profiles];
  const apart = leave({ ...found, eaters: Math.min(who.eaters, found.eaters) });
  const others = found.eaters - apart.eaters;
  const rest = problem.profiles.map((each) =>
    each !== found ? each : others > 0 ? { ...each, eaters: others } : apart,
  );
  return others > 0 ? [...rest, apart] : rest;
}

function leaveSittings(
  { sittings }: MenuProblem,
  profile: MenuProfile,
  left: readonly number[],
  weight: EnergyWeight,
): MenuProfile {
  if (!profile.sittings.some((k) => left.includes(k))) return profile;
  const staying = profile.sittings.filter((k) => !left.includes(k));
  const shareOf = (day: number): number => {
    const sum = (list: readonly number[]): number =>
      list.reduce((total, k) => (sittings[k]?.day === day ? total + weight(k) : total), 0);
    const [before, after] = [sum(profile.sittings), sum(staying)];
    return before > 0 ? after / before : 1;
  };
  const energyKj = profile.energyKj.map((wanted, day) => wanted * shareOf(day));
  const total = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0);
  const all = total(profile.energyKj);
  const share = all > 0 ? total(energyKj) / all : staying.length / profile.sittings.length;
  return {
    ...profile,
    sittings: staying,
    energyKj,
    ...(profile.leastEnergyKj && { leastEnergyKj: profile.leastEnergyKj.map((least, day) => least * shareOf(day)) }),
    bounds: staying.length === 0 ? [] : profile.bounds.map((bound) => ({ ...bound, amount: bound.amount * share })),
  };
}
