import type { MenuWish } from "../problem.ts";
import type { SittingKind } from "./groupSittings.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Wishes in counts of a whole kind of sitting, where a plan counts some sittings of it only. For wishes for the dishes R,
 * with S the sittings they speak of and C the kinds that have any of them:
 *
 *     sum over r in R, c in C of x[r,c] >= least - w,   <= most + w + sittings of C that are not in S
 *
 * where w costs `missMinor` and is left out of a wish that must hold. Wishes that must hold for the same dishes, on
 * sittings that share none (one of two days running), are added up to one row.
 */
export function addWishes(model: ModelBuilder, facts: WeeklyFacts): void {
  joinWishes(facts.problem.wishes ?? []).forEach(({ dishes, sittings, least, most, missMinor }, w) => {
    const wished = new Set(sittings);
    const kinds = facts.kinds.flatMap((kind, c) => (kind.sittings.some((k) => wished.has(k)) ? [c] : []));
    const among = new Set(dishes);
    const counts = facts.counts.flat().filter(({ dish, kind }) => among.has(dish) && kinds.includes(kind));
    const entries = counts.map(({ column }) => [column, 1] as const);
    const miss =
      missMinor === undefined ? [] : [model.column(`w ${w}`, missMinor, (least ?? 0) + facts.problem.sittings.length)];
    const others = kinds.reduce((sum, c) => sum + countOthers(facts.kinds[c] as SittingKind, wished), 0);
    if (least !== undefined && least > 0)
      model.atLeast(`wish least ${w}`, least, [...entries, ...miss.map((column) => [column, 1] as const)]);
    if (most !== undefined && most < sittings.length)
      model.atMost(`wish most ${w}`, most + others, [...entries, ...miss.map((column) => [column, -1] as const)]);
  });
}

function countOthers({ sittings }: SittingKind, wished: ReadonlySet<number>): number {
  return sittings.filter((k) => !wished.has(k)).length;
}

/** The wishes as the rows state them: those with a price as they are; of those that must hold, the ones for the same dishes and without a sitting in common as one. */
export function joinWishes(wishes: readonly MenuWish[]): MenuWish[] {
  const joined: MenuWish[] = [];
  const openAt = new Map<string, number[]>();
  for (const wish of wishes) {
    const ends = [wish.least === undefined ? "" : "least", wish.most === undefined ? "" : "most"].join();
    const key = wish.missMinor === undefined ? `${wish.dishes.join()} ${ends}` : undefined;
    const open = key === undefined ? [] : (openAt.get(key) ?? []);
    const at = open.find((i) => !joined[i]?.sittings.some((k) => wish.sittings.includes(k)));
    if (at !== undefined) joined[at] = join(joined[at] as MenuWish, wish);
    else {
      if (key !== undefined) openAt.set(key, [...open, joined.length]);
      joined.push(wish);
    }
  }
  return joined;
}

function join(a: MenuWish, b: MenuWish): MenuWish {
  return {
    dishes: a.dishes,
    sittings: [...a.sittings, ...b.sittings],
    ...(a.least !== undefined && b.least !== undefined && { least: a.least + b.least }),
    ...(a.most !== undefined && b.most !== undefined && { most: a.most + b.most }),
  };
}
