import type { WeekPlan } from "halfloaf/kitchen";
import { type LimitKind, type WhyImpossible, whyNot } from "halfloaf/menu";
import { SEED } from "./effort.ts";
import { hindranceOf } from "./hindranceOf.ts";
import type { Stage } from "./Stage.ts";
import type { AbsenceTold, Seat, TryTold } from "./Told.ts";
import { tellInstead } from "./tellInstead.ts";

/** A dish that is on no plate is tried at so many sittings. */
const MOST_TRIED = 3;

/**
 * Why a dish is on no plate of a week: where it is meant for, what hinders it there, or what it would cost. Told anew with each
 * sitting that it was tried at.
 */
export function* whyAbsent(stage: Stage, week: WeekPlan, dish: string): Generator<AbsenceTold, void> {
  const served = week.sittings.filter((sitting) => sitting.dish === dish);
  if (served.length > 0) return yield { kind: "served", at: served.map(toSeat) };
  const fits = stage.tables.dishes.find(({ id }) => id === dish)?.fits ?? [];
  const meant = stage.before.stated.sittings.flatMap(({ kind, putBy }, k) =>
    !putBy && fits.includes(kind) ? [k] : [],
  );
  if (meant.length === 0) return yield { kind: "nowhere" };
  // Where it could be at all is more worth knowing than where it can't.
  const open = meant.filter((k) => hindranceOf(stage, k, dish).hindrance === undefined);
  const asked = (open.length > 0 ? open : meant).slice(0, MOST_TRIED);
  const tries: TryTold[] = [];
  for (const k of asked) {
    tries.push(tryAt(stage, week, dish, k));
    yield { kind: "absent", tries: [...tries] };
  }
}

function tryAt(stage: Stage, week: WeekPlan, dish: string, k: number): TryTold {
  const { problem, sittings } = stage.before.stated;
  const seat = toSeat(sittings[k] as Seat);
  const { hindrance } = hindranceOf(stage, k, dish);
  const at = problem.sittings[k]?.dishes.find((each) => problem.dishes[each]?.id === dish);
  if (hindrance !== undefined || at === undefined) return { seat, kind: "hindered", ...(hindrance && { hindrance }) };
  const why = whyNot(problem, stage.before.plan, at, k, { seed: SEED });
  if (why.kind === "dearer") return { seat, kind: "fits", ...tellInstead(stage, week, why.found, why.extraMinor) };
  return why.kind === "breaks" ? { seat, kind: "breaks", limits: limitsOf(why.why) } : { seat, kind: "hindered" };
}

function limitsOf(why: WhyImpossible): LimitKind[] {
  if (why.kind === "gaps") return why.gaps.some(({ moreMinutes }) => moreMinutes !== undefined) ? ["elapsed"] : [];
  return why.kind === "collision" ? [...new Set(why.collisions.flat())] : [];
}

function toSeat({ date, kind }: Seat): Seat {
  return { date, kind };
}
