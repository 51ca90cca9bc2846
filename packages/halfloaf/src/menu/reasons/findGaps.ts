import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { FRESH, LEFTOVER, tabulateMay } from "../search/tabulateMay.ts";

/** A sitting that no dish can be cooked for or left over to. */
export interface Gap {
  readonly sitting: number;
  /** Minutes more with which the quickest dish for it could be cooked; absent where more minutes would give it none. */
  readonly moreMinutes?: number;
  /** True where it also, or alone, lacks a trip that comes home before it: what trips bring later would make a dish. */
  readonly isBeforeTrips?: true;
}

/** The sittings without any dish, each with what would give it one: minutes, or a trip that comes home before it. */
export function findGaps(problem: MenuProblem): Gap[] {
  const may = tabulateMay(problem);
  const gaps = problem.sittings.flatMap(({ dishes }, k) => (dishes.some((r) => isHad(problem, may, r, k)) ? [] : [k]));
  if (gaps.length === 0) return [];
  const unhurried = problem.sittings.map((sitting) => ({ ...sitting, minutes: Number.POSITIVE_INFINITY }));
  const shopped = problem.trips.map((trip) => ({ ...trip, period: 0 }));
  const ways = [
    { isBeforeTrips: false, stated: { ...problem, sittings: unhurried } },
    { isBeforeTrips: true, stated: { ...problem, trips: shopped } },
    { isBeforeTrips: true, stated: { ...problem, sittings: unhurried, trips: shopped } },
  ].map((way) => ({ ...way, may: tabulateMay(way.stated) }));
  return gaps.map((sitting): Gap => {
    const { dishes } = problem.sittings[sitting] as MenuSitting;
    const way = ways.find(({ may: mayThen }) => dishes.some((r) => isFresh(problem, mayThen, r, sitting)));
    if (way === undefined) return { sitting };
    const moreMinutes = lackedMinutes(problem, way.may, sitting);
    return {
      sitting,
      ...(moreMinutes > 0 && { moreMinutes }),
      ...(way.isBeforeTrips && { isBeforeTrips: true }),
    };
  });
}

/** By how much the quickest dish that may be cooked for a sitting goes beyond its minutes. */
function lackedMinutes(problem: MenuProblem, may: Uint8Array, sitting: number): number {
  const { dishes, portions, minutes } = problem.sittings[sitting] as MenuSitting;
  const needed = dishes.flatMap((r) => {
    const elapsed = problem.dishes[r]?.elapsed;
    return elapsed && isFresh(problem, may, r, sitting) ? [elapsed.fixed + elapsed.perPortion * portions] : [];
  });
  return Math.min(...needed) - minutes;
}

function isFresh({ sittings }: MenuProblem, may: Uint8Array, dish: number, k: number): boolean {
  return ((may[dish * sittings.length + k] as number) & FRESH) !== 0;
}

/** True where a dish can be cooked for a sitting, or for an earlier one from which it keeps. */
function isHad(problem: MenuProblem, may: Uint8Array, dish: number, k: number): boolean {
  if (isFresh(problem, may, dish, k)) return true;
  const { sittings, dishes, limits } = problem;
  if (((may[dish * sittings.length + k] as number) & LEFTOVER) === 0) return false;
  const { day, portions } = sittings[k] as MenuSitting;
  const { keepsDays } = dishes[dish] as MenuDish;
  return sittings.some(
    (earlier, at) =>
      at < k &&
      day - earlier.day <= keepsDays &&
      earlier.portions + portions <= limits.batchPortions + 1e-9 &&
      isFresh(problem, may, dish, at),
  );
}
