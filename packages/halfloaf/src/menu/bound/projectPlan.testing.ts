import { openLots } from "../check/openLots.ts";
import { readPlan } from "../check/readPlan.ts";
import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuProblem } from "../problem.ts";
import { joinWishes } from "./addWishes.ts";
import type { Supply } from "./listSupplies.ts";
import { gatherWeeklyFacts, type WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * The point of the weekly model that a plan stands for, as values of its columns; those that are 0 may be absent.
 * Packs that are bought and never opened are left out unless their credit is above their price, as are more opened
 * packs than the week could use.
 */
export function projectPlan(problem: MenuProblem, plan: MenuPlan): Map<string, number> {
  const facts = gatherWeeklyFacts(problem);
  const point = new Map<string, number>();
  const add = (column: string, value: number): void => void point.set(column, (point.get(column) ?? 0) + value);
  projectServings(facts, plan, add);
  for (const trip of plan.trips) {
    add(`t ${trip}`, 1);
    add(`ts ${problem.trips[trip]?.shop}`, 1);
  }
  projectFoods(facts, plan, add, point);
  projectIntake(facts, plan, add);
  projectWishes(problem, plan, add);
  return point;
}

type Add = (column: string, value: number) => void;

function projectServings(facts: WeeklyFacts, plan: MenuPlan, add: Add): void {
  const servings = new Map<number, number>();
  const marked = new Set<number>();
  for (const { dish, sittings } of plan.batches) {
    for (const sitting of sittings) {
      const kind = facts.kinds.findIndex((one) => one.sittings.includes(sitting));
      add(`x ${dish} ${kind}`, 1);
      servings.set(dish, (servings.get(dish) ?? 0) + 1);
      if (facts.kinds[kind]?.variety) marked.add(dish);
    }
  }
  for (const [dish, count] of servings) {
    add(`l ${dish} ${count}`, 1);
    add(`y ${dish}`, 1);
  }
  for (const dish of marked) add(`v ${dish}`, 1);
  for (const family of new Set([...marked].map((dish) => familyOf(facts.problem, dish)))) add(`u ${family}`, 1);
}

function projectFoods(facts: WeeklyFacts, plan: MenuPlan, add: Add, point: ReadonlyMap<string, number>): void {
  const read = readPlan(facts.problem, plan);
  const lots = openLots(facts.problem, read);
  facts.supplies.forEach((supplies, food) => {
    const worths = [...new Set(supplies.filter(({ massG }) => massG > 0).map(({ leftMinorPerG }) => leftMinorPerG))];
    const scale = 1 / Math.max(1, ...supplies.map(({ massG }) => massG));
    const lotsOfFood = facts.problem.lots.map((lot, index) => ({ lot, index })).filter(({ lot }) => lot.food === food);
    supplies.forEach((supply, i) => {
      const stories = lots.filter(({ path }) =>
        supply.pack === undefined
          ? path[0] === "lots" && path[1] === lotsOfFood[i]?.index
          : path[0] === "purchases" && plan.purchases[path[1] as number]?.pack === supply.pack,
      );
      const usedG = stories.reduce((sum, story) => sum + story.usedG, 0);
      if (supply.packs <= 1 && supply.massG > 0)
        add(`g ${food} ${worths.indexOf(supply.leftMinorPerG)}`, usedG * scale);
      if (supply.given) return;
      const opened = stories.filter((story) => story.opened).length;
      const units = supply.pack === undefined ? opened : countUnits(facts, plan, supply, opened);
      const enough =
        supply.unitMinor < 0 || supply.massG === 0
          ? supply.most
          : Math.ceil((facts.reachG[food] as number) / supply.massG);
      add(`n ${food} ${i}`, Math.min(units, enough));
    });
    const any = supplies.some((supply, i) => supply.massG > 0 && (point.get(`n ${food} ${i}`) ?? 0) >= 1);
    if (any) add(`z ${food}`, 1);
  });
}

/** Units of a supply: kept packs, bundles as often as they were paid for, single packs for what is opened besides. */
function countUnits(facts: WeeklyFacts, plan: MenuPlan, supply: Supply, opened: number): number {
  const bought = plan.purchases.filter(({ pack }) => pack === supply.pack);
  const total = bought.reduce((sum, { count }) => sum + count, 0);
  if (supply.massG === 0) return total - opened;
  const bundle = facts.supplies[supply.food]?.find((other) => other.pack === supply.pack && other.packs > 1);
  if (bundle === undefined) return opened;
  const ofTrip = new Map<number, number>();
  for (const { trip, count } of bought) ofTrip.set(trip, (ofTrip.get(trip) ?? 0) + count);
  const bundles = [...ofTrip.values()].reduce((sum, count) => sum + Math.floor(count / bundle.packs), 0);
  return supply === bundle ? bundles : total - bundles * bundle.packs;
}

function projectIntake(facts: WeeklyFacts, plan: MenuPlan, add: Add): void {
  const { profiles, dishes, worth } = facts.problem;
  profiles.forEach((profile, p) => {
    profile.bounds.forEach((bound, b) => {
      if (bound.amount <= 0 || bound.hard) return;
      let eaten = 0;
      for (const { dish, sittings } of plan.batches) {
        const attended = sittings.filter((sitting) => profile.sittings.includes(sitting)).length;
        eaten += attended * (dishes[dish]?.components[bound.component] as number);
      }
      const missing = Math.max(
        0,
        (bound.kind === "at-least" ? bound.amount - eaten : eaten - bound.amount) / bound.amount,
      );
      add(`s ${p} ${b} 1`, Math.min(missing, worth.shortfallKnee));
      add(`s ${p} ${b} 2`, Math.max(0, missing - worth.shortfallKnee));
    });
  });
}

function projectWishes({ wishes = [] }: MenuProblem, plan: MenuPlan, add: Add): void {
  joinWishes(wishes).forEach(({ dishes, sittings, least = 0, most = Number.POSITIVE_INFINITY, missMinor }, w) => {
    const served = plan.batches.flatMap((batch) => (dishes.includes(batch.dish) ? batch.sittings : []));
    const count = served.filter((k) => sittings.includes(k)).length;
    if (missMinor !== undefined) add(`w ${w}`, Math.max(0, least - count, count - most));
  });
}
