import { expect, test } from "vitest";
import { planAccepted } from "./acceptedWeek.testing.ts";
import { changedSince } from "./changedSince.ts";
import { editsBetween, toThings } from "./edit.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { Pen } from "./Pen.ts";
import { fromKitchen } from "./parseRecord.ts";

const { kitchen, week } = planAccepted();

const NOTHING = { limits: [], later: [] };

test("limits that were edited after a week was accepted are news of the kitchen until it is accepted again", () => {
  const { kitchen: first, events: before } = fromKitchen(kitchen);
  const write = (atMs: number): Pen => new Pen({ device: "phone", nowMs: atMs }, atMs, undefined);
  const accept = (atMs: number) => write(atMs).write({ kind: "menu-accepted", on: week.from, week });
  const set = (atMs: number, before: EditedKitchen, limits: Partial<EditedKitchen["limits"]>) =>
    editsBetween(before, { ...before, limits: { ...before.limits, ...limits } }).map((body) => write(atMs).write(body));
  const settled = [...toThings(first)].map(([thing, set], at) =>
    write(at + 1).write({ kind: "edited", thing, ...set }),
  );
  const rows = { events: before, edits: settled };
  const later = Date.UTC(2100, 0, 1);
  const taken = accept(later);
  const events = [...rows.events, taken];
  const menu = { event: taken.id };
  expect(changedSince(menu, { events, edits: rows.edits }, first)).toEqual(NOTHING);
  const lower = { ...first, limits: { ...first.limits, tripsPerWeek: 1 } };
  // What is about to be written counts as well, so that it can be said with the act itself.
  expect(changedSince(menu, { events, edits: rows.edits }, lower)).toMatchObject({ limits: [{ kind: "limits" }] });
  const edits = [...rows.edits, ...set(later + 5, first, { tripsPerWeek: 1 })];
  expect(changedSince(menu, { events, edits }, lower)).toMatchObject({ limits: [{ kind: "limits" }], later: [] });
  const again = accept(later + 9);
  expect(changedSince({ event: again.id }, { events: [...events, again], edits }, lower)).toEqual(NOTHING);
  expect(changedSince(menu, { events: rows.events, edits }, lower)).toEqual(NOTHING);
  const since = (set: Partial<EditedKitchen>) =>
    changedSince(menu, { events, edits: rows.edits }, { ...first, ...set });
  expect(since({ kit: { ...first.kit, rings: 0 } })).toEqual({ limits: [], later: ["kit"] });
  expect(since({ eaters: first.eaters.slice(1) })).toEqual({ limits: [], later: ["eaters"] });
  const [head, ...rest] = first.sittings;
  if (head === undefined) throw new Error("nobody sits down");
  expect(since({ sittings: rest }).later).toEqual(["sittings"]);
  const longer = since({ sittings: [{ ...head, minutes: head.minutes + 5 }, ...rest] });
  expect(longer).toMatchObject({ limits: [{ kind: "limits" }], later: [] });
  const limits = { ...first.limits, variety: [{ by: "main" as const, mostPerWeek: 1 }] };
  expect(since({ limits })).toEqual({ limits: [], later: ["variety"] });
});
