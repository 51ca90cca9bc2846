import fc from "fast-check";
import { KIT_PARTS, orderSteps, STEP_KINDS } from "halfloaf/dish";
import { expect, test } from "vitest";
import { starterDishes, starterFoods } from "../dish/reading.testing.ts";
import { readMethod } from "./readMethod.ts";

const MAKINGS = ["pasta", "onion", "oil", "tomatoes"].map((name) => ({ names: [name] }));
const read = (...texts: string[]) =>
  readMethod(
    texts.map((text, at) => ({ text, path: ["method", at] })),
    MAKINGS,
  );

test("minutes that are told are sure, those that aren't are guessed from the kind", () => {
  const [fry, chop] = read("Fry the onion in the oil for 10 minutes.", "Chop the tomatoes.");
  expect(fry?.minutes).toEqual({ value: { fixed: 10, perPortion: 0 }, sure: "sure" });
  expect(chop?.minutes).toEqual({ value: { fixed: 3, perPortion: 1 }, sure: "guess", reason: "minutes-usual" });
});

test("a night in the fridge is chilled, ahead and without hands", () => {
  const [step] = read("Leave in the fridge overnight.");
  expect([step?.kind.value, step?.ahead.value, step?.hands.value]).toEqual(["chill", true, "none"]);
  expect(step?.minutes).toEqual({ value: { fixed: 480, perPortion: 0 }, sure: "guess", reason: "time-overnight" });
});

test("an oven is heated from the start, and what is baked waits for it and for what was done before", () => {
  const steps = read("Chop the onion.", "Preheat the oven to 200C.", "Bake in a roasting tin for 20 minutes.");
  expect(steps.map(({ id, after }) => [id, after.value])).toEqual([
    ["cut", []],
    ["bake", []],
    ["bake-2", ["cut", "bake"]],
  ]);
  expect(steps[1]?.tempC?.value).toBe(200);
  expect(steps[2]?.kit).toEqual({ value: ["oven", "tray"], sure: "likely", reason: "kit-by-kind" });
});

test("what is done meanwhile waits only for what the step before waits for, and the next waits for both", () => {
  const steps = read("Boil the pasta for 10 minutes.", "Meanwhile chop the onion.", "Fry it.");
  expect(steps.map(({ after }) => after.value)).toEqual([[], [], ["boil", "cut"]]);
});

test("water is heated from the start for what is boiled in it", () => {
  const steps = read("Chop the onion.", "Boil the kettle.", "Pour the boiling water over.");
  expect(steps.map(({ after }) => after.value)).toEqual([[], [], ["cut", "heat-water"]]);
});

test("what goes on in a pan goes on in the same pan", () => {
  const steps = read("Fry the onion in a frying pan.", "Add the tomatoes and simmer for 10 minutes.");
  expect(steps.map(({ kit }) => kit.value)).toEqual([
    ["ring", "pan"],
    ["ring", "pan"],
  ]);
});

test("what is cooked in a frying pan is fried as a guess, and a heated oven does not bake it", () => {
  const [, cook, then] = read(
    "Preheat the oven to 200C.",
    "In a large skillet, cook the onion for 6 minutes.",
    "Stir in the tomatoes.",
  );
  expect(cook).toMatchObject({
    kind: { value: "fry", sure: "guess", reason: "kind-by-pan" },
    kit: { value: ["ring", "pan"] },
  });
  expect(then?.kit.value).toEqual(["ring", "pan"]);
});

test("a rest before serving takes as long as it says", () => {
  const [rest] = read("Let stand 10 minutes before serving.");
  expect(rest).toMatchObject({ kind: { value: "rest" }, minutes: { value: { fixed: 10 }, sure: "sure" } });
});

test("stirring without stopping takes both hands", () => {
  const [often, always] = read("Simmer, stirring now and then.", "Simmer, stirring constantly.");
  expect([often?.hands.value, always?.hands.value]).toEqual(["eye", "full"]);
});

test("steps name the makings they handle", () => {
  expect(read("Fry the onion in the oil.", "Stir in the tomatoes.").map(({ makings }) => makings.value)).toEqual([
    [1, 2],
    [3],
  ]);
});

test("whatever the method, its steps have ids of their own, known words, and an order without rings", () => {
  const texts = starterDishes().flatMap(({ method }) => method.map((step) => step.text));
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...texts), { maxLength: 12 }), (chosen) => {
      const steps = read(...chosen);
      expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
      const plain = steps.map(({ id, after }) => ({ id, after: [...after.value] }));
      expect(orderSteps(plain).cyclic).toEqual([]);
      for (const step of steps) {
        expect(STEP_KINDS).toContain(step.kind.value);
        for (const part of step.kit.value) expect(KIT_PARTS).toContain(part);
        for (const field of [step.kind, step.minutes, step.hands, step.kit, step.after, step.makings]) {
          expect(field.sure === "sure").toBe(field.reason === undefined);
        }
      }
    }),
  );
});

test("over the starter dishes, whose steps were described by hand, kinds, hands and foods mostly agree", () => {
  const foods = starterFoods();
  const counts = { steps: 0, kinds: 0, hands: 0, foundFoods: 0, rightFoods: 0, foods: 0 };
  for (const { makings, method } of starterDishes()) {
    const named = makings.map(({ food }) => {
      const names = foods.get(food)?.names;
      return { names: [...(names?.british ?? []), ...(names?.american ?? [])] };
    });
    const passages = method.map(({ text, id }) => ({ text, path: [id] }));
    const read = readMethod(passages, named);
    for (const step of method) {
      const acts = read.filter(({ path }) => path[0] === step.id);
      const found = new Set(acts.flatMap((act) => act.makings.value.map((at) => makings[at]?.food)));
      counts.steps++;
      counts.kinds += acts.some(({ kind }) => kind.value === step.kind) ? 1 : 0;
      counts.hands += acts.some(({ hands }) => hands.value === step.hands) ? 1 : 0;
      counts.foundFoods += found.size;
      counts.foods += new Set(step.foods).size;
      counts.rightFoods += step.foods.filter((food, at) => found.has(food) && step.foods.indexOf(food) === at).length;
    }
  }
  expect(counts.kinds / counts.steps).toBeGreaterThan(0.8);
  expect(counts.hands / counts.steps).toBeGreaterThan(0.9);
  expect(counts.rightFoods / counts.foods).toBeGreaterThan(0.85);
  expect(counts.rightFoods / counts.foundFoods).toBeGreaterThan(0.85);
});
