import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, describe, expect, it } from "vitest";
import { describeChunkStore } from "./describeChunkStore.testing.ts";
import { openSqliteStore, salvageChunks } from "./sqliteStore.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-keep-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
const newPath = () => join(folder, `kitchen-${++count}.sqlite`);

describeChunkStore("A store in SQLite", async () => {
  const path = newPath();
  return {
    open: async () => openSqliteStore(path),
    spoil: async (seq) => {
      const database = new DatabaseSync(path);
      const row = database.prepare("SELECT bytes FROM chunks WHERE seq = ?").get(seq) as { bytes: Uint8Array };
      const spoilt = row.bytes.map((byte, at) => (at === 1 ? byte ^ 1 : byte));
      database.prepare("UPDATE chunks SET bytes = ? WHERE seq = ?").run(spoilt, seq);
      database.close();
    },
    raiseVersion: async () => {
      const database = new DatabaseSync(path);
      database.exec("PRAGMA user_version = 2");
      database.close();
    },
  };
});

describe("A damaged file of SQLite", () => {
  it("is told apart from one that can't be opened", () => {
    const path = newPath();
    writeFileSync(path, new Uint8Array(8192).fill(7));
    expect(openSqliteStore(path)).toMatchObject({ ok: false, reason: "damaged" });
    expect(openSqliteStore(join(folder, "nowhere", "kitchen.sqlite"))).toMatchObject({
      ok: false,
      reason: "unopenable",
    });
  });

  it("still gives the chunks that can be read", async () => {
    const path = newPath();
    const opened = openSqliteStore(path);
    if (!opened.ok) throw new Error(opened.detail);
    for (let value = 0; value < 200; value++) await opened.store.append(new Uint8Array(900).fill(value));
    await opened.store.close();
    const bytes = readFileSync(path);
    // Overwrites two pages in the middle, headers and all.
    bytes.fill(0xff, 4096 * 20, 4096 * 22);
    writeFileSync(path, bytes);
    expect(openSqliteStore(path)).toMatchObject({ ok: false, reason: "damaged" });
    const chunks = salvageChunks(path);
    expect(chunks.length).toBeGreaterThan(150);
    expect(chunks.length).toBeLessThan(200);
    for (const chunk of chunks) expect(new Set(chunk.bytes).size).toBe(1);
  });

  it("gives nothing where nothing of it can be read", () => {
    const path = newPath();
    writeFileSync(path, "no database at all");
    expect(salvageChunks(path)).toEqual([]);
  });
});
