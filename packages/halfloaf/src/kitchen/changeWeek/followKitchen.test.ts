import { describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays, type CivilDate, type Parsed } from "../../quantity/index.ts";
import { findLackingKit } from "../fitDish.ts";
import type { Kitchen } from "../kitchen.ts";
import { platesAgainst } from "../platesAgainst.ts";
import { planAccepted, tables } from "../record/acceptedWeek.testing.ts";
import { followWeek } from "../record/followWeek.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { type ChangedKitchenWeek, changeWeek } from "./changeWeek.ts";
import { kitchenChanges } from "./kitchenChanges.ts";
import type { WeekChange } from "./WeekChange.ts";
import { writeWeek } from "./writeWeek.ts";

const { kitchen, week } = planAccepted();
const [first, second] = kitchen.eaters as [Kitchen["eaters"][number], Kitchen["eaters"][number]];
const days = Array.from({ length: week.days }, (_, day) => addDays(week.from, day));

type Avoided = Kitchen["eaters"][number]["avoids"];

/** Money, ways and minutes enough for any menu, so that what is asked about is what is followed. */
const roomy: Kitchen = {
  ...kitchen,
  limits: { ...kitchen.limits, budgetMinor: 50_000, tripsPerWeek: 14, handsOnMinutes: 300, energyTolerancePct: 20 },
};

/** The kitchen in which one eater does not take these any more. */
const avoiding = (eater: string, avoids: Partial<Avoided>): Kitchen => ({
  ...roomy,
  eaters: kitchen.eaters.map((one) => (one.id === eater ? { ...one, avoids: { ...one.avoids, ...avoids } } : one)),
});

function outOf<Value>(parsed: Parsed<Value>): Value {
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.value;
}

function follow(now: Kitchen, today: CivilDate, known: readonly WeekChange[] = []): ChangedKitchenWeek {
  const change = (changes: readonly WeekChange[]) => changeWeek(kitchen, tables, week, changes, today);
  return outOf(followWeek(change, [], [...known, ...kitchenChanges(kitchen, now)])).changed;
}

function planAgain(changed: ChangedKitchenWeek): WeekPlan {
  const outcome = replan(changed.week, { judge: checkPlan, moves: 1500, wideMoves: 0, farMoves: 30_000 });
  if (outcome.kind !== "planned") {
    const { leastBroken, gaps } = outcome;
    const faults = leastBroken === undefined ? gaps : checkPlan(changed.week.problem, leastBroken).faults;
    throw new Error(`no menu was found: ${JSON.stringify(faults)}`);
  }
  expect(checkPlan(changed.week.problem, outcome.plan).faults).toEqual([]);
  const { moves, moneyMinor } = outcome;
  return writeWeek(kitchen, tables, changed, outcome.plan, { seed: 1, moves, moneyMinor });
}

const addUp = ({ accounts }: WeekPlan): void =>
  expect(accounts.openingMinor + accounts.tillMinor).toBe(
    accounts.platesMinor + accounts.wasteMinor + accounts.carryOverMinor,
  );

/** Foods of plates to come that an eater is to have, most often eaten first. */
function foodsFrom(today: CivilDate, eater: string): string[] {
  const counted = new Map<string, number>();
  for (const { date, eaters, batch } of week.sittings)
    if (date >= today && eaters.includes(eater))
      for (const { food } of week.batches[batch]?.uses ?? []) counted.set(food, (counted.get(food) ?? 0) + 1);
  return [...counted].sort((a, b) => b[1] - a[1]).map(([food]) => food);
}

/** Of what went into a cooking the food that fewest dishes are made with. */
function rarestOf({ uses }: WeekPlan["batches"][number]): string {
  const countOf = (food: string): number =>
    tables.dishes.filter(({ makings }) => makings.some((making) => making.food === food)).length;
  return [...uses].sort((a, b) => countOf(a.food) - countOf(b.food))[0]?.food as string;
}

describe("a kitchen that was edited after its week was accepted", () => {
  const today = days[2] as CivilDate;

  test("has no plate to come with what an eater does not take any more, and what is over stays", () => {
    const food = foodsFrom(today, first.id)[0] as string;
    const now = avoiding(first.id, { foods: [food] });
    const before = platesAgainst(week, now, tables, today);
    expect(before.length).toBeGreaterThan(0);
    expect(before.every(({ eater, foods }) => eater === first.id && foods.includes(food))).toBe(true);
    const mended = planAgain(follow(now, today));
    expect(platesAgainst(mended, now, tables, today)).toEqual([]);
    for (const date of days.filter((each) => each < today))
      expect(mended.sittings.filter((each) => each.date === date).map(({ dish }) => dish)).toEqual(
        week.sittings.filter((each) => each.date === date).map(({ dish }) => dish),
      );
    addUp(mended);
    // The week that was planned again is read in the kitchen of that day, whatever its first days had.
    expect(outOf(changeWeek(now, tables, mended, [], today)).stated.sittings.length).toBe(week.sittings.length);
  });

  test("a diet is kept to likewise, where one eats less than before and where one eats more", () => {
    const vegan = { ...roomy, eaters: kitchen.eaters.map((one) => ({ ...one, diet: "vegetarian" as const })) };
    const mended = planAgain(follow(vegan, today));
    expect(platesAgainst(mended, vegan, tables, today)).toEqual([]);
    const changed = outOf(changeWeek(vegan, tables, week, kitchenChanges(vegan, kitchen), today));
    const foods = new Set(changed.stated.dishes.flatMap(({ makings }) => makings.map(({ food }) => food)));
    expect([...foods].some((food) => tables.foods.get(food)?.diet === "meat")).toBe(true);
  });

  test("what is cooked already and not for whoever was to eat it is not eaten, and counts as waste", () => {
    const leftover = week.sittings.find(({ leftover: isLeft, date }) => isLeft && date > week.from);
    if (leftover === undefined) throw new Error("nothing is left over");
    const cooked = week.batches[leftover.batch] as WeekPlan["batches"][number];
    const eater = leftover.eaters[0] as string;
    const food = rarestOf(cooked);
    const now = avoiding(eater, { foods: [food] });
    const mended = planAgain(follow(now, leftover.date));
    expect(platesAgainst(mended, now, tables, leftover.date)).toEqual([]);
    const wasted = ({ lots }: WeekPlan): number =>
      lots.reduce((sum, lot) => (lot.food === food ? sum + lot.wastedG : sum), 0);
    expect(wasted(mended)).toBeGreaterThan(wasted(week));
    addUp(mended);
  });

  test("of today only what is eaten stays; what is cooked and not eaten yet is lost", () => {
    const last = days.at(-1) as CivilDate;
    const at = week.sittings.find(({ date, leftover }) => date === last && !leftover);
    if (at === undefined) throw new Error("nothing is cooked on the last day");
    const food = rarestOf(week.batches[at.batch] as WeekPlan["batches"][number]);
    const now = avoiding(at.eaters[0] as string, { foods: [food] });
    const told = (done: "cooked" | "eaten"): WeekChange => ({
      kind: "want",
      at: { date: last, kind: at.kind },
      dish: at.dish,
      done,
    });
    const cooked = follow(now, last, [told("cooked")]);
    expect(cooked.week.losses.length).toBeGreaterThan(0);
    expect(platesAgainst(planAgain(cooked), now, tables, last)).toEqual([]);
    const eaten = follow(now, last, [told("eaten")]);
    expect(eaten.week.losses).toEqual(follow(kitchen, last).week.losses);
    const k = eaten.stated.sittings.findIndex(({ date, kind }) => date === last && kind === at.kind);
    const ways = eaten.week.problem.sittings[k]?.dishes.map((dish) => eaten.week.problem.dishes[dish]?.id);
    expect(new Set(ways)).toEqual(new Set([at.dish]));
  });

  test("seats nobody who does not sit down any more, and leaves those whom the record keeps away", () => {
    const evening = kitchen.sittings.filter(({ kind }) => kind === "evening");
    expect(evening.length).toBeGreaterThan(0);
    const sittings = kitchen.sittings.map((sitting) =>
      sitting.kind === "evening" ? { ...sitting, eaters: sitting.eaters.filter((id) => id !== first.id) } : sitting,
    );
    const now = { ...kitchen, sittings: sittings.filter(({ eaters }) => eaters.length > 0) };
    const skipped: WeekChange = { kind: "skip", at: { date: today, kind: "evening", eater: first.id } };
    for (const known of [[], [skipped]]) {
      const changed = follow(now, today, known);
      const seated = changed.stated.sittings.filter(({ date, kind }) => date >= today && kind === "evening");
      expect(seated.flatMap(({ eaters }) => eaters)).not.toContain(first.id);
      const mended = planAgain(changed);
      addUp(mended);
      const past = mended.sittings.filter(({ date, kind }) => date < today && kind === "evening");
      expect(past.map(({ eaters }) => eaters)).toEqual(
        week.sittings.filter(({ date, kind }) => date < today && kind === "evening").map(({ eaters }) => eaters),
      );
    }
    const gone = follow({ ...kitchen, eaters: [first] }, today);
    const left = gone.stated.sittings.filter(({ date }) => date >= today).flatMap(({ eaters }) => eaters);
    expect(left).not.toContain(second.id);
    expect(
      planAgain(gone)
        .sittings.filter(({ date }) => date >= today)
        .every(({ eaters }) => !eaters.includes(second.id)),
    ).toBe(true);
  });

  test("cooks nothing that its kit is missing for, nor more than the pot takes, and what is cooked stays", () => {
    const kit = { ...kitchen.kit, rings: 1, oven: false, potPortions: 2 };
    const changed = follow({ ...roomy, kit }, today);
    const mended = planAgain(changed);
    const lacking = (dish: string): boolean => {
      const found = tables.dishes.find(({ id }) => id === dish);
      return found !== undefined && findLackingKit(found, kit) !== undefined;
    };
    const cooked = mended.batches.filter(({ date, putBy }) => date >= today && putBy === undefined);
    expect(cooked.filter(({ dish }) => lacking(dish))).toEqual([]);
    const most = Math.max(2, ...mended.sittings.map(({ portions }) => portions));
    const before = week.batches.filter(({ date }) => date < today);
    const largest = Math.max(most, ...before.map(({ portions }) => portions));
    expect(changed.week.problem.limits.batchPortions).toBeCloseTo(largest, 6);
    expect(mended.batches.filter(({ date }) => date < today)).toEqual(before);
    addUp(mended);
  });

  test("a dish that is asked for and not for whoever sits there is refused", () => {
    const at = week.sittings.find(({ date }) => date > today) as WeekPlan["sittings"][number];
    const food = week.batches[at.batch]?.uses[0]?.food as string;
    const now = avoiding(at.eaters[0] as string, { foods: [food] });
    const want: WeekChange = {
      kind: "want",
      at: { date: at.date, kind: at.kind, eater: at.eaters[0] as string },
      dish: at.dish,
    };
    const ways = changeWeek(kitchen, tables, week, [want, ...kitchenChanges(kitchen, now)], today);
    const codes = ways.ok
      ? platesAgainst(planAgain(ways.value), now, tables, today)
      : ways.issues.map(({ code }) => code);
    expect([[], ["change-dish-unfit"]]).toContainEqual(codes);
  });
});
