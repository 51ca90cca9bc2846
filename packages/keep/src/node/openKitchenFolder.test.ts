import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, describe, expect, it } from "vitest";
import { parseBackup, toBackup } from "../backup.ts";
import type { KeptKitchen } from "../KeptKitchen.ts";
import { boughtOats, demoKitchen, foods, openKept, readDemoKitchen } from "../keep.testing.ts";
import { openMemoryStore } from "../memoryStore.testing.ts";
import { isKitchenFolder, openKitchenFolder, type Repair } from "./openKitchenFolder.ts";
import { listSnapshots } from "./snapshots.ts";

const root = mkdtempSync(join(tmpdir(), "halfloaf-folder-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));
let count = 0;
const newFolder = () => join(root, `kitchen ${++count}`);
const DAY_MS = 86_400_000;

async function openAt(folder: string, nowMs = DAY_MS): Promise<{ kept: KeptKitchen; repair?: Repair }> {
  const opened = await openKitchenFolder(folder, { foods, device: "laptop", now: () => nowMs });
  if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
  return opened;
}

const lots = (kept: KeptKitchen) => [...kept.events.state.lots.keys()].sort();

async function fill(folder: string, lotCount: number): Promise<void> {
  const { kept } = await openAt(folder);
  await kept.edit(() => demoKitchen("one-ring"));
  for (let lot = 1; lot <= lotCount; lot++) await kept.add([boughtOats(`oats-${lot}`)]);
  await kept.close();
}

describe("A kitchen folder", () => {
  it("is made where there is none and has everything again", async () => {
    const folder = newFolder();
    expect(isKitchenFolder(folder)).toBe(false);
    await fill(folder, 3);
    expect(isKitchenFolder(folder)).toBe(true);
    const { kept, repair } = await openAt(folder);
    expect(repair).toBeUndefined();
    expect(lots(kept)).toEqual(["oats-1", "oats-2", "oats-3"]);
    await kept.close();
  });

  it("gets a snapshot once a day and keeps the last ones", async () => {
    const folder = newFolder();
    await fill(folder, 1);
    for (const day of [2, 2.5, 3, 3.75, 4.25]) await (await openAt(folder, day * DAY_MS)).kept.close();
    expect(listSnapshots(folder)).toEqual([4.25, 3, 2].map((day) => day * DAY_MS));
    for (let day = 10; day < 40; day++) await (await openAt(folder, day * DAY_MS)).kept.close();
    expect(listSnapshots(folder).length).toBe(14);
  });

  it("is mended where pieces of it are spoilt: what comes after them and what the snapshot has is there", async () => {
    const folder = newFolder();
    await fill(folder, 6);
    await (await openAt(folder, 2 * DAY_MS)).kept.close();
    const { kept: later } = await openAt(folder, 2 * DAY_MS + 1);
    for (const lot of ["late-1", "late-2", "late-3"]) await later.add([boughtOats(lot)]);
    await later.close();
    const database = new DatabaseSync(join(folder, "kitchen.sqlite"));
    database.exec("UPDATE chunks SET bytes = zeroblob(length(bytes)) WHERE seq IN (3, 8)");
    database.close();
    const { kept, repair } = await openAt(folder, 2 * DAY_MS + 2);
    expect(repair).toMatchObject({ damaged: 2 });
    // One of the late ones was in a spoilt piece and in no snapshot.
    expect(lots(kept).length).toBe(8);
    expect(lots(kept)).toEqual(expect.arrayContaining(["oats-1", "oats-6", "late-3"]));
    await kept.close();
    const again = await openAt(folder, 2 * DAY_MS + 3);
    expect(again.repair).toBeUndefined();
    expect(lots(again.kept).length).toBe(8);
    await again.kept.close();
  });

  it("is made anew from its snapshot where the file is no database any more, and the file is set aside", async () => {
    const folder = newFolder();
    await fill(folder, 4);
    await (await openAt(folder, 2 * DAY_MS)).kept.close();
    for (const end of ["", "-wal", "-shm"]) {
      const path = join(folder, `kitchen.sqlite${end}`);
      if (existsSync(path)) writeFileSync(path, "half written");
    }
    const { kept, repair } = await openAt(folder, 2 * DAY_MS + 5);
    expect(lots(kept)).toEqual(["oats-1", "oats-2", "oats-3", "oats-4"]);
    expect(repair?.setAside).toBeDefined();
    expect(readFileSync(repair?.setAside ?? "", "utf8")).toBe("half written");
    expect(readdirSync(folder)).not.toContain("repair.hold");
    await kept.close();
  });

  it("of a newer version stays as it is", async () => {
    const folder = newFolder();
    await fill(folder, 1);
    const path = join(folder, "kitchen.sqlite");
    const database = new DatabaseSync(path);
    database.exec("PRAGMA user_version = 9");
    database.close();
    const before = readFileSync(path);
    const opened = await openKitchenFolder(folder, { foods, device: "laptop" });
    expect(opened).toMatchObject({ ok: false, reason: "newer", detail: "9" });
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});

describe("A backup", () => {
  it("brings back the same kitchen, and once only", async () => {
    const kept = await openKept(openMemoryStore());
    await kept.edit(() => demoKitchen("one-ring"));
    await kept.add([boughtOats("oats-1")], "ada");
    await kept.undo();
    const read = parseBackup(JSON.parse(toBackup(kept, 5)));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const restored = await openKept(openMemoryStore());
    expect((await restored.merge(read.value)).added).toBe(kept.rows().length);
    expect((await restored.merge(read.value)).added).toBe(0);
    expect(restored.rows()).toEqual(kept.rows());
    expect(restored.kitchen()).toEqual(kept.kitchen());
  });

  it("of a newer version is refused whole", () => {
    const read = parseBackup({ format: "halfloaf-backup", version: 2, writtenAtMs: 0, rows: [] });
    expect(read).toMatchObject({ ok: false, issues: [{ code: "version-newer", received: "2" }] });
  });

  it("may be a kitchen's file", async () => {
    const kitchen = readDemoKitchen("one-ring");
    const read = parseBackup(JSON.parse(JSON.stringify(kitchen)));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const kept = await openKept(openMemoryStore());
    await kept.merge(read.value);
    expect(kept.kitchen()).toMatchObject({ ok: true, value: { kitchen: demoKitchen("one-ring") } });
    expect(kept.events.state.lots.size).toBe(kitchen.stores.length);
  });
});
