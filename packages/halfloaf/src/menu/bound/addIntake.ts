import type { MenuBound, MenuDish, MenuProfile } from "../problem.ts";
import type { SittingKind } from "./groupSittings.ts";
import { widen } from "./isWithin.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * What each profile eats over the plan.
 *
 * A day's energy lies in [1 - t, 1 + t] of what is wanted; so does the sum over days. A component bound as a share of
 * its amount A, with the two steps of its price:
 *
 *     sum of component x / A + s1 + s2 >= 1,   0 <= s1 <= knee,   cost eaters (first s1 + rest s2)
 *
 * and with -s1 - s2 <= 1 for an upper bound. Cheap steps fill first; where the rest costs less than the first step the
 * model pays the lesser price, which is still none too high.
 */
export function addIntake(model: ModelBuilder, facts: WeeklyFacts): void {
  facts.problem.profiles.forEach((profile, p) => {
    addEnergy(model, facts, profile, p);
    profile.bounds.forEach((bound, b) => {
      addBound(model, facts, profile, p, bound, b);
    });
  });
}

function addEnergy(model: ModelBuilder, facts: WeeklyFacts, profile: MenuProfile, p: number): void {
  const wanted = profile.energyKj.reduce((sum, kj) => sum + Math.max(0, kj), 0);
  if (wanted <= 0) return;
  const tolerance = widen(facts.problem.limits.energyTolerance);
  const entries = eaten(
    facts,
    (kind) => kind.fed.includes(p),
    ({ energyKj }) => energyKj / wanted,
  );
  model.row(`energy ${p}`, 1 - tolerance, 1 + tolerance, entries);
}

function addBound(
  model: ModelBuilder,
  facts: WeeklyFacts,
  profile: MenuProfile,
  p: number,
  bound: MenuBound,
  b: number,
): void {
  if (bound.amount <= 0) return;
  const { shortfallFirstMinor, shortfallRestMinor, shortfallKnee } = facts.problem.worth;
  const atLeast = bound.kind === "at-least";
  const entries = eaten(
    facts,
    (kind) => kind.profiles.includes(p),
    ({ components }) => (components[bound.component] as number) / bound.amount,
  );
  if (!bound.hard) {
    const sign = atLeast ? 1 : -1;
    model.column(`s ${p} ${b} 1`, profile.eaters * shortfallFirstMinor, Math.max(0, shortfallKnee));
    model.column(`s ${p} ${b} 2`, profile.eaters * shortfallRestMinor, atLeast ? 1 : mostEaten(facts, entries));
    entries.push([`s ${p} ${b} 1`, sign], [`s ${p} ${b} 2`, sign]);
  }
  if (atLeast) model.atLeast(`bound ${p} ${b}`, 2 - widen(1), entries);
  else model.atMost(`bound ${p} ${b}`, widen(1), entries);
}

/** More of a component than any menu brings, as a share of its bound: dishes at every sitting in number as often as they may. */
function mostEaten(facts: WeeklyFacts, entries: readonly (readonly [string, number])[]): number {
  const sittings = facts.problem.sittings.length;
  return 1 + sittings * entries.reduce((most, [, share]) => Math.max(most, share), 0);
}

function eaten(
  facts: WeeklyFacts,
  attends: (kind: SittingKind) => boolean,
  amount: (dish: MenuDish) => number,
): [string, number][] {
  return facts.counts.flatMap((counts, r) =>
    counts.flatMap(({ kind, column }): [string, number][] =>
      attends(facts.kinds[kind] as SittingKind) ? [[column, amount(facts.problem.dishes[r] as MenuDish)]] : [],
    ),
  );
}
