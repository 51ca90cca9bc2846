import {
  changeProblem,
  type EnergyWeight,
  type MenuPlan,
  type MenuProblem,
  type MenuSitting,
  stayAway,
} from "../../menu/index.ts";
import type { DatedSitting } from "../datedSittings.ts";
import type { EaterShare } from "../eaterShares.ts";
import type { Kitchen } from "../kitchen.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";

/** A plan that cooks and buys nothing. */
export const NO_PLAN: MenuPlan = { batches: [], trips: [], purchases: [], uses: [] };

/** A stated week of which it is known which profile each eater is part of. */
export interface Seats {
  readonly stated: KitchenProblem;
  /** Position of each eater's profile; eaters whose needs are left to care have none. */
  readonly profileOf: ReadonlyMap<string, number>;
}

/** The seats of a week as it was stated: eaters who attend the same sittings share a profile, in the kitchen's order. */
export function toSeats(stated: KitchenProblem): Seats {
  const groups = new Map<string, number>();
  const profileOf = new Map<string, number>();
  for (const { eater, needKj, sittings } of stated.shares) {
    if (needKj === undefined || sittings.length === 0) continue;
    const key = sittings.join(" ");
    const at = groups.get(key) ?? groups.size;
    groups.set(key, at);
    profileOf.set(eater.id, at);
  }
  return { stated, profileOf };
}

/** What a sitting brings of a day's energy in this kitchen. */
export function weighSittings(kitchen: Kitchen, sittings: readonly DatedSitting[]): EnergyWeight {
  return (k) => kitchen.energySharePct[sittings[k]?.kind ?? "evening"] ?? 0;
}

/** The seats after an eater stays away from some sittings; the plates stay where they are. */
export function leaveSeats(seats: Seats, kitchen: Kitchen, eater: string, sittings: readonly number[]): Seats {
  const index = seats.profileOf.get(eater);
  if (index === undefined || sittings.length === 0) return seats;
  const { problem } = seats.stated;
  const weight = weighSittings(kitchen, seats.stated.sittings);
  const profiles = stayAway(problem, sittings, weight, { portions: 1, profile: { index, eaters: 1 } });
  const profileOf = new Map(seats.profileOf);
  if (profiles.length > problem.profiles.length) profileOf.set(eater, profiles.length - 1);
  return { stated: { ...seats.stated, problem: { ...problem, profiles } }, profileOf };
}

/** The problem without some of its sittings, of which no eater of a profile is at any. */
export function withoutSittings(problem: MenuProblem, gone: readonly number[]): MenuProblem {
  if (gone.length === 0) return problem;
  const changed = changeProblem(problem, NO_PLAN, [{ kind: "skip", sittings: gone }]);
  if (!changed.ok) throw new RangeError("a sitting that is not there could not be left out");
  return changed.value.problem;
}

/** The week with other people at its sittings, and what that makes of each eater's days. */
export function reseat(kitchen: Kitchen, stated: KitchenProblem, sittings: readonly DatedSitting[]): KitchenProblem {
  const wholePct = Object.values(kitchen.energySharePct).reduce((sum, pct) => sum + pct, 0);
  const shares = stated.shares.map((share): EaterShare => {
    const attended = sittings.flatMap(({ eaters }, k) => (eaters.includes(share.eater.id) ? [k] : []));
    const partOf = (day: number): number =>
      attended.reduce((sum, k) => {
        const sitting = sittings[k] as DatedSitting;
        return sitting.day === day ? sum + (kitchen.energySharePct[sitting.kind] ?? 0) / wholePct : sum;
      }, 0);
    return { ...share, sittings: attended, dayShare: share.dayShare.map((_, day) => partOf(day)) };
  });
  return { ...stated, sittings, shares };
}

/** The problem with the portions that a plan was made for; a pot takes at least those of one sitting. */
export function setPlates(problem: MenuProblem, portionsOf: (sitting: number) => number): MenuProblem {
  const sittings = problem.sittings.map((sitting, k): MenuSitting => ({ ...sitting, portions: portionsOf(k) }));
  const most = Math.max(problem.limits.batchPortions, ...sittings.map(({ portions }) => portions));
  return { ...problem, sittings, limits: { ...problem.limits, batchPortions: most } };
}
