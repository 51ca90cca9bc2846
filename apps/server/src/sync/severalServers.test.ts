import { toCanonicalText } from "halfloaf/kitchen/record";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPostgresHost } from "../host/openPostgresHost.ts";
import {
  answered,
  boughtOats,
  desk,
  letIn,
  makeKitchen,
  type TestDevice,
  until,
} from "../testing/startHost.testing.ts";
import { findPostgres, findRedis, type Service, startPostgres, startRedis } from "../testing/startServices.testing.ts";
import { useHosts } from "../testing/useHosts.testing.ts";
import { openRedisWire } from "../wire/openRedisWire.ts";

const programs = findPostgres();
const program = findRedis();
const tell = ({ kept }: TestDevice) => toCanonicalText(kept.rows());
const lots = ({ kept }: TestDevice) => [...kept.events.state.lots.keys()].sort();

if (programs === undefined || program === undefined)
  it.skip(`Several servers: ${programs === undefined ? "PostgreSQL 15" : "Redis"} is not on this machine`);
else
  describe("Several servers over PostgreSQL and Redis", () => {
    const { start, join, end } = useHosts();
    let postgres: Service;
    let redis: Service;
    beforeAll(async () => {
      [postgres, redis] = await Promise.all([startPostgres(programs), startRedis(program)]);
    });
    afterAll(async () => {
      await postgres.stop();
      await redis.stop();
    });

    const startOne = async (name: string) =>
      start({ store: await openPostgresHost(postgres.url), wire: openRedisWire(redis.url, name) });
    /** Two servers, and a device of one kitchen on each. */
    const pair = async () => {
      const [one, other] = [await startOne("one"), await startOne("other")];
      await until(() => one.parts.wire.hears && other.parts.wire.hears);
      const keeper = await makeKitchen(one);
      const guest = { ...(await letIn(keeper, "cook")), server: other.url };
      return { one, other, keeper, guest, phone: await join(keeper, "phone"), laptop: await join(guest, "laptop") };
    };

    it("hand on what is done, and who is there, from each to the other at once", async () => {
      const { phone, laptop } = await pair();
      await until(() => phone.sync.view.here.length === 2 && laptop.sync.view.here.length === 2);
      await phone.kept.add([boughtOats("oats-1")]);
      await until(() => lots(laptop).length === 1);
      await Promise.all(
        [...Array(20).keys()].map((at) => (at % 2 ? phone : laptop).kept.add([boughtOats(`rice-${at}`)])),
      );
      await until(() => lots(laptop).length === 21 && lots(phone).length === 21);
      expect(tell(laptop)).toBe(tell(phone));
      laptop.sync.stop();
      await until(() => phone.sync.view.here.length === 1);
    });

    it("end the talks of a removed device wherever it is", async () => {
      const { keeper, guest, laptop } = await pair();
      answered(await desk.removeDevice(keeper, guest.device));
      await until(() => laptop.sync.view.state.kind === "refused");
    });

    it("agree although Redis is gone for a while", async () => {
      const { phone, laptop } = await pair();
      await redis.kill();
      await phone.kept.add([boughtOats("oats-1")]);
      await until(() => lots(laptop).length === 1);
      await redis.start();
      await until(() => phone.sync.view.state.kind === "together");
      await laptop.kept.add([boughtOats("oats-2")]);
      await until(() => lots(phone).length === 2);
      expect(tell(laptop)).toBe(tell(phone));
    });

    it("tell devices that nothing can be kept while PostgreSQL is gone, and keep it afterwards", async () => {
      const { phone, laptop, one } = await pair();
      await postgres.kill();
      await phone.kept.add([boughtOats("oats-1")]);
      await until(() => phone.sync.view.hasTrouble || phone.sync.view.state.kind !== "together");
      expect((await fetch(`${one.url}/ready`)).status).toBe(503);
      expect((await fetch(`${one.url}/health`)).status).toBe(200);
      await postgres.start();
      await until(() => lots(laptop).length === 1, 20_000);
      expect((await fetch(`${one.url}/ready`)).status).toBe(200);
      await phone.sync.settled();
    });

    it("let a device go on at another server when its own is gone", async () => {
      const { one, other, keeper, phone, laptop } = await pair();
      await phone.kept.add([boughtOats("oats-1")]);
      await phone.sync.settled();
      await end(one);
      const moved = await join({ ...keeper, server: other.url }, "phone-again");
      await moved.kept.add([boughtOats("oats-2")]);
      await until(() => lots(laptop).length === 2);
    });
  });
