import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, expect, it } from "vitest";
import { describeHostStore } from "./describeHostStore.testing.ts";
import { openSqliteHost } from "./openSqliteHost.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-host-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describeHostStore("A server's store in SQLite", async () => openSqliteHost(join(folder, "host.sqlite")));

it("A store of a newer server is not opened", () => {
  const path = join(folder, "newer.sqlite");
  const database = new DatabaseSync(path);
  database.exec("PRAGMA user_version = 99");
  database.close();
  expect(() => openSqliteHost(path)).toThrow(/newer server/);
});
