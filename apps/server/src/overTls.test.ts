import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPostgresHost } from "./host/openPostgresHost.ts";
import { makeCertificate } from "./testing/makeCertificate.testing.ts";
import { ServerProcess } from "./testing/ServerProcess.testing.ts";
import {
  findPostgres,
  findProgram,
  findRedis,
  type Service,
  startPostgres,
  startRedis,
} from "./testing/startServices.testing.ts";
import { useHosts } from "./testing/useHosts.testing.ts";
import { openRedisWire } from "./wire/openRedisWire.ts";

const [programs, program] = [findPostgres(), findRedis()];
const { newFolder } = useHosts();

if (programs === undefined || program === undefined || findProgram("openssl") === undefined)
  it.skip("TLS to PostgreSQL and Redis: PostgreSQL 15, Redis or openssl is not on this machine");
else
  describe("A server whose PostgreSQL and Redis speak TLS alone", () => {
    const tls = makeCertificate();
    let postgres: Service;
    let redis: Service;
    beforeAll(async () => {
      [postgres, redis] = await Promise.all([startPostgres(programs, tls), startRedis(program, tls)]);
    });
    afterAll(async () => {
      await redis.stop();
      await postgres.stop();
    });
    const write = (certificate: string) => {
      const path = join(newFolder(), "authority.pem");
      writeFileSync(path, certificate);
      return path;
    };
    const address = (authority: string) => `${postgres.url}sslmode=verify-full&sslrootcert=${authority}`;

    it("works with both where it trusts who signed their certificates", async () => {
      const authority = write(tls.certificate);
      const server = await ServerProcess.start({
        DATABASE_URL: address(authority),
        REDIS_URL: redis.url,
        NODE_EXTRA_CA_CERTS: authority,
      });
      try {
        await expect
          .poll(async () => (await fetch(`${server.url}/ready`)).json(), { timeout: 10_000 })
          .toEqual({ ready: true, wire: true });
      } finally {
        await server.kill();
      }
    });

    it("speaks with neither where somebody else signed them, nor without TLS", async () => {
      const stranger = write(makeCertificate().certificate);
      await expect(openPostgresHost(address(stranger))).rejects.toThrow(/certificate|self.signed/i);
      await expect(openPostgresHost(`${postgres.url}sslmode=disable`)).rejects.toThrow(/no pg_hba.conf entry/);
      const wires = [redis.url, redis.url.replace("rediss:", "redis:")].map((url) => openRedisWire(url, "stranger"));
      await new Promise((resolve) => setTimeout(resolve, 500));
      expect(wires.map(({ hears }) => hears)).toEqual([false, false]);
      for (const wire of wires) await wire.close();
    });
  });
