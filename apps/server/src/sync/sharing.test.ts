import { loadDemoKitchens } from "@halfloaf/data";
import { openMemoryStore } from "@halfloaf/keep/testing/memory";
import { parseKitchen } from "halfloaf/kitchen";
import { fromKitchen, toCanonicalText } from "halfloaf/kitchen/record";
import { describe, expect, it } from "vitest";
import {
  answered,
  boughtOats,
  desk,
  letIn,
  makeKitchen,
  type TestDevice,
  type TestHost,
  until,
} from "../testing/startHost.testing.ts";
import { useHosts } from "../testing/useHosts.testing.ts";

const { start, open, join } = useHosts();
const lots = ({ kept }: TestDevice) => [...kept.events.state.lots.keys()].sort();
const tell = ({ kept }: TestDevice) => toCanonicalText(kept.rows());

function demoKitchen() {
  const read = parseKitchen(loadDemoKitchens()[0]?.content);
  if (!read.ok) throw new Error("the demo kitchen can't be read");
  return fromKitchen(read.value).kitchen;
}

async function pair(host: TestHost, role: "keeper" | "cook" | "reader" = "cook") {
  const keeper = await makeKitchen(host);
  const other = await letIn(keeper, role);
  return { keeper, other, phone: await join(keeper, "phone"), laptop: await join(other, "laptop") };
}

describe("A shared kitchen", () => {
  it("comes whole to a device that joins, and what one does is at the other's at once", async () => {
    const host = await start();
    const keeper = await makeKitchen(host);
    const phone = await join(keeper, "phone");
    await phone.kept.edit(() => demoKitchen());
    await phone.kept.add([boughtOats("oats-1")]);
    await phone.sync.settled();
    const laptop = await join(await letIn(keeper, "cook"), "laptop");
    expect(tell(laptop)).toBe(tell(phone));
    expect(laptop.sync.view).toMatchObject({ state: { kind: "together" }, role: "cook", unsent: 0 });
    await laptop.kept.add([boughtOats("oats-2")], "ada");
    await until(() => lots(phone).length === 2);
    expect(phone.kept.history().at(-1)).toMatchObject({ by: "ada", writer: laptop.kept.writer });
    expect(tell(laptop)).toBe(tell(phone));
  });

  it("takes in what was done apart on both sides, also where neither remembers what it had read", async () => {
    const host = await start();
    const { other, phone, laptop } = await pair(host);
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => lots(laptop).length === 1);
    for (const { sync } of [phone, laptop]) sync.stop();
    await phone.kept.add([boughtOats("oats-2")]);
    await laptop.kept.add([boughtOats("oats-3")]);
    expect(phone.sync.view).toMatchObject({ state: { kind: "apart" }, unsent: 0 });
    const store = openMemoryStore();
    const fresh = await join(other, "tablet", { store });
    await fresh.kept.merge(laptop.kept.rawRows());
    phone.sync.start();
    await phone.sync.settled();
    await until(() => lots(phone).length === 3);
    expect(tell(fresh)).toBe(tell(phone));
  });

  it("keeps both uses of the last of a lot, gives never more than there was, and asks for a count", async () => {
    const host = await start();
    const { phone, laptop } = await pair(host);
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => lots(laptop).length === 1);
    for (const { sync } of [phone, laptop]) sync.stop();
    const lastOats = { kind: "used" as const, on: "2026-03-03", lot: "oats-1", massG: 400 };
    for (const { kept } of [phone, laptop]) await kept.add([lastOats]);
    for (const { sync } of [phone, laptop]) sync.start();
    await until(() => [phone, laptop].every(({ kept }) => kept.events.events.length === 3));
    for (const { kept } of [phone, laptop]) {
      const { lots: known, toCount, plates } = kept.events.state;
      expect(known.get("oats-1")).toMatchObject({ leftG: 0, leftMinor: 0 });
      expect(plates.reduce((sum, { costMinor }) => sum + costMinor, 0)).toBe(85);
      expect(toCount.get("oats-1")).toMatchObject({ shortG: 300 });
    }
    expect(tell(phone)).toBe(tell(laptop));
  });

  it("is told as sent only once it is on the server's disk, and sent again where that failed", async () => {
    const host = await start();
    const { phone, laptop } = await pair(host);
    const { append } = host.parts.store;
    host.parts.store.append = async () => ({ ok: false, reason: "full", detail: "as told" });
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => phone.sync.view.hasTrouble);
    expect(phone.sync.view.unsent).toBe(1);
    expect(lots(laptop)).toEqual([]);
    host.parts.store.append = append;
    await phone.sync.settled();
    expect(phone.sync.view.hasTrouble).toBe(false);
    await until(() => lots(laptop).length === 1);
    expect(host.journal.some(({ event }) => event === "store-trouble")).toBe(true);
  });

  it("gives back what a role may not do, with the reason; the device keeps it and nobody else sees it", async () => {
    const host = await start();
    const { phone, laptop } = await pair(host);
    await phone.kept.edit(() => demoKitchen());
    await until(() => laptop.kept.kitchen().ok);
    const { rows } = await laptop.kept.edit((kitchen) => ({ ...(kitchen ?? demoKitchen()), name: "Loft" }));
    await laptop.kept.add([boughtOats("oats-1")]);
    await laptop.sync.settled();
    expect(laptop.sync.view.returned).toEqual([{ id: rows[0]?.id, reason: "role" }]);
    await until(() => lots(phone).length === 1);
    const names = [phone, laptop].map(({ kept }) => {
      const read = kept.kitchen();
      return read.ok ? read.value.kitchen.name : "";
    });
    expect(names).toEqual([demoKitchen().name, "Loft"]);
  });

  it("lets a reader read and write nothing", async () => {
    const host = await start();
    const { phone, laptop } = await pair(host, "reader");
    await laptop.kept.add([boughtOats("oats-9")]);
    await laptop.sync.settled();
    expect(laptop.sync.view.returned.map(({ reason }) => reason)).toEqual(["role"]);
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => lots(laptop).includes("oats-1"));
    expect(lots(phone)).toEqual(["oats-1"]);
  });

  it("takes what was refused once the role allows it", async () => {
    const host = await start();
    const { keeper, other, phone, laptop } = await pair(host, "reader");
    await laptop.kept.add([boughtOats("oats-1")]);
    await until(() => laptop.sync.view.returned.length === 1);
    answered(await desk.changeRole(keeper, other.device, "cook"));
    await until(() => lots(phone).length === 1);
    expect(laptop.sync.view).toMatchObject({ role: "cook", returned: [] });
  });

  it("tells who is there, where they are, and when they leave", async () => {
    const host = await start();
    const { other, phone, laptop } = await pair(host);
    laptop.sync.sayPlace({ by: "ada", at: "buying" });
    await until(() => phone.sync.view.here.some(({ at }) => at === "buying"));
    const seen = phone.sync.view.here.find(({ device }) => device === other.device);
    expect(seen).toEqual({ device: other.device, name: "Laptop", role: "cook", by: "ada", at: "buying" });
    laptop.sync.stop();
    await until(() => phone.sync.view.here.length === 1);
  });

  it("ends for a device that is removed, at once, and its work stays with it", async () => {
    const host = await start();
    const { keeper, other, phone, laptop } = await pair(host);
    answered(await desk.removeDevice(keeper, other.device));
    await until(() => laptop.sync.view.state.kind === "refused");
    expect(laptop.sync.view.state).toEqual({ kind: "refused", reason: "revoked" });
    await laptop.kept.add([boughtOats("oats-1")]);
    expect(lots(laptop)).toEqual(["oats-1"]);
    expect(lots(phone)).toEqual([]);
    const again = await join(other, "laptop");
    expect(again.sync.view.state).toEqual({ kind: "refused", reason: "unknown" });
  });

  it("ends with its reason also for a device that is still busy with rows as it is removed", async () => {
    const host = await start();
    const { keeper, other, phone, laptop } = await pair(host);
    laptop.sync.stop();
    const store = openMemoryStore();
    const { read } = store;
    const slow = await join(other, "tablet", { store });
    let goOn = () => {};
    const stuck = new Promise<void>((resolve) => {
      goOn = resolve;
    });
    let isBusy = false;
    store.read = async (after) => {
      isBusy = true;
      await stuck;
      return read(after);
    };
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => isBusy);
    answered(await desk.removeDevice(keeper, other.device));
    await until(() => phone.sync.view.here.length === 1);
    await new Promise((resolve) => setTimeout(resolve, 100));
    goOn();
    await until(() => slow.sync.view.state.kind === "refused");
    expect(slow.sync.view.state).toEqual({ kind: "refused", reason: "revoked" });
  });

  it("ends for all when it is deleted; what they have stays with them", async () => {
    const host = await start();
    const { keeper, phone, laptop } = await pair(host);
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => lots(laptop).length === 1);
    answered(await desk.deleteKitchen(keeper));
    await until(() => laptop.sync.view.state.kind === "refused" && phone.sync.view.state.kind === "refused");
    expect(lots(laptop)).toEqual(["oats-1"]);
    expect((await desk.exportKitchen(keeper)).ok).toBe(false);
  });

  it("goes on when the server comes back after it was stopped", async () => {
    const host = await start();
    const { phone, laptop } = await pair(host);
    const { store } = host.parts;
    const { close } = store;
    store.close = async () => {};
    await host.stop();
    await until(() => phone.sync.view.state.kind === "apart");
    await phone.kept.add([boughtOats("oats-1")]);
    expect(phone.sync.view.unsent).toBe(1);
    store.close = close;
    await start({ store, port: host.port });
    await until(() => lots(laptop).length === 1);
  });

  it("reads everything anew where the device has lost it, and refuses to mix two kitchens", async () => {
    const host = await start();
    const { keeper, phone } = await pair(host);
    await phone.kept.add([boughtOats("oats-1")]);
    await phone.sync.settled();
    const mark = { value: { log: "whatever0", upTo: 1 } as { log: string; upTo: number } | undefined };
    const first = await join(keeper, "phone", { mark });
    expect(lots(first)).toEqual(["oats-1"]);
    const lost = await join(keeper, "phone", { mark });
    await until(() => lots(lost).length === 1);
    const stranger = await open(keeper, "stranger");
    await stranger.kept.add([boughtOats("rice-1")]);
    stranger.sync.start();
    await stranger.sync.settled();
    expect(stranger.sync.view.state).toEqual({ kind: "refused", reason: "other-kitchen" });
    expect(lots(stranger)).toEqual(["rice-1"]);
    expect(lots(phone)).toEqual(["oats-1"]);
  });

  it("comes to more rows than one message holds", async () => {
    const host = await start({ limits: { messageBytes: 60_000 } });
    const { phone, laptop } = await pair(host);
    for (let at = 0; at < 30; at++)
      void phone.kept.add(Array.from({ length: 50 }, (_, each) => boughtOats(`oats-${at}-${each}`)));
    await until(() => lots(laptop).length === 1_500);
    expect(tell(laptop)).toBe(tell(phone));
  });

  it("can be taken home as a backup", async () => {
    const host = await start();
    const { keeper, phone } = await pair(host);
    await phone.kept.add([boughtOats("oats-1")]);
    await phone.sync.settled();
    const backup = answered(await desk.exportKitchen(keeper));
    expect(backup).toMatchObject({ format: "halfloaf-backup", rows: phone.kept.rawRows() });
  });
});
