import { readFileSync, writeFileSync } from "node:fs";
import { join as joinPath } from "node:path";
import { gunzipSync } from "node:zlib";
import { toCanonicalText } from "halfloaf/kitchen/record";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCopies, writeCopies } from "./copies.ts";
import type { HostStore } from "./host/HostStore.ts";
import { openPostgresHost } from "./host/openPostgresHost.ts";
import { openSqliteHost } from "./host/openSqliteHost.ts";
import { MANNER } from "./testing/manner.testing.ts";
import { answered, boughtOats, desk, letIn, makeKitchen, until } from "./testing/startHost.testing.ts";
import { findPostgres, makeDatabase, type Service, startPostgres } from "./testing/startServices.testing.ts";
import { useHosts } from "./testing/useHosts.testing.ts";

const { start, join, open, newFolder } = useHosts();
const programs = findPostgres();
let postgres: Service | undefined;
let databases = 0;
beforeAll(async () => {
  postgres = programs === undefined ? undefined : await startPostgres(programs);
});
afterAll(() => postgres?.stop());

const openSqlite = async (): Promise<HostStore> => openSqliteHost(joinPath(newFolder(), "host.sqlite"));
const openPostgres = async (): Promise<HostStore> =>
  openPostgresHost(await makeDatabase(postgres as Service, `copies${++databases}`));
const kinds = [
  { name: "SQLite", openHere: openSqlite, elsewhere: "PostgreSQL", openThere: programs ? openPostgres : openSqlite },
  ...(programs ? [{ name: "PostgreSQL", openHere: openPostgres, elsewhere: "SQLite", openThere: openSqlite }] : []),
];

describe.each(kinds)("Kitchens on a server over $name", ({ openHere, openThere }) => {
  it("are copied while devices go on writing, and brought back in the other kind of store; devices bring what came later", async () => {
    const host = await start({ store: await openHere() });
    const keeper = await makeKitchen(host);
    const { address } = answered(await desk.makeCalendar(keeper, MANNER));
    const phone = await join(keeper, "phone");
    await phone.kept.add([boughtOats("oats-0")]);
    await phone.sync.settled();
    let isCopying = true;
    let made = 0;
    const writing = (async () => {
      while (isCopying || made < 20) {
        await phone.kept.add([boughtOats(`oats-${++made}`)]);
        await new Promise((resolve) => setTimeout(resolve, 1));
      }
    })();
    const file = joinPath(newFolder(), "copies.gz");
    expect(await writeCopies(host.parts.store, file)).toBe(1);
    isCopying = false;
    await writing;
    await phone.sync.settled();
    phone.sync.stop();
    const secret = keeper.credential.split(".")[1] ?? "";
    expect(gunzipSync(readFileSync(file)).toString()).not.toContain(secret);
    const there = await openThere();
    expect(await readCopies(there, file)).toBe(1);
    const second = await start({ store: there });
    const moved = { ...keeper, server: second.url };
    const again = await open(moved, "phone");
    await again.kept.merge(phone.kept.rawRows());
    again.sync.start();
    await again.sync.settled();
    const laptop = await join(moved, "laptop");
    await until(() => laptop.kept.events.state.lots.size === made + 1);
    expect(toCanonicalText(laptop.kept.rows())).toBe(toCanonicalText(phone.kept.rows()));
    expect((await fetch(address.replace(host.url, second.url))).status).toBe(200);
  });

  it("are exported whole at any time, however long, and deleted at once with all that belongs to them", async () => {
    const host = await start({ store: await openHere() });
    const [keeper, neighbour] = [await makeKitchen(host), await makeKitchen(host)];
    const phone = await join(keeper, "phone");
    const note = "x".repeat(60_000);
    await phone.kept.add(Array.from({ length: 40 }, (_, at) => ({ ...boughtOats(`oats-${at}`), note })));
    await phone.sync.settled();
    const backup = answered(await desk.exportKitchen(keeper)) as { format: string; rows: { id: string }[] };
    expect(backup.format).toBe("halfloaf-backup");
    expect(toCanonicalText(backup.rows)).toBe(toCanonicalText(phone.kept.rawRows()));
    const cook = await letIn(keeper, "cook");
    answered(await desk.makeCalendar(cook, MANNER));
    answered(await desk.invite(keeper, "cook"));
    answered(await desk.deleteKitchen(keeper));
    await until(() => phone.sync.view.state.kind === "refused");
    for (const member of [keeper, cook])
      expect(await desk.exportKitchen(member)).toEqual({ ok: false, reason: "unknown" });
    const { store } = host.parts;
    expect(await store.findKitchen(keeper.kitchen)).toBeUndefined();
    expect(await store.listDevices(keeper.kitchen)).toEqual([]);
    expect(await store.listIds(keeper.kitchen)).toEqual([]);
    expect(await store.listInvitations(keeper.kitchen, 0)).toEqual([]);
    expect(await store.calendars.list(keeper.kitchen)).toEqual([]);
    expect((await desk.exportKitchen(neighbour)).ok).toBe(true);
  });
});

it("A file that holds no copies, or only a part of them, is not taken", async () => {
  const store = await openSqlite();
  const folder = newFolder();
  writeFileSync(joinPath(folder, "plain.gz"), "no copies");
  await expect(readCopies(store, joinPath(folder, "plain.gz"))).rejects.toThrow();
  await makeKitchen(await start({ store }));
  const whole = joinPath(folder, "whole.gz");
  await writeCopies(store, whole);
  writeFileSync(joinPath(folder, "part.gz"), readFileSync(whole).subarray(0, -20));
  await expect(readCopies(store, joinPath(folder, "part.gz"))).rejects.toThrow();
});
