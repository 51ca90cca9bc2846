import { describe, expect, test } from "vitest";
import { makeMaking, makeStep } from "../../dish/dish.testing.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { dishOf, makeKit, stateWork, timeWork, wishFor } from "./cooking.testing.ts";
import { listCookings } from "./listCookings.ts";

const { tables } = wishFor([]);
const fry = (id: string) =>
  dishOf(id, [makeStep("fry", 6, { kind: "fry", hands: "eye", kit: ["ring", "pan"], foods: ["barley"] })]);
const either = dishOf("either", [makeStep("cut", 4, { kind: "cut", kit: ["board"], foods: ["carrot", "chicken"] })], {
  makings: [{ ...makeMaking("carrot", 100), alternatives: [{ food: "chicken", amount: { value: 90, unit: "g" } }] }],
  main: "carrot",
});
const dishes = [fry("first"), fry("second"), either];

type Sitting = WeekPlan["sittings"][number];
const sitting = (date: string, eater: string, batch: number, over: Partial<Sitting> = {}) =>
  ({ date, kind: "evening", eaters: [eater], batch, leftover: false, packed: false, ...over }) as Sitting;
const batch = (dish: string, portions: number, foods: readonly string[] = []) =>
  ({ dish, portions, uses: foods.map((food) => ({ food })) }) as unknown as WeekPlan["batches"][number];
const kitchen = {
  sittings: [
    { kind: "evening" as const, on: [1, 2, 3], eaters: ["ada"], minutes: 40, heat: true, packed: false },
    { kind: "evening" as const, on: [1, 2, 3], eaters: ["bo"], minutes: 25, heat: true, packed: false },
  ],
};
const list = (sittings: Sitting[], batches: WeekPlan["batches"]) =>
  listCookings({ sittings, batches }, kitchen, { dishes });

describe("the cookings of a week", () => {
  test("what is begun for one sitting is one cooking, whoever eats it, with the fewest minutes at hand", () => {
    const cookings = list(
      [sitting("2026-11-30", "ada", 0), sitting("2026-11-30", "bo", 1), sitting("2026-12-01", "ada", 2)],
      [batch("first", 3), batch("second", 1), batch("either", 1)],
    );
    expect(cookings.map(({ date, batches, atHandMinutes }) => [date, batches, atHandMinutes])).toEqual([
      ["2026-11-30", [0, 1], 25],
      ["2026-12-01", [2], 40],
    ]);
    expect(cookings[0]?.dishes.map(({ dish, portions }) => [dish.id, portions])).toEqual([
      ["first", 3],
      ["second", 1],
    ]);
  });

  test("what is taken along is cooked apart; leftovers and unknown dishes are no cooking", () => {
    const cookings = list(
      [
        sitting("2026-11-30", "ada", 0),
        sitting("2026-11-30", "bo", 1, { packed: true }),
        sitting("2026-12-01", "ada", 0, { leftover: true }),
        sitting("2026-12-01", "bo", 2),
      ],
      [batch("first", 2), batch("second", 1), batch("unheard-of", 1)],
    );
    expect(cookings.map(({ batches, packed }) => [batches, packed])).toEqual([
      [[0], false],
      [[1], true],
    ]);
  });

  test("cooked at once they take as long as their one order of work, more than the longer alone", () => {
    const [cooking] = list(
      [sitting("2026-11-30", "ada", 0), sitting("2026-11-30", "bo", 1)],
      [batch("first", 1), batch("second", 1)],
    );
    const { plan } = timeWork({ ...wishFor([], { kit: makeKit({ pans: 1 }) }), dishes: cooking?.dishes ?? [] });
    expect(plan.serveMinutes).toBe(6 + 3 + 6);
  });

  test("a making that was replaced is handled as what went in", () => {
    const boardOf = (foods: readonly string[]) => {
      const [cooking] = list([sitting("2026-11-30", "ada", 0)], [batch("either", 1, foods)]);
      return stateWork({ ...wishFor([]), tables, dishes: cooking?.dishes ?? [] }).problem.steps[0]?.board;
    };
    expect([boardOf(["carrot"]), boardOf(["chicken"])]).toEqual(["ready", "raw"]);
  });

  test("minutes at hand are left out where the kitchen has the sitting no more", () => {
    const [cooking] = list([sitting("2026-12-05", "ada", 0)], [batch("first", 1)]);
    expect(cooking).toBeDefined();
    expect(cooking && "atHandMinutes" in cooking).toBe(false);
  });
});
