import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findPostgres, makeDatabase, type Service, startPostgres } from "../testing/startServices.testing.ts";
import { describeHostStore } from "./describeHostStore.testing.ts";
import { LAYOUT_ONE_ROWS, writeLayoutOne } from "./layoutOne.testing.ts";
import { openPostgresHost } from "./openPostgresHost.ts";

const programs = findPostgres();

if (programs === undefined) it.skip("A server's store in PostgreSQL 15: its programs are not on this machine");
else
  describe("On PostgreSQL 15", () => {
    let service: Service;
    beforeAll(async () => {
      service = await startPostgres(programs);
    });
    afterAll(() => service.stop());
    describeHostStore("A server's store in PostgreSQL", () => openPostgresHost(service.url));

    it("A store of the first layout is opened with all that is in it, and has what came since; one of a newer server is not", async () => {
      const url = await makeDatabase(service, "older");
      const client = new pg.Client(url);
      await client.connect();
      await client.query(writeLayoutOne({ whole: "BIGINT", blob: "BYTEA", end: "" }));
      await client.query("CREATE TABLE layout (version INTEGER NOT NULL); INSERT INTO layout VALUES (1)");
      for (const time of ["first", "again"]) {
        const store = await openPostgresHost(url);
        expect(await store.readLog("kitchenold", 0, 1e6), time).toEqual({ rows: LAYOUT_ONE_ROWS, upTo: 1 });
        expect(await store.calendars.list("kitchenold")).toEqual([]);
        await store.close();
      }
      await client.query("UPDATE layout SET version = 99");
      await client.end();
      await expect(openPostgresHost(url)).rejects.toThrow(/layout 99/);
    });
  });
