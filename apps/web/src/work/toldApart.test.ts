import { expect, test } from "vitest";
import { toldApart } from "./toldApart.ts";

const step = (id: string, begunMinutes: number, doneMinutes?: number) => ({
  dish: 0,
  step: id,
  begunMinutes,
  ...(doneMinutes !== undefined && { doneMinutes }),
});

test("of steps told in one go the first alone says how long it took, and what goes on says nothing", () => {
  const told = [
    step("simmer", 9),
    step("mix", 6, 8.1),
    step("cut", 0, 5),
    step("stir", 8, 8.2),
    step("serve", 8.2, 8.21),
    step("taste", 8.21, 11),
  ];
  expect(toldApart(told).map((each) => each.step)).toEqual(["cut", "mix", "taste"]);
});

test("a step that is done as it is begun was done before", () => {
  expect(toldApart([step("wash", 3, 3.1)])).toEqual([]);
});
