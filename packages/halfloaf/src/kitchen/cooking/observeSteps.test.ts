import { expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { dishOf, timeWork, wishFor } from "./cooking.testing.ts";
import { happenedAsPlanned } from "./happenedAsPlanned.ts";
import { observeSteps } from "./observeSteps.ts";
import { learnPace } from "./pace.ts";

const soup = dishOf("soup", [
  { ...makeStep("cut", 2, { kind: "cut", foods: ["carrot"] }), minutes: { fixed: 2, perPortion: 1.5 } },
  makeStep("simmer", 10, { kind: "simmer", hands: "eye", after: ["cut"], foods: ["carrot"] }),
]);
const timed = timeWork(wishFor([{ dish: soup, portions: 3 }]));

test("a step teaches by the minutes its dish states for so many portions, before they are rounded up", () => {
  const seen = observeSteps(timed, [{ kind: "step", step: 0, begunMinutes: 1, doneMinutes: 14 }]);
  expect(seen).toEqual([{ kind: "cut", statedMinutes: 6.5, observedMinutes: 13 }]);
  expect(learnPace(seen)).toMatchObject([{ kind: "cut", median: 2 }]);
});

test("steps still going on, and washes, teach nothing", () => {
  expect(observeSteps(timed, [{ kind: "step", step: 1, begunMinutes: 9 }])).toEqual([]);
  expect(observeSteps(timed, [{ kind: "board-wash", startMinutes: 3 }])).toEqual([]);
});

test("a cooking that went as planned teaches what was planned", () => {
  const seen = observeSteps(timed, happenedAsPlanned(timed, timed.plan.serveMinutes));
  expect(seen.map(({ kind, observedMinutes }) => [kind, observedMinutes])).toEqual([
    ["cut", 7],
    ["simmer", 10],
  ]);
});
