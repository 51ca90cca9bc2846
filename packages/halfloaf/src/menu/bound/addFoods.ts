import type { Supply } from "./listSupplies.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Supplies of each food over the plan.
 *
 *     n[f,i]   units of supply i that are opened (see Supply for what a unit costs)
 *     g[f,e]   grams used from supplies whose left-over is worth e a gram, where there are several such worths
 *     z[f]     1 where any unit beyond the given stock is opened
 *
 *     sum over e of g[f,e] = sum of a[r] portions x[r,c],   g[f,e] <= sum of mass n[f,i] over the supplies of that worth
 *
 *     z[f] <= sum of n[f,i],   y[r] <= z[f] where one serving of r takes more of f than is given
 *
 * With one worth only, g is left out: the worth of what is used stands at x, and the mass of the units covers it.
 * Units of a lot of the start number at most one. The last rows follow from the others where n is whole; they are lazy.
 */
export function addFoods(model: ModelBuilder, facts: WeeklyFacts): void {
  facts.supplies.forEach((supplies, food) => {
    addUnits(model, facts, supplies, food);
    addUse(model, facts, supplies, food);
    if (facts.users[food]?.length) addNeeds(model, facts, supplies, food);
  });
}

export function unitColumn(food: number, i: number): string {
  return `n ${food} ${i}`;
}

function addUnits(model: ModelBuilder, facts: WeeklyFacts, supplies: readonly Supply[], food: number): void {
  const reachG = facts.reachG[food] as number;
  supplies.forEach((supply, i) => {
    if (supply.given) return;
    const enough = supply.unitMinor < 0 || supply.massG === 0 ? supply.most : Math.ceil(reachG / supply.massG);
    model.column(
      unitColumn(food, i),
      supply.unitMinor,
      Math.min(supply.most, enough),
      true,
      supply.mustUseG > 0 ? 1 : 0,
    );
  });
  limitPacks(model, supplies, food);
}

/** Packs, loose and in bundles, opened or kept, within their common limit. */
function limitPacks(model: ModelBuilder, supplies: readonly Supply[], food: number): void {
  const ofPack = new Map<number, [string, number][]>();
  supplies.forEach(({ pack, packs }, i) => {
    if (pack !== undefined) ofPack.set(pack, [...(ofPack.get(pack) ?? []), [unitColumn(food, i), packs]]);
  });
  for (const [pack, entries] of ofPack) {
    const most = supplies.find((supply) => supply.pack === pack && supply.packs === 1)?.most;
    if (most !== undefined && entries.length > 1) model.atMost(`limit ${pack}`, most, entries);
  }
}

function addUse(model: ModelBuilder, facts: WeeklyFacts, supplies: readonly Supply[], food: number): void {
  const uses = (facts.users[food] ?? []).flatMap(({ dish, massG }) =>
    (facts.counts[dish] ?? []).map(({ column, portions }) => ({ column, massG: massG * portions })),
  );
  const worths = [...new Set(supplies.filter(({ massG }) => massG > 0).map(({ leftMinorPerG }) => leftMinorPerG))];
  const mustUse = supplies.some(({ mustUseG }) => mustUseG > 0);
  const scale = 1 / Math.max(1, ...supplies.map(({ massG }) => massG));
  const supplied = (of: readonly Supply[]): { given: number; entries: [string, number][] } => ({
    given: of.reduce((sum, supply) => sum + (supply.given ? supply.massG : 0), 0),
    entries: supplies.flatMap((supply, i): [string, number][] =>
      of.includes(supply) && !supply.given && supply.massG > 0 ? [[unitColumn(food, i), supply.massG * scale]] : [],
    ),
  });
  if (worths.length <= 1 && !mustUse) {
    for (const { column, massG } of uses) model.charge(column, (worths[0] ?? 0) * massG);
    const { given, entries } = supplied(supplies);
    model.atLeast(`supply ${food}`, -(given + 0.01) * scale, [
      ...entries,
      ...uses.map(({ column, massG }) => [column, -massG * scale * (1 - 2e-6)] as const),
    ]);
    return;
  }
  const reachG = facts.reachG[food] as number;
  const used = worths.map((worth, e) => {
    const of = supplies.filter(({ leftMinorPerG }) => leftMinorPerG === worth);
    const must = of.reduce((sum, { mustUseG }) => sum + mustUseG, 0);
    const column = model.column(
      `g ${food} ${e}`,
      worth / scale,
      scale * of.reduce((sum, supply) => sum + Math.min(2 * reachG + must + 1, supply.massG * supply.most), 0),
      false,
      must * scale,
    );
    const { given, entries } = supplied(of);
    model.atLeast(`supply ${food} ${e}`, -(given + 0.01) * scale, [...entries, [column, -1]]);
    return [column, 1] as const;
  });
  const slack = 0.01 * scale;
  model.atLeast(`use ${food}`, -slack, [
    ...used,
    ...uses.map(({ column, massG }) => [column, -massG * scale * (1 - 2e-6)] as const),
  ]);
  model.atMost(`no more ${food}`, slack, [
    ...used,
    ...uses.map(({ column, massG }) => [column, -massG * scale * (1 + 2e-6)] as const),
  ]);
}

function addNeeds(model: ModelBuilder, facts: WeeklyFacts, supplies: readonly Supply[], food: number): void {
  const opened = supplies.flatMap((supply, i) =>
    supply.given || supply.massG === 0 ? [] : [[unitColumn(food, i), 1] as const],
  );
  const givenG = supplies.reduce((sum, supply) => sum + (supply.given ? supply.massG : 0), 0);
  model.column(`z ${food}`, 0, 1, true);
  model.atLeast(`any ${food}`, 0, [...opened, [`z ${food}`, -1]]);
  for (const { dish, massG } of facts.users[food] ?? []) {
    const first = massG * (facts.servings[dish]?.fewestPortions[1] as number);
    if (first * (1 - 2e-6) > givenG + 0.01)
      model.lazy(`need ${food} ${dish}`, 0, [
        [`z ${food}`, 1],
        [`y ${dish}`, -1],
      ]);
  }
}
