import fc from "fast-check";
import type { OwnFood } from "halfloaf/food";
import { type EventBody, toEventId } from "halfloaf/kitchen/record";
import { describe, expect, it } from "vitest";
import { converge, deeds, meet } from "./converge.testing.ts";
import type { KeptKitchen } from "./KeptKitchen.ts";
import { boughtOats, demoKitchen, openKept } from "./keep.testing.ts";
import { openMemoryStore } from "./memoryStore.testing.ts";

const lots = (kept: KeptKitchen) => [...kept.events.state.lots.keys()].sort();
const kitchenOf = (kept: KeptKitchen) => {
  const read = kept.kitchen();
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value.kitchen;
};

describe("A kept kitchen", () => {
  it("has everything again after it was opened anew, compacted or not", async () => {
    const store = openMemoryStore();
    const kept = await openKept(store);
    await kept.edit(() => demoKitchen());
    await kept.add([boughtOats("oats-1")], "ada");
    await kept.compact();
    await kept.add([boughtOats("oats-2")]);
    const again = await openKept(store);
    expect(kitchenOf(again)).toEqual(demoKitchen());
    expect(lots(again)).toEqual(["oats-1", "oats-2"]);
    expect(again.rows()).toEqual(kept.rows());
  });

  it("is without the rows that were dropped as if they had never been, here, in another opening and opened anew", async () => {
    const store = openMemoryStore();
    const kept = await openKept(store);
    await kept.edit(() => demoKitchen());
    const other = await openKept(store, { chance: () => 0.5 });
    await kept.add([boughtOats("oats-1")]);
    const edited = await kept.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Loft" }));
    const bought = await kept.add([boughtOats("oats-2")]);
    const gone = [...edited.rows, ...bought.rows].map(({ id }) => id);
    expect(await kept.drop(gone)).toMatchObject({ ok: true });
    await other.catchUp();
    const again = await openKept(store, { chance: () => 0.9 });
    for (const each of [kept, other, again]) {
      expect(lots(each)).toEqual(["oats-1"]);
      expect(kitchenOf(each)).toEqual(demoKitchen());
      expect(each.rows()).toEqual(kept.rows());
    }
    const [next] = (await kept.add([boughtOats("oats-3")])).rows;
    expect(gone).not.toContain(next?.id);
  });

  it("writes of an edit only what differs", async () => {
    const kept = await openKept(openMemoryStore());
    await kept.edit(() => demoKitchen());
    const { rows } = await kept.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Loft" }));
    expect(rows).toMatchObject([{ kind: "edited", thing: "name", value: "Loft" }]);
    expect((await kept.edit((kitchen) => kitchen ?? demoKitchen())).rows).toEqual([]);
  });

  it("reckons how long lots keep with its own foods, whichever row comes first, and without them once they are undone", async () => {
    const kelp: OwnFood = {
      id: "kelp-crackers",
      group: "snack",
      names: { british: ["kelp crackers"], american: ["kelp crackers"] },
      diet: "vegan",
      vegetableOrFruit: false,
      pieces: [],
      figureSources: {},
      hygiene: "ready-to-eat",
      allergens: { eu: [], us: [] },
      refusePct: 0,
      keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 14 }, authority: "the label" },
      source: "the label",
      composition: {},
    };
    const bought = { ...boughtOats("kelp-1"), food: "kelp-crackers" } as EventBody;
    const until = ({ events }: KeptKitchen) => events.state.lots.get("kelp-1")?.keeps;
    const kept = await openKept(openMemoryStore());
    await kept.edit(demoKitchen.bind(undefined, "port-ansel"));
    await kept.add([bought]);
    const unknown = until(kept);
    await kept.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), foods: [kelp] }));
    expect(until(kept)).not.toEqual(unknown);
    const other = await openKept(openMemoryStore());
    for (const row of kept.rawRows().toReversed()) await other.merge([row]);
    expect(other.events.state).toEqual(kept.events.state);
    await kept.undo();
    expect(until(kept)).toEqual(unknown);
  });

  it("undoes and redoes acts of its own device, whole", async () => {
    const store = openMemoryStore();
    const kept = await openKept(store);
    await kept.edit(() => demoKitchen());
    await kept.add([boughtOats("oats-1"), boughtOats("oats-2")]);
    await kept.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Loft" }));
    await kept.undo();
    expect(kitchenOf(kept).name).toBe(demoKitchen().name);
    await kept.undo();
    expect(lots(kept)).toEqual([]);
    const again = await openKept(store);
    await again.redo();
    expect(lots(again)).toEqual(["oats-1", "oats-2"]);
    await again.redo();
    expect(kitchenOf(again).name).toBe("Loft");
    expect(await again.redo()).toBeUndefined();
    await again.undo();
    await again.add([boughtOats("oats-3")]);
    expect(again.undoable().redo).toBeUndefined();
  });

  it("undoes nothing that another device did, and leaves what it has set since", async () => {
    const phone = await openKept(openMemoryStore(), { device: "phone" });
    const laptop = await openKept(openMemoryStore(), { device: "laptop" });
    await phone.edit(() => demoKitchen());
    meet(phone, laptop);
    await phone.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Loft" }));
    meet(phone, laptop);
    expect(laptop.undoable()).toEqual({});
    await laptop.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Attic" }));
    meet(phone, laptop);
    await phone.undo();
    expect(kitchenOf(phone).name).toBe("Attic");
  });

  it("tells who did what when", async () => {
    const kept = await openKept(openMemoryStore());
    await kept.add([boughtOats("oats-1"), boughtOats("oats-2")], "ada");
    await kept.undo("bo");
    expect(kept.history()).toMatchObject([
      { by: "ada", rows: [{ lot: "oats-1" }, { lot: "oats-2" }] },
      { by: "bo", undoes: kept.history()[0]?.id },
    ]);
  });

  it("tells that a change is not on disk, keeps it, and brings it there later", async () => {
    const store = openMemoryStore();
    const kept = await openKept(store);
    store.isFull = true;
    const { kept: outcome } = await kept.add([boughtOats("oats-1")]);
    expect(outcome).toMatchObject({ ok: false, reason: "full" });
    expect(lots(kept)).toEqual(["oats-1"]);
    expect(kept.waiting).toBe(1);
    store.isFull = false;
    expect((await kept.retry()).ok).toBe(true);
    expect(lots(await openKept(store))).toEqual(["oats-1"]);
  });

  it("leaves rows of a newer program where they are and says so", async () => {
    const store = openMemoryStore();
    const kept = await openKept(store);
    const row = { id: toEventId("later", 1), atMs: 5, tick: 0, kind: "levitated", on: "2026-03-02" };
    await kept.merge([row]);
    const again = await openKept(store);
    expect(again.strange()).toMatchObject([{ row }]);
    expect(again.rawRows()).toEqual([row]);
    expect((await again.merge([row])).added).toBe(0);
  });

  it("falls back on the edit before one that does not fit what others did", async () => {
    const phone = await openKept(openMemoryStore(), { device: "phone" });
    const laptop = await openKept(openMemoryStore(), { device: "laptop" });
    await phone.edit(() => demoKitchen("six-flat"));
    meet(phone, laptop);
    const eaters = demoKitchen("six-flat").eaters;
    const keepOnly = (at: number) => (kitchen: ReturnType<typeof demoKitchen> | undefined) => ({
      ...(kitchen ?? demoKitchen("six-flat")),
      eaters: [eaters[at] as (typeof eaters)[number]],
    });
    await phone.edit(keepOnly(0));
    await laptop.edit(keepOnly(1));
    meet(phone, laptop);
    expect(kitchenOf(phone).eaters.length).toBe(1);
    expect(kitchenOf(phone)).toEqual(kitchenOf(laptop));
    const read = phone.kitchen();
    expect(read.ok && read.value.passedOver.map(({ edit }) => edit.thing.split("/")[0])).toContain("eaters");
  });

  it("comes to the same state on every device, whatever is done apart and however they meet", async () => {
    await fc.assert(fc.asyncProperty(deeds, converge), { numRuns: 300, endOnFailure: true });
  });
});
