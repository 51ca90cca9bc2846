import { expect, test } from "vitest";
import { planAccepted } from "./acceptedWeek.testing.ts";
import { changedSince } from "./changedSince.ts";
import { editsBetween, toThings } from "./edit.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { Pen } from "./Pen.ts";
import { fromKitchen } from "./parseRecord.ts";

const { kitchen, week } = planAccepted();

const NOTHING = { followed: [], later: [] };

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
  expect(changedSince(menu, { events, edits: rows.edits }, lower)).toMatchObject({ followed: [{ kind: "kitchen" }] });
  const edits = [...rows.edits, ...set(later + 5, first, { tripsPerWeek: 1 })];
  expect(changedSince(menu, { events, edits }, lower)).toMatchObject({ followed: [{ kind: "kitchen" }], later: [] });
  const again = accept(later + 9);
  expect(changedSince({ event: again.id }, { events: [...events, again], edits }, lower)).toEqual(NOTHING);
  expect(changedSince(menu, { events: rows.events, edits }, lower)).toEqual(NOTHING);
  const since = (set: Partial<EditedKitchen>) =>
    changedSince(menu, { events, edits: rows.edits }, { ...first, ...set });
  const FOLLOWED = { followed: [{ kind: "kitchen" }], later: [] };
  expect(since({ kit: { ...first.kit, rings: 0 } })).toMatchObject({ ...FOLLOWED, later: ["kit"] });
  expect(since({ kit: { ...first.kit, rings: 9 } })).toEqual({ followed: [], later: ["kit"] });
  expect(since({ kit: { ...first.kit, potPortions: 1, blender: false, microwave: false } })).toMatchObject(FOLLOWED);
  const [head, ...rest] = first.sittings;
  const [one, ...others] = first.eaters;
  if (head === undefined || one === undefined) throw new Error("nobody sits down");
  expect(since({ eaters: others })).toMatchObject(FOLLOWED);
  expect(since({ sittings: rest })).toMatchObject(FOLLOWED);
  expect(since({ sittings: [{ ...head, minutes: head.minutes + 5 }, ...rest] })).toMatchObject(FOLLOWED);
  const avoids = { ...one.avoids, allergens: [...one.avoids.allergens, "lupin" as const] };
  expect(since({ eaters: [{ ...one, avoids }, ...others] })).toMatchObject(FOLLOWED);
  expect(since({ eaters: [{ ...one, name: "Another" }, ...others] })).toEqual(NOTHING);
  expect(since({ eaters: [{ ...one, massKg: one.massKg + 9 }, ...others] })).toEqual({
    followed: [],
    later: ["eaters"],
  });
  expect(since({ eaters: [...first.eaters, { ...one, id: "new" }] })).toEqual({ followed: [], later: ["eaters"] });
  const everyDay = [1, 2, 3, 4, 5, 6, 7];
  const more = { ...head, kind: "between" as const, on: everyDay, eaters: first.eaters.map(({ id }) => id) };
  expect(since({ sittings: [...first.sittings, more] }).later).toEqual(["sittings"]);
  expect(since({ sittings: [{ ...head, packed: !head.packed }, ...rest] })).toEqual({
    followed: [],
    later: ["sittings"],
  });
  const limits = { ...first.limits, variety: [{ by: "main" as const, mostPerWeek: 1 }] };
  expect(since({ limits })).toMatchObject(FOLLOWED);
  expect(since({ limits: { ...first.limits, standRisePct: first.limits.standRisePct + 5 } })).toMatchObject(FOLLOWED);
});
