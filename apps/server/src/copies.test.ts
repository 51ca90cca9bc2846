import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { readCopies, writeCopies } from "./copies.ts";
import { openSqliteHost } from "./host/openSqliteHost.ts";
import { boughtOats, makeKitchen, openDevice, startHost, until } from "./testing/startHost.testing.ts";

const running: { stop(): unknown }[] = [];
afterEach(async () => {
  for (const each of running.splice(0).reverse()) await each.stop();
});
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-copies-"));
  running.push({ stop: () => rmSync(folder, { recursive: true, force: true }) });
  return folder;
};

describe("Copies of all kitchens", () => {
  it("are written while the server goes on, and brought back elsewhere; devices bring what came later", async () => {
    const host = await startHost();
    running.push(host);
    const keeper = await makeKitchen(host);
    const phone = await openDevice(keeper, "phone");
    phone.sync.start();
    await phone.kept.add([boughtOats("oats-1")]);
    await phone.sync.settled();
    const folder = newFolder();
    const file = join(folder, "copies.gz");
    expect(await writeCopies(host.parts.store, file)).toBe(1);
    await phone.kept.add([boughtOats("oats-2")]);
    await phone.sync.settled();
    phone.sync.stop();
    const elsewhere = openSqliteHost(join(folder, "elsewhere.sqlite"));
    expect(await readCopies(elsewhere, file)).toBe(1);
    expect(await elsewhere.endsOf([keeper.kitchen])).toEqual(new Map([[keeper.kitchen, 1]]));
    const second = await startHost({ store: elsewhere });
    running.push(second);
    const moved = { ...keeper, server: second.url };
    const again = await openDevice(moved, "phone");
    await again.kept.merge(phone.kept.rawRows());
    running.push(again.sync);
    again.sync.start();
    await again.sync.settled();
    const laptop = await openDevice(moved, "laptop");
    running.push(laptop.sync);
    laptop.sync.start();
    await until(() => laptop.kept.events.state.lots.size === 2);
  });

  it("are not taken from a file that holds something else", async () => {
    const folder = newFolder();
    const store = openSqliteHost(join(folder, "host.sqlite"));
    running.push({ stop: () => store.close() });
    writeFileSync(join(folder, "plain.gz"), "no copies");
    await expect(readCopies(store, join(folder, "plain.gz"))).rejects.toThrow();
  });
});
