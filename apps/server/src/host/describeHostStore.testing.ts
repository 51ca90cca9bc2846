import { createHash } from "node:crypto";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HostedDevice, HostStore, KitchenCopy, Push, Pushed } from "./HostStore.ts";
import { isFault } from "./HostStore.ts";

let made = 0;
const newName = (stem: string) => `${stem}${String(++made).padStart(10, "0")}`;
const hash = (text: string) => new Uint8Array(createHash("sha256").update(text).digest());

function deviceOf(kitchen: string, over: Partial<HostedDevice> = {}): HostedDevice {
  const id = newName("device");
  return { id, kitchen, name: "Phone", role: "keeper", secretHash: hash(id), madeAtMs: 5, seenAtMs: 5, ...over };
}

const row = (id: string, text = `{"id":"${id}"}`) => ({ id, text });
const ROOM = { mostRows: 1_000, mostBytes: 1_000_000 };

function sound<Given>(outcome: Given): Exclude<Given, { ok: false }> {
  if (isFault(outcome)) throw new Error(`${outcome.reason}: ${outcome.detail}`);
  return outcome as Exclude<Given, { ok: false }>;
}

/** What every store of a server must do; `open` opens one and the same store each time. */
export function describeHostStore(name: string, open: () => Promise<HostStore>): void {
  describe(name, () => {
    let store: HostStore;
    let other: HostStore;
    beforeAll(async () => {
      store = await open();
      other = await open();
    });
    afterAll(async () => {
      await store.close();
      await other.close();
    });

    const newKitchen = async () => {
      const id = newName("kitchen");
      const keeper = deviceOf(id);
      sound(await store.makeKitchen({ id, log: newName("log") }, keeper));
      return { id, keeper };
    };
    const push = async (at: HostStore, kitchen: string, device: string, ...acts: Push["acts"]) => {
      const pushed: Pushed = sound(await at.append({ kitchen, device, acts, ...ROOM }));
      if (pushed.kind === "gone") throw new Error("the device is gone");
      return pushed;
    };
    const idsOf = async (at: HostStore, kitchen: string) =>
      sound(await at.readLog(kitchen, 0, 1e6)).rows.map(({ seq, id }) => [seq, id]);

    it("gives rows back in one order without gaps, to every server alike", async () => {
      const { id, keeper } = await newKitchen();
      await push(store, id, keeper.id, [row("a-1"), row("a-2")]);
      await push(other, id, keeper.id, [row("b-1")]);
      await push(store, id, keeper.id, [row("a-3")]);
      const expected = [
        [1, "a-1"],
        [2, "a-2"],
        [3, "b-1"],
        [4, "a-3"],
      ];
      expect(await idsOf(store, id)).toEqual(expected);
      expect(await idsOf(other, id)).toEqual(expected);
      expect(sound(await other.endsOf([id, "nowhere00"]))).toEqual(new Map([[id, 4]]));
      expect(
        sound(await store.listIds(id))
          .slice()
          .sort(),
      ).toEqual(["a-1", "a-2", "a-3", "b-1"]);
      expect(sound(await store.sendersOf(id, ["a-1", "z-9"]))).toEqual(new Map([["a-1", keeper.id]]));
    });

    it("keeps a row that comes again once, and an id of other content not at all, nor the rest of its act", async () => {
      const { id, keeper } = await newKitchen();
      await push(store, id, keeper.id, [row("a-1")]);
      expect((await push(other, id, keeper.id, [row("a-1")])).fresh).toEqual([]);
      const { fresh, taken } = await push(store, id, keeper.id, [row("a-1", "{}"), row("a-2")], [row("a-3")]);
      expect(taken).toEqual(["a-1"]);
      expect(fresh.map((each) => each.id)).toEqual(["a-3"]);
      expect(sound(await store.findKitchen(id))).toMatchObject({ upTo: 2 });
    });

    it("gives logs in pages, each with at least one row", async () => {
      const { id, keeper } = await newKitchen();
      await push(store, id, keeper.id, [row("a-1", "x".repeat(50)), row("a-2", "y".repeat(50)), row("a-3", "z")]);
      const page = sound(await store.readLog(id, 0, 60));
      expect(page.rows.map((each) => each.id)).toEqual(["a-1"]);
      expect(page.upTo).toBe(3);
      expect(sound(await store.readLog(id, 1, 1)).rows.map((each) => each.id)).toEqual(["a-2"]);
      expect(sound(await store.readLog(id, 3, 60)).rows).toEqual([]);
    });

    it("takes nothing beyond the room of a kitchen, and whole acts only", async () => {
      const { id, keeper } = await newKitchen();
      const acts = [[row("a-1"), row("a-2")], [row("a-3"), row("a-4")], [row("a-5")]];
      const pushed = sound(await store.append({ kitchen: id, device: keeper.id, acts, mostRows: 3, mostBytes: 1e6 }));
      expect(pushed).toMatchObject({ over: ["a-3", "a-4"] });
      expect((await idsOf(store, id)).length).toBe(3);
      const more = { kitchen: id, device: keeper.id, acts: [[row("a-6")]], mostRows: 99, mostBytes: 20 };
      expect(sound(await store.append(more))).toMatchObject({ over: ["a-6"], fresh: [] });
    });

    it("keeps every push of many that come at once on two servers, in one log without gaps", async () => {
      await fc.assert(
        fc.asyncProperty(fc.array(fc.tuple(fc.boolean(), fc.nat(2)), { maxLength: 40 }), async (plan) => {
          const kitchens = [await newKitchen(), await newKitchen(), await newKitchen()];
          const sent = plan.map(([isOther, at], count) => {
            const { id, keeper } = kitchens[at] as (typeof kitchens)[number];
            return push(isOther ? other : store, id, keeper.id, [
              row(`w${at}-${count + 1}`),
              row(`v${at}-${count + 1}`),
            ]);
          });
          for (const { fresh } of await Promise.all(sent)) expect(fresh.length).toBe(2);
          for (const [at, { id }] of kitchens.entries()) {
            const rows = await idsOf(other, id);
            expect(rows.map(([seq]) => seq)).toEqual(rows.map((_, place) => place + 1));
            expect(rows.length).toBe(2 * plan.filter(([, where]) => where === at).length);
          }
        }),
        { numRuns: 10, endOnFailure: true },
      );
    });

    it("lets one device in by an invitation, whichever server it comes to, and none when it is too old or revoked", async () => {
      const { id, keeper } = await newKitchen();
      const invite = async (expiresAtMs: number) => {
        const name = newName("invite");
        const invitation = { id: name, kitchen: id, role: "cook" as const, secretHash: hash(name), madeBy: keeper.id };
        sound(await store.addInvitation({ ...invitation, expiresAtMs }, 10));
        return name;
      };
      const once = await invite(100);
      expect(sound(await other.findInvitation(once))).toMatchObject({ kitchen: id, role: "cook", expiresAtMs: 100 });
      const come = (at: HostStore, name: string, nowMs: number) =>
        at.useInvitation(name, deviceOf(id, { role: "cook" }), nowMs);
      const outcomes = await Promise.all([come(store, once, 50), come(other, once, 50), come(store, once, 50)]);
      expect(outcomes.slice().sort()).toEqual(["done", "spent", "spent"]);
      expect(await come(store, await invite(100), 100)).toBe("spent");
      const gone = await invite(200);
      expect(sound(await store.listInvitations(id, 150)).map((each) => each.id)).toEqual([gone]);
      expect(await store.removeInvitation(id, gone)).toBe("done");
      expect(await store.removeInvitation(id, gone)).toBe("missing");
      expect(await come(other, gone, 50)).toBe("spent");
      expect(sound(await store.listDevices(id)).map((each) => each.role)).toEqual(["keeper", "cook"]);
    });

    it("lets no invitation into another kitchen", async () => {
      const [one, two] = [await newKitchen(), await newKitchen()];
      const name = newName("invite");
      const invitation = { id: name, kitchen: one.id, role: "keeper" as const, secretHash: hash(name) };
      sound(await store.addInvitation({ ...invitation, madeBy: one.keeper.id, expiresAtMs: 100 }, 10));
      expect(await store.useInvitation(name, deviceOf(two.id), 50)).toBe("spent");
    });

    it("never leaves a kitchen without a keeper, even where two remove each other at once", async () => {
      const { id, keeper } = await newKitchen();
      expect(await store.removeDevice(id, keeper.id)).toBe("last-keeper");
      expect(await store.changeRole(id, keeper.id, "reader")).toBe("last-keeper");
      expect(await store.changeRole(id, keeper.id, "keeper")).toBe("done");
      expect(await store.removeDevice(id, "device-none")).toBe("missing");
      const second = deviceOf(id);
      const name = newName("invite");
      const invitation = { id: name, kitchen: id, role: "keeper" as const, secretHash: hash(name) };
      sound(await store.addInvitation({ ...invitation, madeBy: keeper.id, expiresAtMs: 100 }, 10));
      expect(await store.useInvitation(name, second, 50)).toBe("done");
      const both = await Promise.all([store.removeDevice(id, keeper.id), other.removeDevice(id, second.id)]);
      expect(both.slice().sort()).toEqual(["done", "last-keeper"]);
    });

    it("keeps addresses of calendars up to a number, however many come at once, and takes them away with their device", async () => {
      const { id, keeper } = await newKitchen();
      const add = (at: HostStore, madeBy: string, most = 3) => {
        const name = newName("calendar");
        const held = { id: name, kitchen: id, madeBy, secretHash: hash(name), manner: "{}", madeAtMs: 5, seenAtMs: 5 };
        return at.calendars.add(held, most);
      };
      const second = deviceOf(id, { role: "cook" });
      const name = newName("invite");
      const invitation = { id: name, kitchen: id, role: "cook" as const, secretHash: hash(name) };
      sound(await store.addInvitation({ ...invitation, madeBy: keeper.id, expiresAtMs: 100 }, 10));
      expect(await store.useInvitation(name, second, 50)).toBe("done");
      const adds = [add(store, keeper.id), add(other, second.id), add(store, second.id), add(other, keeper.id)];
      expect((await Promise.all(adds)).slice().sort()).toEqual(["done", "done", "done", "full"]);
      const listed = sound(await other.calendars.list(id));
      expect(listed.length).toBe(3);
      const [first] = listed;
      const found = sound(await store.calendars.find(id, first?.id ?? ""));
      expect(found && new Uint8Array(found.secretHash)).toEqual(hash(first?.id ?? ""));
      expect(sound(await store.calendars.find("kitchen-else", first?.id ?? ""))).toBeUndefined();
      sound(await store.calendars.noteSeen(id, first?.id ?? "", 77));
      expect(sound(await other.calendars.find(id, first?.id ?? ""))).toMatchObject({ seenAtMs: 77, manner: "{}" });
      expect(await store.removeDevice(id, second.id)).toBe("done");
      const left = sound(await store.calendars.list(id));
      expect(new Set(left.map(({ madeBy }) => madeBy))).toEqual(new Set([keeper.id]));
      expect(await store.calendars.remove(id, left[0]?.id ?? "")).toBe("done");
      expect(await store.calendars.remove(id, left[0]?.id ?? "")).toBe("missing");
    });

    it("keeps nothing of a device that was removed", async () => {
      const { id } = await newKitchen();
      const stranger = { kitchen: id, device: "device-gone", acts: [[row("a-1")]], ...ROOM };
      expect(await store.append(stranger)).toEqual({ kind: "gone" });
      expect(await idsOf(store, id)).toEqual([]);
    });

    it("gives a writer to the device that claimed it first", async () => {
      const { id, keeper } = await newKitchen();
      const claims = await Promise.all([
        store.claimWriter(id, "phone-x", keeper.id),
        other.claimWriter(id, "phone-x", "device-two"),
      ]);
      expect(claims[0]).toEqual(claims[1]);
      const owners = sound(await store.ownersOf(id, ["phone-x", "phone-y"]));
      expect([...owners.keys()]).toEqual(["phone-x"]);
    });

    it("brings a kitchen back from its copy, under another name of its log", async () => {
      const { id, keeper } = await newKitchen();
      await push(store, id, keeper.id, [row("a-1")], [row("a-2")]);
      sound(await store.claimWriter(id, "a", keeper.id));
      const name = newName("calendar");
      const held = { id: name, kitchen: id, madeBy: keeper.id, secretHash: hash(name), manner: "{}" };
      sound(await store.calendars.add({ ...held, madeAtMs: 5, seenAtMs: 5 }, 9));
      let copy: KitchenCopy | undefined;
      for await (const each of store.copyAll()) if (sound(each).kitchen.id === id) copy = sound(each);
      await push(store, id, keeper.id, [row("a-3")]);
      expect(await other.restore(copy as KitchenCopy, "log-anew-1")).toBe("done");
      expect(sound(await store.findKitchen(id))).toMatchObject({ log: "log-anew-1", upTo: 2 });
      expect((await idsOf(store, id)).map(([, each]) => each)).toEqual(["a-1", "a-2"]);
      const again = sound(await store.findDevice(id, keeper.id));
      expect(again && new Uint8Array(again.secretHash)).toEqual(keeper.secretHash);
      expect(sound(await store.ownersOf(id, ["a"]))).toEqual(new Map([["a", keeper.id]]));
      expect(sound(await store.calendars.list(id)).map((each) => each.id)).toEqual([name]);
    });

    it("keeps nothing of a kitchen that was deleted", async () => {
      const [{ id, keeper }, neighbour] = [await newKitchen(), await newKitchen()];
      await push(store, id, keeper.id, [row("a-1")]);
      await push(store, neighbour.id, neighbour.keeper.id, [row("a-1")]);
      const name = newName("calendar");
      const held = { id: name, kitchen: id, madeBy: keeper.id, secretHash: hash(name), manner: "{}" };
      sound(await store.calendars.add({ ...held, madeAtMs: 5, seenAtMs: 5 }, 9));
      expect(await other.deleteKitchen(id)).toBe("done");
      expect(await idsOf(store, neighbour.id)).toEqual([[1, "a-1"]]);
      expect(sound(await store.findKitchen(id))).toBeUndefined();
      expect(sound(await store.listDevices(id))).toEqual([]);
      expect(sound(await store.calendars.list(id))).toEqual([]);
      expect(await idsOf(store, id)).toEqual([]);
      expect(await store.append({ kitchen: id, device: keeper.id, acts: [[row("a-2")]], ...ROOM })).toEqual({
        kind: "gone",
      });
    });

    it("forgets kitchens that no device has come to for long, and no others", async () => {
      const [left, used] = [await newKitchen(), await newKitchen()];
      sound(await store.noteSeen(left.id, left.keeper.id, -200));
      sound(await store.noteSeen(used.id, used.keeper.id, -100));
      expect(sound(await other.forgetUnseen(-150))).toEqual([left.id]);
      expect(sound(await store.findKitchen(left.id))).toBeUndefined();
      expect(sound(await store.findKitchen(used.id))).toBeDefined();
      expect(sound(await other.forgetUnseen(-150))).toEqual([]);
    });

    it("notes when a device came, can be reached, and says that it is closed where it is", async () => {
      const { id, keeper } = await newKitchen();
      sound(await store.noteSeen(id, keeper.id, 77));
      expect(sound(await store.findDevice(id, keeper.id))).toMatchObject({ seenAtMs: 77, name: "Phone" });
      expect(await store.ping()).toBe("done");
      const third = await open();
      await third.close();
      expect(await third.ping()).toMatchObject({ ok: false, reason: "closed" });
    });
  });
}
