import { afterAll, beforeAll, describe, it } from "vitest";
import { findPostgres, type Service, startPostgres } from "../testing/startServices.testing.ts";
import { describeHostStore } from "./describeHostStore.testing.ts";
import { openPostgresHost } from "./openPostgresHost.ts";

const programs = findPostgres();

if (programs === undefined) it.skip("A server's store in PostgreSQL 15: its programs are not on this machine");
else
  describe("On PostgreSQL 15", () => {
    let service: Service;
    beforeAll(async () => {
      service = await startPostgres(programs);
    }, 60_000);
    afterAll(() => service.stop());
    describeHostStore("A server's store in PostgreSQL", () => openPostgresHost(service.url));
  });
