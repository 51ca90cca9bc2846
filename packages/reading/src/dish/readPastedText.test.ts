import fc from "fast-check";
import { expect, test } from "vitest";
import { starterDishes, starterFoods } from "./reading.testing.ts";
import { readPastedText } from "./readPastedText.ts";
import { readYield } from "./readYield.ts";

const WITH_WORDS = `Barley and leek soup
A soup for days when the cupboard is nearly bare.
Serves 4-6
Prep: 10 mins | Cook: 35 minutes

Ingredients
2 tbsp oil
1 large leek, finely sliced
For the top:
a handful of parsley

Method
1. Heat the oil in a large pan and fry the leek for 8-10 minutes until
soft and sweet.
2. Serve with the parsley.

Notes
Keeps for 3 days.`;

test("title, portions, times, makings under their headings and method are told apart", () => {
  const dish = readPastedText(WITH_WORDS);
  expect(dish?.title?.text).toBe("Barley and leek soup");
  expect(dish?.note?.text).toBe("A soup for days when the cupboard is nearly bare.");
  expect(dish?.yields.map(({ text }) => text)).toEqual(["Serves 4-6"]);
  expect(dish?.times.prep?.text).toBe("Prep: 10 mins");
  expect(dish?.times.cook?.text).toBe("Cook: 35 minutes");
  expect(dish?.makings).toEqual([
    { text: "2 tbsp oil", path: ["line", 6] },
    { text: "1 large leek, finely sliced", path: ["line", 7] },
    { text: "a handful of parsley", path: ["line", 9], heading: "For the top" },
  ]);
  expect(dish?.unread.map(({ text }) => text)).toEqual(["Keeps for 3 days."]);
});

test.each([
  ["For 1", "For 1", 1],
  ["for two", "for two", 2],
  ["For 2-3 | 20 minutes", "For 2-3", 2],
])("so many that it is for are its portions, on a line without any other word: %s", (line, told, portions) => {
  const dish = readPastedText(`Leek soup\n${line}\n1 leek\n200 g barley\nSlice the leek.\nBoil it all for 40 minutes.`);
  expect(dish?.yields.map(({ text }) => text)).toEqual([told]);
  expect(readYield(dish?.yields ?? []).portions?.value).toBe(portions);
});

test("what parts of it are for is no number of portions", () => {
  const dish = readPastedText("Leek soup\nFor the top:\n1 leek\nFor 2 loaves\n200 g barley\nSlice it.\nBoil it all.");
  expect(dish?.yields).toEqual([]);
});

test("lines that a margin broke are one step", () => {
  expect(readPastedText(WITH_WORDS)?.method.map(({ text }) => text)).toEqual([
    "Heat the oil in a large pan and fry the leek for 8-10 minutes until soft and sweet.",
    "Serve with the parsley.",
  ]);
});

test("a step's number is no step, on a line of its own or before the work", () => {
  const text =
    "Leek soup\n• 1 leek\n• 200 g barley\nDirections\nStep 1\nSlice the leek.\nStep 2: Boil it all.\n3) Serve hot.";
  expect(readPastedText(text)?.method.map((passage) => passage.text)).toEqual([
    "Slice the leek.",
    "Boil it all.",
    "Serve hot.",
  ]);
});

test("no heading is needed", () => {
  const dish = readPastedText("Leek soup\n1 leek\n200 g barley\nsalt\nSlice the leek.\nBoil it all for 40 minutes.");
  expect(dish?.title?.text).toBe("Leek soup");
  expect(dish?.makings.map(({ text }) => text)).toEqual(["1 leek", "200 g barley", "salt"]);
  expect(dish?.method.map(({ text }) => text)).toEqual(["Slice the leek.", "Boil it all for 40 minutes."]);
});

test.each([
  "",
  "hello",
  "I went to town.\nIt rained all day and we were glad of it.\nThen we went home.",
  "1 leek\n2 onions\n3 carrots",
])("a text that tells no dish gives none: %s", (text) => {
  expect(readPastedText(text)).toBeUndefined();
});

test("the starter dishes, written out without a heading, are sorted line by line as they were written", () => {
  const foods = starterFoods();
  const counts = { lines: 0, right: 0 };
  for (const { title, makings, method } of starterDishes()) {
    const lines = makings.map(({ food, amount }) => {
      const name = foods.get(food)?.names.british[0] ?? food;
      if (amount === "to-taste") return `${name} to taste`;
      const unit =
        amount.unit === "piece" ? "" : `${amount.unit.replace(/[^a-zA-Z]|_\w+/g, "").replace("tbs", "tbsp")} `;
      return "value" in amount ? `${amount.value} ${unit}${name}` : `${amount.from}-${amount.to} ${unit}${name}`;
    });
    const steps = method.map(({ text }) => text);
    const dish = readPastedText([title, ...lines, ...steps].join("\n"));
    const found = [dish?.makings, dish?.method].map((passages) => new Set(passages?.map(({ text }) => text)));
    counts.lines += lines.length + steps.length;
    counts.right +=
      lines.filter((line) => found[0]?.has(line)).length + steps.filter((step) => found[1]?.has(step)).length;
  }
  expect(counts.right / counts.lines).toBeGreaterThan(0.97);
});

test("every passage stands in the text that was pasted", () => {
  const line = fc.constantFrom(
    "Leek soup",
    "1 leek",
    "200 g barley",
    "Slice it.",
    "Boil for 40 minutes.",
    "Method",
    "Serves 4",
    "For the top:",
    "Notes",
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 20 }), (lines) => {
      const dish = readPastedText(lines.join("\n"));
      for (const { text, path } of [...(dish?.makings ?? []), ...(dish?.method ?? [])]) {
        expect(lines[Number(path[1]) - 1]).toContain(text);
      }
    }),
  );
});
