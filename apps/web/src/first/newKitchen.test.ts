import { loadStarterShops, loadStarterTables } from "@halfloaf/data";
import { startNodePlanner } from "@halfloaf/engine/node";
import fc from "fast-check";
import { parseTables, toMenuProblem } from "halfloaf/kitchen";
import { checkPlan } from "halfloaf/menu/check";
import { massOfPack, Pack, Shop } from "halfloaf/price";
import { parseWith } from "halfloaf/quantity";
import { afterAll, describe, expect, test } from "vitest";
import type { StarterShops } from "../kitchen/loadStarter.ts";
import { type Answers, KITS, usualAnswers, usualEater, withEaters } from "./Answers.ts";
import { newKitchen } from "./newKitchen.ts";

const read = parseTables(loadStarterTables());
if (!read.ok) throw new Error("the starter tables are faulty");
const tables = read.value;
const starter = loadStarterShops() as StarterShops;
const beginning = { name: "Ours", shopNames: ["Far", "Near"], day: "2026-11-30" };
const usual = usualAnswers("en-GB", "One", []);

const answers: fc.Arbitrary<Answers> = fc
  .record({
    kit: fc.constantFrom(...Object.values(KITS)),
    count: fc.integer({ min: 1, max: 6 }),
    here: fc.subarray(["morning", "midday", "between", "evening"] as const, { minLength: 1 }),
    cupboard: fc.subarray(starter.cupboard.map(({ food }) => food)),
    budgetMinor: fc.option(fc.nat(20_000), { nil: undefined }),
    isPacked: fc.boolean(),
  })
  .map(({ count, here, isPacked, ...others }) => ({
    ...usual,
    ...others,
    eaters: Array.from({ length: count }, (_, at) => usualEater(at, `Person ${at}`)),
    sittings: Object.fromEntries(
      Object.entries(usual.sittings).map(([kind, each]) => [
        kind,
        { ...each, isPacked, isHere: here.some((one) => one === kind) },
      ]),
    ) as Answers["sittings"],
  }));

describe("a new kitchen", () => {
  test("is sound whatever is answered", () => {
    fc.assert(
      fc.property(answers, (given) => {
        expect(newKitchen(given, starter, tables, beginning)).toMatchObject({ ok: true });
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test("values what is in the cupboard at the cheapest pack", () => {
    const made = newKitchen({ ...usual, cupboard: ["salt"] }, starter, tables, beginning);
    const cheapest = Math.min(
      ...starter.packs.flatMap(({ food, content, priceMinor }) =>
        food === "salt" && "massG" in content ? [priceMinor / content.massG] : [],
      ),
    );
    const [salt] = made.ok ? made.value.stores : [];
    expect(salt?.costMinor).toBe(Math.round((salt?.massG ?? 0) * cheapest));
  });

  test("tells all measures of an eater that are missing, at once", () => {
    const eater = { ...usualEater(0, ""), heightCm: undefined, massKg: Number.NaN };
    const made = newKitchen({ ...usual, eaters: [eater] }, starter, tables, beginning);
    const fields = made.ok ? [] : made.issues.map(({ path }) => path.at(-1));
    expect(fields).toEqual(["name", "heightCm", "massKg"]);
  });

  test("gives more eaters more money while nobody has set it, and leaves it alone after that", () => {
    const two = [usualEater(0, "a"), usualEater(1, "b")];
    expect(withEaters(usual, two).budgetMinor).toBe(2 * (usual.budgetMinor ?? 0));
    expect(withEaters({ ...usual, budgetMinor: 700 }, two).budgetMinor).toBe(700);
  });
});

describe("the usual answers", () => {
  const planner = startNodePlanner();
  afterAll(() => planner.dispose());
  const cupboard = starter.cupboard.filter((each) => each.usual).map(({ food }) => food);
  const combinations = [1, 2, 3, 4].flatMap((count) => Object.keys(KITS).map((kit) => [count, kit] as const));

  test.each(combinations)("of %i with the %s kit lead to a plan", async (count, size) => {
    const eaters = Array.from({ length: count }, (_, at) => usualEater(at, `Person ${at}`));
    const given = {
      ...withEaters(usualAnswers("en-IE", "One", cupboard), eaters),
      kit: KITS[size as keyof typeof KITS],
    };
    const made = newKitchen(given, starter, tables, beginning);
    if (!made.ok) throw new Error(JSON.stringify(made.issues));
    const { problem } = toMenuProblem(made.value, tables, beginning.day, 7);
    const run = planner.plan({ problem, seed: 1, moves: 200_000 }, ({ plan }) => plan !== undefined && run.stop());
    const outcome = await run.outcome;
    if (outcome.status !== "planned") throw new Error(outcome.status);
    expect(checkPlan(problem, outcome.plan).faults).toEqual([]);
  });
});

describe("the starter shops", () => {
  test("sell sound packs of known mass, every price an estimate", () => {
    for (const shop of starter.shops) expect(parseWith(Shop, shop).ok).toBe(true);
    for (const pack of starter.packs) {
      const facts = tables.foods.get(pack.food);
      expect(parseWith(Pack, pack).ok && facts !== undefined && massOfPack(pack, facts).ok && pack.estimate).toBe(true);
    }
  });

  test("sell every food that a starter dish can't do without", () => {
    const sold = new Set(starter.packs.map(({ food }) => food));
    const needed = tables.dishes.flatMap(({ makings }) => makings.filter(({ optional }) => !optional));
    expect(needed.map(({ food }) => food).filter((food) => !sold.has(food))).toEqual([]);
  });
});
