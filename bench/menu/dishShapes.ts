import type { Draw } from "./Draw.ts";

/** Makings of a shape of dish: kinds with their grams, each with a chance of being there. */
export type Shape = readonly (readonly [kinds: string, low: number, high: number, chance: number])[];
/** Shapes of a morning's dishes. */
export const MORNING: readonly Shape[] = [
  [
    ["grain bread", 50, 80, 1],
    ["milk", 120, 220, 1],
    ["fruit", 80, 140, 1],
    ["nut", 8, 22, 1],
    ["sweet", 8, 18, 1],
    ["spice", 0.5, 1.5, 0.4],
  ],
  [
    ["egg", 100, 120, 1],
    ["bread", 70, 100, 1],
    ["vegetable", 60, 100, 1],
    ["oil", 5, 8, 1],
    ["cheese", 15, 30, 0.6],
    ["leaf", 20, 40, 0.5],
  ],
];
/** Shapes of what is eaten between meals. */
export const BETWEEN: readonly Shape[] = [
  [
    ["fruit", 120, 180, 1],
    ["nut", 12, 25, 1],
    ["milk", 80, 140, 0.7],
    ["sweet", 5, 10, 0.4],
  ],
  [
    ["bread", 50, 70, 1],
    ["cheese", 15, 30, 1],
    ["vegetable", 60, 100, 1],
    ["sauce", 10, 20, 0.4],
  ],
  [
    ["pulse", 70, 110, 1],
    ["vegetable", 70, 100, 1],
    ["bread", 25, 50, 1],
    ["oil", 4, 7, 1],
    ["spice", 0.5, 1, 1],
  ],
];
const MAINS = ["meat", "meat", "meat", "fish", "pulse", "pulse", "pulse", "egg", "tofu", "cheese"];

/** The shape of a plate at midday or in the evening. */
export function plateShape(draw: Draw): Shape {
  const main = draw.pick(MAINS);
  const grams: readonly [number, number] = main === "cheese" ? [50, 70] : main === "pulse" ? [120, 180] : [90, 140];
  return [
    [main, grams[0], grams[1], 1],
    [draw() < 0.8 ? "grain" : "bread", 70, 100, 1],
    ["vegetable", 70, 140, 1],
    ["vegetable", 70, 140, 0.65],
    ["vegetable", 60, 120, 0.3],
    ["leaf", 40, 70, 0.5],
    ["frozen", 60, 100, 0.35],
    ["oil", 8, 14, 1],
    ["sauce", 40, 80, 0.8],
    ["spice", 0.7, 2, 1],
    ["spice", 0.7, 2, 0.5],
    ["cheese", 15, 25, 0.12],
  ];
}
