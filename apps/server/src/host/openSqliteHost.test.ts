import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, expect, it } from "vitest";
import { describeHostStore } from "./describeHostStore.testing.ts";
import { LAYOUT_ONE_ROWS, writeLayoutOne } from "./layoutOne.testing.ts";
import { openSqliteHost } from "./openSqliteHost.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-host-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describeHostStore("A server's store in SQLite", async () => openSqliteHost(join(folder, "host.sqlite")));

it("A store of the first layout is opened with all that is in it, and has what came since", async () => {
  const path = join(folder, "older.sqlite");
  const database = new DatabaseSync(path);
  database.exec(writeLayoutOne({ whole: "INTEGER", blob: "BLOB", end: " STRICT, WITHOUT ROWID" }));
  database.exec("PRAGMA user_version = 1");
  database.close();
  for (const time of ["first", "again"]) {
    const store = openSqliteHost(path);
    expect(await store.readLog("kitchenold", 0, 1e6), time).toEqual({ rows: LAYOUT_ONE_ROWS, upTo: 1 });
    expect(await store.calendars.list("kitchenold")).toEqual([]);
    await store.close();
  }
});

it("A store of a newer server is not opened", () => {
  const path = join(folder, "newer.sqlite");
  const database = new DatabaseSync(path);
  database.exec("PRAGMA user_version = 99");
  database.close();
  expect(() => openSqliteHost(path)).toThrow(/newer server/);
});
