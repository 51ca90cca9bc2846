import fc from "fast-check";
import { expect, test } from "vitest";
import { STEP_KINDS } from "../../dish/index.ts";
import { day, foods } from "../../stores/stores.testing.ts";
import { learnPace, type ObservedStep, toPace } from "../cooking/pace.ts";
import { makeKitchen } from "../kitchen.testing.ts";
import { ledgerOf, penFor, pudding } from "./act/acts.testing.ts";
import { cook } from "./act/cook.ts";
import { penOf } from "./Pen.ts";
import { forgetPace, paceOfKitchen, pacesOf } from "./pacesOf.ts";
import { fromKitchen } from "./parseRecord.ts";
import { toKitchen } from "./toKitchen.ts";

const { kitchen: edited } = fromKitchen(makeKitchen());
const step = (kind: ObservedStep["kind"], observedMinutes: number): ObservedStep => ({
  kind,
  statedMinutes: 10,
  observedMinutes,
});

/** A record of cookings, each by somebody with the steps as they took. */
function cooked(...all: readonly { readonly by?: string; readonly steps: readonly ObservedStep[] }[]) {
  const ledger = ledgerOf();
  for (const [at, { by, steps }] of all.entries()) {
    const pen = penOf(ledger, { device: "a", nowMs: 2 + at });
    const { cooked: event } = cook(
      ledger.state,
      foods,
      { dish: pudding, portions: 4, on: day(2), steps: [...steps] },
      pen,
    );
    ledger.add([by === undefined ? event : { ...event, by }]);
  }
  return ledger;
}

test("each cook has a pace of their own, the kitchen that of all together; set by hand counts where nothing was seen", () => {
  const [slow, quick] = [step("cut", 15), step("cut", 5)];
  const { state } = cooked(
    { by: "ada", steps: [slow, slow] },
    { steps: [step("mix", 12)] },
    { by: "bo", steps: [quick] },
  );
  expect(pacesOf(edited, state)).toEqual([
    { by: "ada", learned: learnPace([slow, slow]) },
    { learned: learnPace([step("mix", 12)]) },
    { by: "bo", learned: learnPace([quick]) },
  ]);
  const byHand = { ...edited, pace: { cut: 2, knead: 1.5 } };
  const pace = { knead: 1.5, ...toPace(learnPace([slow, slow, quick, step("mix", 12)])) };
  expect(paceOfKitchen(byHand, state)).toEqual(pace);
  expect(toKitchen(byHand, state, foods, day(3)).pace).toEqual(pace);
});

test("a cooking that is withdrawn says nothing; without any there is no pace", () => {
  const ledger = cooked({ steps: [step("cut", 15)] });
  const [{ event = "" } = {}] = [...ledger.state.cookings.values()];
  ledger.add([penFor(ledger).write({ kind: "withdrawn", on: day(2), events: [event] })]);
  expect(pacesOf(edited, ledger.state)).toEqual([]);
  expect(toKitchen(edited, ledger.state, foods, day(3))).not.toHaveProperty("pace");
});

test("what is set back is as if it had never been seen, all else stays, and later cookings are learned from", () => {
  const seen = fc.array(fc.record({ kind: fc.constantFrom(...STEP_KINDS), minutes: fc.integer({ min: 1, max: 40 }) }), {
    minLength: 1,
    maxLength: 6,
  });
  fc.assert(
    fc.property(seen, fc.option(fc.constantFrom(...STEP_KINDS), { nil: undefined }), (drawn, kind) => {
      const steps = drawn.map(({ kind: each, minutes }) => step(each, minutes));
      const { state } = cooked({ steps });
      const back = forgetPace({ ...edited, pace: { cut: 2 } }, state, kind);
      const left = steps.filter((each) => kind !== undefined && each.kind !== kind);
      const byHand = kind === undefined || kind === "cut" ? {} : { cut: 2 };
      expect(paceOfKitchen(back, state) ?? {}).toEqual({ ...byHand, ...toPace(learnPace(left)) });
      const later = cooked({ steps }, { steps });
      expect(pacesOf(back, later.state)).toEqual([{ learned: learnPace([...left, ...steps]) }]);
    }),
    { endOnFailure: true, numRuns: 30 },
  );
});
