import fc from "fast-check";
import { checkDish } from "halfloaf/dish";
import { expect, test } from "vitest";
import type { Passage } from "./DishText.ts";
import { draftDish, toId } from "./draftDish.ts";
import { starterOptions } from "./reading.testing.ts";
import { readPastedText } from "./readPastedText.ts";
import { toDish } from "./toDish.ts";

const OPTIONS = starterOptions();
const TEXT = `Red lentil soup
Serves 4
Takes 40 minutes
250 g red lentils
2 tbsp olive oil
1 litre water
zzyzx, 3 g
Fry the lentils in the oil for 2 minutes.
Add the water, then simmer for 20 minutes.
Serve.`;

function draftOf(text: string) {
  const read = readPastedText(text);
  if (read === undefined) throw new Error("no dish");
  return draftDish(read, OPTIONS);
}

test("what is not sure is an issue with its place, never a silent guess", () => {
  const draft = draftOf(TEXT);
  const result = toDish(draft, {}, OPTIONS);
  expect(result.ok).toBe(false);
  const at = draft.makings.findIndex(({ name }) => name.includes("zzyzx"));
  const issues = result.ok ? [] : result.issues;
  expect(issues.map(({ code, path }) => [code, path])).toContainEqual(["food-unsure", ["makings", at, "food"]]);
});

test("with its doubts settled a draft is a sound dish", () => {
  const draft = draftOf(TEXT);
  const makings = Object.fromEntries(
    draft.makings.flatMap(({ food, name }, at) =>
      food === undefined || name.includes("zzyzx") ? [[at, "left-out" as const]] : [],
    ),
  );
  const result = toDish(draft, { makings }, OPTIONS);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  expect(checkDish(result.value, OPTIONS.foods)).toEqual([]);
  expect(result.value).toMatchObject({
    id: "red-lentil-soup",
    title: "Red lentil soup",
    portions: 4,
    statedMinutes: 40,
  });
  expect(result.value.makings[0]).toMatchObject({ food: "lentils-red-dried", amount: { value: 250, unit: "g" } });
  expect(result.value.main).toBe("lentils-red-dried");
  expect(result.value.method.map(({ text, kind }) => [text, kind])).toEqual([
    ["Fry the lentils in the oil for 2 minutes.", "fry"],
    ["Add the water, then simmer for 20 minutes.", "simmer"],
    ["Serve.", "serve"],
  ]);
});

test("portions and a title that are missing are asked for, not guessed", () => {
  const draft = draftOf(TEXT.replace("Serves 4", "Makes 1 loaf").replace("Red lentil soup\n", ""));
  const result = toDish(draft, {}, OPTIONS);
  const issues = result.ok ? [] : result.issues;
  expect(issues.map(({ code, received }) => [code, received])).toEqual(
    expect.arrayContaining([
      ["title-unsaid", ""],
      ["portions-unsaid", "Makes 1 loaf"],
    ]),
  );
});

test("a food that is chosen brings the amount that the line tells of it", () => {
  const draft = draftOf("Soup\nServes 2\n2 cloves zzyzx\n200 g red lentils\nChop.\nBoil for 20 minutes.");
  const at = draft.makings.findIndex(({ name }) => name.includes("zzyzx"));
  const result = toDish(draft, { makings: { [at]: { food: "garlic" } } }, OPTIONS);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  expect(result.value.makings[at]).toMatchObject({
    food: "garlic",
    amount: { value: 2, unit: "piece", size: "clove" },
  });
});

test("what waited for a step that is left out waits for what that one waited for", () => {
  const draft = draftOf(
    "Soup\nServes 2\n200 g red lentils\n1 tbsp olive oil\nChop it.\nGrate it.\nBoil for 20 minutes.\nServe.",
  );
  const result = toDish(draft, { steps: { 1: "left-out", 2: "left-out" } }, OPTIONS);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  expect(result.value.method.map(({ id, after }) => [id, after])).toEqual([
    ["cut", []],
    ["serve", ["cut"]],
  ]);
});

test("every field that is less than sure says why", () => {
  const { form, yieldText, makings, method, unread, issues, ...fields } = draftOf(TEXT);
  for (const field of Object.values(fields)) expect(field.sure === "sure").toBe(field.reason === undefined);
  for (const { food, amount, optional } of makings) {
    for (const field of [food, amount, optional])
      if (field) expect(field.sure === "sure").toBe(field.reason === undefined);
  }
  expect(method.length).toBeGreaterThan(2);
});

test("a field that was read tells from what", () => {
  const { title, portions, statedMinutes, makings, method } = draftOf(TEXT);
  expect(title?.from).toEqual({ text: "Red lentil soup", path: ["line", 1] });
  expect(portions?.from).toEqual({ text: "Serves 4", path: ["line", 2] });
  expect(statedMinutes?.from).toEqual({ text: "Takes 40 minutes", path: ["line", 3] });
  expect(makings[0]?.passage).toEqual({ text: "250 g red lentils", path: ["line", 4] });
  expect(method[0]).toMatchObject({ path: ["line", 8], start: 0 });
});

test("a line too long for a making is told as unread", () => {
  const read = readPastedText(TEXT) as NonNullable<ReturnType<typeof readPastedText>>;
  const long = { text: `1 onion ${"and on ".repeat(100)}`, path: ["line", 99] };
  const draft = draftDish({ ...read, makings: [...read.makings, long] }, OPTIONS);
  expect(draft.makings.length).toBe(draftDish(read, OPTIONS).makings.length);
  expect(draft.unread).toContainEqual(long);
});

test("time for preparing and for cooking are stated together where the whole isn't", () => {
  const passage = (text: string): Passage => ({ text, path: [] });
  const text = { form: "text", yields: [], makings: [], method: [], categories: [], unread: [] } as const;
  const stated = (times: Parameters<typeof draftDish>[0]["times"]) =>
    draftDish({ ...text, times }, OPTIONS).statedMinutes;
  expect(stated({ prep: passage("PT15M"), cook: passage("PT1H") })).toEqual({
    value: 75,
    sure: "likely",
    reason: "time-of-parts",
  });
  expect(stated({ prep: passage("PT15M"), total: passage("PT2H") })).toMatchObject({
    value: 120,
    sure: "sure",
    from: { text: "PT2H" },
  });
  expect(stated({ total: passage("PT0S") })).toBeUndefined();
});

test("a draft of makings and method of chance is a sound dish or says what it lacks", () => {
  const making = fc.constantFrom(
    "250 g red lentils",
    "2 tbsp olive oil",
    "1 onion",
    "salt",
    "2 large eggs",
    "zzyzx",
    "1 tin tomatoes",
    "butter or oil",
  );
  const step = fc.constantFrom(
    "Chop the onion.",
    "Fry for 5 minutes, then add the lentils.",
    "Meanwhile, boil the kettle.",
    "Bake at gas 4 until done.",
    "Leave overnight.",
    "Serve.",
  );
  fc.assert(
    fc.property(fc.array(making, { maxLength: 6 }), fc.array(step, { maxLength: 6 }), (makings, method) => {
      const toPassages = (texts: readonly string[]) => texts.map((text, at) => ({ text, path: [at] }));
      const text = {
        form: "text" as const,
        yields: [],
        makings: toPassages(makings),
        method: toPassages(method),
        times: {},
        categories: [],
        unread: [],
      };
      const result = toDish(draftDish(text, OPTIONS), { title: "Soup", portions: 3 }, OPTIONS);
      if (result.ok) expect(checkDish(result.value, OPTIONS.foods)).toEqual([]);
      else expect(result.issues.length).toBeGreaterThan(0);
    }),
  );
});

test("ids are words joined by hyphens, whatever the title", () => {
  expect(toId("Crème brûlée à l'orange")).toBe("creme-brulee-a-lorange");
  expect(toId("汤")).toBe("dish");
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (title) => void expect(toId(title)).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
  );
});
