import { request } from "node:https";
import { connect } from "node:tls";
import { HostDesk, type Socket } from "@halfloaf/keep/sync";
import { toCanonicalText } from "halfloaf/kitchen/record";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { WebSocket } from "ws";
import { isFault } from "./host/HostStore.ts";
import { openPostgresHost } from "./host/openPostgresHost.ts";
import { ServerProcess } from "./testing/ServerProcess.testing.ts";
import { BALANCERS, type Balancer, startBalancer } from "./testing/startBalancer.testing.ts";
import { answered, boughtOats, openDevice, type TestDevice, until } from "./testing/startHost.testing.ts";
import {
  findFreePort,
  findPostgres,
  findProgram,
  findRedis,
  type Service,
  startPostgres,
  startRedis,
} from "./testing/startServices.testing.ts";

const METRICS_TOKEN = "balanced-2026-token";
const [programs, program] = [findPostgres(), findRedis()];
const hasOpenssl = findProgram("openssl") !== undefined;
const present = BALANCERS.filter((each) => hasOpenssl && findProgram(each.program) !== undefined);

/** A `fetch` that trusts one certificate. */
const fetchTrusting = (ca: string) => (url: string, asked: RequestInit) =>
  new Promise<Response>((resolve, reject) => {
    const sent = request(url, { ca, method: asked.method, headers: asked.headers as never, agent: false }, (answer) => {
      let text = "";
      answer.on("data", (data) => {
        text += data;
      });
      const { statusCode: status = 0 } = answer;
      answer.on("end", () => resolve(new Response(status === 204 ? null : text, { status })));
    });
    sent.on("error", reject);
    sent.end(asked.body);
  });

async function countOf({ url }: ServerProcess, pattern: RegExp): Promise<number> {
  const answer = await fetch(`${url}/metrics`, { headers: { Authorization: `Bearer ${METRICS_TOKEN}` } });
  return Number(pattern.exec(await answer.text())?.[1] ?? 0);
}
const socketsOf = (server: ServerProcess) => countOf(server, /^halfloaf_sockets (\d+)$/m);
/** Only what came through the balancer asks for what is not there. */
const strayOf = (server: ServerProcess) => countOf(server, /^halfloaf_requests_total\{status="404"\} (\d+)$/m);

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const untilAnswered = async (holds: () => Promise<boolean>) => {
  while (!(await holds())) await wait(50);
};

if (programs === undefined || program === undefined || present.length === 0)
  it.skip("Servers behind a balancer: PostgreSQL 15, Redis, openssl or a balancer is not on this machine");
else
  describe("Two servers over PostgreSQL and Redis", () => {
    let postgres: Service;
    let redis: Service;
    let servers: readonly [ServerProcess, ServerProcess];
    beforeAll(async () => {
      [postgres, redis] = await Promise.all([startPostgres(programs), startRedis(program)]);
      const environment = {
        DATABASE_URL: postgres.url,
        REDIS_URL: redis.url,
        HALFLOAF_TRUSTED_PROXIES: "1",
        HALFLOAF_METRICS_TOKEN: METRICS_TOKEN,
      };
      servers = await Promise.all([ServerProcess.start(environment), ServerProcess.start(environment)]);
    });
    afterAll(async () => {
      for (const server of servers) await server.kill();
      await redis.stop();
      await postgres.stop();
    });

    describe.each(present)("behind $program with the file of the documents", (kind) => {
      let balancer: Balancer;
      const devices: TestDevice[] = [];
      let desk: HostDesk;
      let kitchen = "";
      let made = 0;

      beforeAll(async () => {
        // The third server of the file is away all the time.
        balancer = await startBalancer(kind, [...servers.map(({ port }) => port), await findFreePort()]);
        desk = new HostDesk(fetchTrusting(balancer.certificate));
      });
      afterAll(async () => {
        for (const { sync } of devices) sync.stop();
        await balancer.stop();
      });

      const areTogether = () =>
        devices.every(({ sync: { view } }) => view.state.kind === "together" && view.unsent === 0) &&
        new Set(devices.map(({ kept }) => toCanonicalText(kept.rows()))).size === 1;
      /** Every device buys something, at once. */
      const buy = () => Promise.all(devices.map(({ kept }) => kept.add([boughtOats(`oats-${++made}`)])));
      const haveAll = async () => {
        await until(() => areTogether() && devices[0]?.kept.events.state.lots.size === made, 20_000);
      };

      it("share the sockets between them, and what is done at one is at the other at once", async () => {
        const open = (url: string) => new WebSocket(url, { ca: balancer.certificate }) as unknown as Socket;
        const keeper = answered(await desk.makeKitchen(balancer.url, "Phone"));
        kitchen = keeper.kitchen;
        for (let at = 0; at < 6; at++) {
          const invited = answered(await desk.invite(keeper, "cook"));
          const member = at === 0 ? keeper : answered(await desk.join(invited, `Phone ${at}`));
          const device = await openDevice(member, `d${at}`, { open });
          devices.push(device);
          device.sync.start();
          await device.sync.settled();
        }
        for (const server of servers) expect(await socketsOf(server)).toBeGreaterThanOrEqual(2);
        await buy();
        await haveAll();
      });

      it("lose nothing when one is killed while all devices write", async () => {
        await buy();
        await Promise.all([servers[0].kill(), buy()]);
        await buy();
        await haveAll();
        expect(await socketsOf(servers[1])).toBe(devices.length);
      });

      it("are replaced one after the other while people cook and ask: nothing is lost, and no question goes unanswered", async () => {
        const ask = () => fetchTrusting(balancer.certificate)(`${balancer.url}/api/v1/nothing`, { method: "GET" });
        const asked: number[] = [];
        let isAsking = true;
        const asking = (async () => {
          while (isAsking) {
            asked.push((await ask()).status);
            await wait(20);
          }
        })();
        await servers[0].start();
        await untilAnswered(async () => (await strayOf(servers[0])) > 0);
        await Promise.all([servers[1].kill("SIGTERM"), buy()]);
        await buy();
        await haveAll();
        expect(await socketsOf(servers[0])).toBe(devices.length);
        await servers[1].start();
        await untilAnswered(async () => (await strayOf(servers[1])) > 0);
        await buy();
        await haveAll();
        isAsking = false;
        await asking;
        expect(new Set(asked)).toEqual(new Set([404]));
        const store = await openPostgresHost(postgres.url);
        const ids = await store.listIds(kitchen);
        await store.close();
        expect(isFault(ids) ? ids.detail : ids.length).toBe(made);
      });

      it("take no old TLS, and nothing without TLS but a word where to go", async () => {
        const { status, headers } = await fetch(`http://127.0.0.1:${balancer.plainPort}/`, { redirect: "manual" });
        expect([301, 302, 308]).toContain(status);
        expect(headers.get("location")).toMatch(/^https:/);
        const shake = (version: "TLSv1.1" | "TLSv1.2" | "TLSv1.3") =>
          new Promise<string>((resolve) => {
            const { certificate: ca, port } = balancer;
            const ciphers = "DEFAULT@SECLEVEL=0";
            const socket = connect(
              { host: "127.0.0.1", port, ca, ciphers, minVersion: version, maxVersion: version },
              () => {
                resolve(socket.getProtocol() ?? "");
                socket.destroy();
              },
            );
            socket.on("error", () => resolve("refused"));
          });
        expect(await shake("TLSv1.1")).toBe("refused");
        expect([await shake("TLSv1.2"), await shake("TLSv1.3")]).toEqual(["TLSv1.2", "TLSv1.3"]);
      });
    });
  });
