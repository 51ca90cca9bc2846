import type { StepLine, WorkSheet } from "halfloaf/kitchen";
import { expect, test } from "vitest";
import { firstTaken } from "./firstTaken.ts";

const step = (id: string, foods: readonly string[]) => ({ id, foods: [...foods] });
const line = (dish: number, id: string) => ({ kind: "step", dish, step: id }) as unknown as StepLine;
const stew = {
  method: [step("soak", ["beans"]), step("fry", ["onion", "oil"]), step("boil", ["beans", "salt", "oil"])],
};
const rice = { method: [step("boil", ["rice", "salt"]), step("serve", [])] };
const method = (dish: { method: unknown }) => dish as unknown as Parameters<typeof firstTaken>[1][number];

test("a food is measured out at the step that names it first, what is done ahead before all, and in no other", () => {
  const sheet = {
    ahead: [{ dish: 0, step: "soak" }],
    lines: [line(0, "fry"), line(1, "boil"), line(0, "boil"), line(1, "serve")],
  } as unknown as WorkSheet;
  expect([...firstTaken(sheet, [method(stew), method(rice)])]).toEqual([
    ["0 soak", ["beans"]],
    ["0 fry", ["onion", "oil"]],
    ["1 boil", ["rice", "salt"]],
    ["0 boil", ["salt"]],
  ]);
});

test("a dish that is gone takes nothing", () => {
  const sheet = { ahead: [], lines: [line(0, "fry")] } as unknown as WorkSheet;
  expect(firstTaken(sheet, [undefined]).size).toBe(0);
});
