import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { FRESH, LEFTOVER, tabulateMay } from "../search/tabulateMay.ts";

/** A sitting that no dish can be cooked for or left over to. */
export interface Gap {
  readonly sitting: number;
  /** Minutes more with which the quickest dish for it could be cooked; absent where minutes are not all it lacks. */
  readonly moreMinutes?: number;
}

/** The sittings without any dish, each with the minutes that would give it one. */
export function findGaps(problem: MenuProblem): Gap[] {
  const may = tabulateMay(problem);
  const gaps = problem.sittings.flatMap(({ dishes }, k) => (dishes.some((r) => isHad(problem, may, r, k)) ? [] : [k]));
  if (gaps.length === 0) return [];
  const sittings = problem.sittings.map((sitting) => ({ ...sitting, minutes: Number.POSITIVE_INFINITY }));
  const mayUnhurried = tabulateMay({ ...problem, sittings });
  return gaps.map((sitting) => {
    const { dishes, portions, minutes } = problem.sittings[sitting] as MenuSitting;
    const needed = dishes.flatMap((r) => {
      const elapsed = problem.dishes[r]?.elapsed;
      const isCooked = isFresh(problem, mayUnhurried, r, sitting);
      return elapsed && isCooked ? [elapsed.fixed + elapsed.perPortion * portions] : [];
    });
    return needed.length === 0 ? { sitting } : { sitting, moreMinutes: Math.min(...needed) - minutes };
  });
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
