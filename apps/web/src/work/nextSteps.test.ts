import type { StepLine } from "halfloaf/kitchen";
import { expect, test } from "vitest";
import { nextSteps } from "./nextSteps.ts";

const line = (step: string, ...cooks: number[]): StepLine => ({
  kind: "step",
  dish: 0,
  step,
  stepKind: "cut",
  text: step,
  hands: "full",
  cooks,
  kit: [],
  cautions: [],
  startMinutes: 0,
  endMinutes: 1,
});
const tell = (open: readonly StepLine[], cooks: number) =>
  nextSteps(open, cooks).map(({ cook, line: { step } }) => `${cook} ${step}`);

test("one cook has the first step that is open, whoever it was meant for", () => {
  expect(tell([line("a", 2), line("b", 1)], 1)).toEqual(["1 a"]);
  expect(tell([], 1)).toEqual([]);
});

test("of two cooks each has their own next step; the first begins what needs no hands", () => {
  expect(tell([line("a", 2), line("oven"), line("b", 1)], 2)).toEqual(["1 oven", "2 a"]);
  expect(tell([line("a", 1), line("b", 1)], 2)).toEqual(["1 a"]);
});

test("what two do together is told once", () => {
  expect(tell([line("lift", 1, 2), line("b", 2)], 2)).toEqual(["1 lift"]);
});
