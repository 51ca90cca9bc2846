import type { LinearColumn } from "halfloaf/menu/linear";
import { expect, test } from "vitest";
import { guessWorths } from "./guessWorths.ts";

function column(name: string, cost = 0): LinearColumn {
  return { name, cost, lower: 0, upper: 1, integer: true };
}

test("a shop comes before a trip, a trip before a food of the middle price, that before a dish, its levels and its packs", () => {
  const names = ["ts 0", "t 0", "z 0", "y 0", "l 0 1", "n 0 0"];
  const worths = guessWorths(names.map((name) => column(name, name.startsWith("n") ? 80 : 0)));
  expect([...worths]).toEqual([...worths].sort((a, b) => b - a));
  expect(new Set(worths).size).toBe(names.length);
});

test("of two foods the one whose cheapest pack is dearer comes first; one without a pack to pay for counts as the middle", () => {
  const units = [
    column("n 0 0", 50),
    column("n 1 0", 900),
    column("n 1 1", 400),
    column("n 2 0", 100),
    column("n 3 0", 0),
  ];
  const foods = [0, 1, 2, 3].map((food) => column(`z ${food}`));
  const [cheap, dear, middle, free] = guessWorths([...foods, ...units]);
  expect([cheap, dear, free].map((worth) => (worth as number) / (middle as number))).toEqual([0.5, 4, 1]);
});
