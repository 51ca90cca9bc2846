import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { WebSocket } from "ws";
import { comeIn, hello, openSpeaker, openTaken, sendRaw } from "./testing/speak.testing.ts";
import {
  answered,
  boughtOats,
  desk,
  letIn,
  makeKitchen,
  type TestHost,
  type TestHostOptions,
  until,
} from "./testing/startHost.testing.ts";
import { useHosts } from "./testing/useHosts.testing.ts";

const { start, join: openJoined, newFolder } = useHosts();

/** A server with a kitchen that two honest devices share while somebody else does what they will. */
async function settle(options?: TestHostOptions) {
  const host = await start(options);
  const keeper = await makeKitchen(host);
  const guest = await letIn(keeper, "cook");
  const [phone, laptop] = [await openJoined(keeper, "phone"), await openJoined(guest, "laptop")];
  let count = 0;
  /** The honest devices still reach each other, without having been cut off meanwhile. */
  const isHarmless = async () => {
    const lot = `oats-${++count}`;
    await phone.kept.add([boughtOats(lot)]);
    await until(() => laptop.kept.events.state.lots.has(lot));
    expect([phone.sync.view.state.kind, laptop.sync.view.state.kind]).toEqual(["together", "together"]);
    expect(laptop.kept.rows()).toEqual(phone.kept.rows());
  };
  return { host, keeper, guest, phone, laptop, isHarmless };
}

const events = (host: TestHost) => host.journal.map(({ event, facts }) => `${event} ${facts.reason ?? ""}`.trim());
const SECRET = "A".repeat(43);
const row = (id: string, over: object = {}) => ({ id, atMs: 5, tick: 0, ...boughtOats(`lot-${id}`), ...over });

describe("A forged credential", () => {
  it("lets nobody in, on the socket as over HTTP, is written down, and too many for one name are not heard any more", async () => {
    const { host, keeper, guest, isHarmless } = await settle({ limits: { mistakes: { burst: 6, perSecond: 0.001 } } });
    for (const credential of [`${keeper.device}.${SECRET}`, `${"a".repeat(20)}.${SECRET}`]) {
      const speaker = await openTaken(host);
      speaker.say(hello({ ...keeper, credential }));
      expect((await speaker.next("bye")).reason).toBe("unknown");
      expect(await speaker.closed).toBe(4_000);
      expect(await desk.listDevices({ ...keeper, credential })).toEqual({ ok: false, reason: "unknown" });
    }
    for (const header of ["", "Bearer", "Basic YTpi", `Bearer ${keeper.credential}x`]) {
      const url = `${host.url}/api/v1/kitchens/${keeper.kitchen}/devices`;
      const { status } = await fetch(url, { headers: { Authorization: header } });
      expect([401, 429]).toContain(status);
    }
    const forged = { ...keeper, credential: `${keeper.device}.${SECRET}` };
    for (let count = 0; count < 6; count++) await desk.listDevices(forged);
    expect(await desk.listDevices(forged)).toEqual({ ok: false, reason: "too-many-mistakes" });
    const shut = await openTaken(host);
    shut.say(hello(forged));
    expect((await shut.next("bye")).reason).toBe("full");
    // Neighbours behind the same address come in as before.
    await comeIn(host, guest);
    expect((await desk.listDevices(guest)).ok).toBe(true);
    expect(events(host)).toContain("farewell unknown");
    expect(events(host)).toContain("request-refused too-many-mistakes");
    expect(JSON.stringify(host.journal)).not.toContain(SECRET);
    await isHarmless();
  });

  it("of a removed device is worth nothing", async () => {
    const { host, keeper, isHarmless } = await settle();
    const third = await letIn(keeper, "cook", "Third");
    const speaker = await comeIn(host, third);
    answered(await desk.removeDevice(keeper, third.device));
    expect((await speaker.next("bye")).reason).toBe("revoked");
    expect(await desk.exportKitchen(third)).toEqual({ ok: false, reason: "unknown" });
    await isHarmless();
  });
});

describe("A replayed or foreign invitation", () => {
  it("lets nobody in, whichever kitchen it is shown for", async () => {
    const { host, keeper, isHarmless } = await settle();
    const other = await makeKitchen(host, "Stranger");
    const invited = answered(await desk.invite(other, "keeper"));
    const none = { ok: false, reason: "no-such-invitation" };
    expect(await desk.join({ ...invited, kitchen: keeper.kitchen }, "Thief")).toEqual(none);
    answered(await desk.join(invited, "Friend"));
    expect(await desk.join(invited, "Thief")).toEqual(none);
    expect(await desk.join({ ...invited, code: `${invited.invitation}.${SECRET}` }, "Thief")).toEqual(none);
    expect(await desk.revoke(keeper, answered(await desk.invite(other, "cook")).invitation)).toMatchObject({
      reason: "missing",
    });
    expect(events(host).filter((each) => each === "request-refused no-such-invitation").length).toBe(3);
    await isHarmless();
  });
});

describe("Another kitchen's name", () => {
  it("opens nothing with a credential of one's own, on the socket as over HTTP", async () => {
    const { host, keeper, guest, isHarmless } = await settle();
    const stranger = await makeKitchen(host, "Stranger");
    const posing = { ...stranger, kitchen: keeper.kitchen };
    const speaker = await openTaken(host);
    speaker.say(hello(posing));
    expect((await speaker.next("bye")).reason).toBe("unknown");
    const unknown = { ok: false, reason: "unknown" };
    expect(await desk.exportKitchen(posing)).toEqual(unknown);
    expect(await desk.invite(posing, "keeper")).toEqual(unknown);
    expect(await desk.deleteKitchen(posing)).toEqual(unknown);
    expect(await desk.removeDevice(stranger, guest.device)).toEqual({ ok: false, reason: "missing" });
    expect(await desk.changeRole(stranger, guest.device, "keeper")).toEqual({ ok: false, reason: "missing" });
    expect(events(host)).toEqual(
      expect.arrayContaining(["farewell unknown", "request-refused unknown", "request-refused missing"]),
    );
    await isHarmless();
  });
});

describe("A message", () => {
  it("that is too large is not read, and ends its socket alone", async () => {
    const { host, guest, isHarmless } = await settle({ limits: { messageBytes: 50_000 } });
    const speaker = await comeIn(host, guest);
    speaker.say({ say: "push", ref: 1, rows: ["x".repeat(60_000)] });
    expect(await speaker.closed).toBe(1_009);
    await until(() => events(host).includes("socket-error"));
    await isHarmless();
  });

  it("that is malformed ends its socket, whatever it is", async () => {
    const { host, guest, isHarmless } = await settle();
    const broken = [
      "",
      "{",
      "null",
      "[".repeat(100_000),
      `{"say":"push","ref":1,"rows":${"[".repeat(5_000)}${"]".repeat(5_000)}}`,
      { say: "dance" },
      { say: "push", ref: -1, rows: [1] },
      { say: "push", ref: 1, rows: [] },
      { say: "push", ref: 1, rows: Array(501).fill(1) },
      { say: "here", by: "../etc" },
      { say: "which", extra: 1 },
      hello(guest),
      { __proto__: null, say: "here", constructor: 1 },
    ];
    for (const message of broken) {
      const speaker = await comeIn(host, guest);
      speaker.say(message);
      expect((await speaker.next("bye")).reason).toBe("malformed");
      expect(await speaker.closed).toBe(1_007);
    }
    const binary = await comeIn(host, guest);
    binary.socket.send(new Uint8Array([1, 2, 3]));
    expect((await binary.next("bye")).reason).toBe("malformed");
    expect(events(host).filter((each) => each === "farewell malformed").length).toBe(broken.length + 1);
    await isHarmless();
  });

  it("before the first words, other first words, or none at all end the socket", async () => {
    const { host, guest, isHarmless } = await settle({ limits: { helloMs: 50 } });
    const early = await openTaken(host);
    early.say({ say: "which" });
    expect((await early.next("bye")).reason).toBe("malformed");
    const newer = await openTaken(host);
    newer.say(hello(guest, { protocol: 99 }));
    expect((await newer.next("bye")).reason).toBe("protocol");
    const silent = await openTaken(host);
    expect((await silent.next("bye")).reason).toBe("malformed");
    expect(events(host)).toEqual(expect.arrayContaining(["farewell malformed", "farewell protocol"]));
    await isHarmless();
  });

  it("of whatever kind ends no other socket and no server", async () => {
    const { host, guest, isHarmless } = await settle();
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), fc.jsonValue(), async (message, value) => {
        const speaker = await comeIn(host, guest);
        speaker.say({ say: "push", ref: 1, rows: [value, { ...row("hostile-1"), note: value, massG: message }] });
        const { refused } = await speaker.next("answer");
        expect(refused.length).toBe(2);
        speaker.say(message);
        await speaker.closed;
      }),
      { numRuns: 25, endOnFailure: true },
    );
    expect(host.journal.filter(({ event }) => event === "defect")).toEqual([]);
    await isHarmless();
  });
});

describe("Something packed", () => {
  it("is not unpacked, whether it comes by a socket or by HTTP", async () => {
    const { host, guest, isHarmless } = await settle();
    const socket = new WebSocket(`ws://127.0.0.1:${host.port}/sync`, { perMessageDeflate: true });
    await new Promise((resolve) => socket.once("open", resolve));
    expect(socket.extensions).toBe("");
    socket.terminate();
    const body = gzipSync(JSON.stringify({ role: "cook" }));
    const headers = { "Content-Type": "application/json", "Content-Encoding": "gzip" };
    const url = `${host.url}/api/v1/kitchens`;
    expect((await fetch(url, { method: "POST", headers, body })).status).toBe(400);
    await comeIn(host, guest);
    await isHarmless();
  });
});

describe("An update", () => {
  it("that breaks the schema goes back with what is wrong; what is sound beside it is kept", async () => {
    const { host, guest, phone, isHarmless } = await settle();
    const speaker = await comeIn(host, guest, { writer: "hostile" });
    speaker.say({ say: "push", ref: 7, rows: [row("hostile-1", { massG: "much" }), row("hostile-2")] });
    const { ref, refused } = await speaker.next("answer");
    expect(ref).toBe(7);
    expect(refused).toMatchObject([{ id: "hostile-1", reason: "schema", issues: [{ path: "massG" }] }]);
    await until(() => phone.kept.events.state.lots.has("lot-hostile-2"));
    expect(phone.kept.events.state.lots.has("lot-hostile-1")).toBe(false);
    expect(events(host)).toContain("rows-refused");
    await isHarmless();
  });

  it("in another's name, on another's id or against another's rows is refused", async () => {
    const { host, guest, phone, isHarmless } = await settle();
    const { rows } = await phone.kept.add([boughtOats("rice-1")]);
    const id = rows[0]?.id ?? "";
    await phone.sync.settled();
    const speaker = await comeIn(host, guest);
    const next = `${phone.kept.writer}-99`;
    const withdrawn = { id: "hostile-1", atMs: 5, tick: 0, kind: "withdrawn", on: "2026-03-02", events: [id] };
    const edit = { id: "hostile-2", atMs: 5, tick: 0, kind: "edited", thing: "name", value: "Mine" };
    speaker.say({ say: "push", ref: 1, rows: [row(next), row(id), withdrawn, edit] });
    const reasons = new Map((await speaker.next("answer")).refused.map((each) => [each.id, each.reason]));
    expect(reasons).toEqual(
      new Map([
        [next, "writer-taken"],
        [id, "writer-taken"],
        ["hostile-1", "not-yours"],
        ["hostile-2", "role"],
      ]),
    );
    const refused = host.journal.find(({ event }) => event === "rows-refused")?.facts.reasons;
    expect(refused).toEqual(expect.arrayContaining(["writer-taken", "not-yours", "role"]));
    expect(phone.kept.events.state.lots.has("rice-1")).toBe(true);
    await isHarmless();
  });

  it("beyond the room of a kitchen is refused, and others' kitchens have theirs", async () => {
    const { host, guest } = await settle({ limits: { kitchenRows: 40 } });
    const speaker = await comeIn(host, guest);
    const many = Array.from({ length: 38 }, (_, at) => row(`hostile-${at + 1}`));
    speaker.say({ say: "push", ref: 1, rows: many });
    await speaker.next("answer");
    speaker.say({ say: "push", ref: 2, rows: Array.from({ length: 9 }, (_, at) => row(`hostile-${at + 50}`)) });
    const { refused } = await speaker.next("answer");
    expect(refused.filter(({ reason }) => reason === "kitchen-full").length).toBe(7);
    expect(host.journal.at(-1)).toMatchObject({ event: "rows-refused", facts: { reasons: ["kitchen-full"] } });
    const other = await openJoined(await makeKitchen(host), "other");
    await other.kept.add([boughtOats("oats-1")]);
    expect((await other.sync.settled()).returned).toEqual([]);
  });
});

describe("Flooding", () => {
  it("with messages ends the socket that floods", async () => {
    const { host, guest, isHarmless } = await settle();
    const speaker = await comeIn(host, guest);
    for (let count = 0; count < 600; count++) speaker.say({ say: "here", at: `place-${count}` });
    expect((await speaker.next("bye")).reason).toBe("flooding");
    await speaker.closed;
    expect(events(host)).toContain("farewell flooding");
    await isHarmless();
  });

  it("with rows has to wait, and others do not", async () => {
    const { host, guest, isHarmless } = await settle({ limits: { rows: { burst: 100, perSecond: 1 } } });
    const speaker = await comeIn(host, guest);
    const send = (ref: number) =>
      speaker.say({ say: "push", ref, rows: Array.from({ length: 90 }, (_, at) => row(`flood-${ref * 100 + at}`)) });
    send(1);
    await speaker.next("answer");
    send(2);
    await isHarmless();
    expect(speaker.heard.filter(({ say }) => say === "answer").length).toBe(1);
    speaker.socket.terminate();
  });

  it("with sockets that come and go is not taken in any more for a while", async () => {
    const { host, isHarmless } = await settle({ limits: { arrivals: { burst: 10, perSecond: 0.001 } } });
    for (let count = 0; count < 8; count++) (await openTaken(host)).socket.terminate();
    expect(await openSpeaker(host)).toBe(429);
    expect(events(host)).toContain("socket-refused arrivals");
    await isHarmless();
  });

  it("with sockets gets no more of them", async () => {
    const { host, isHarmless } = await settle({ limits: { socketsOfAddress: 5 } });
    const opened = await Promise.all(Array.from({ length: 12 }, () => openSpeaker(host)));
    expect(opened.filter((each) => each === 429).length).toBe(9);
    expect(events(host)).toContain("socket-refused address");
    await isHarmless();
  });
});

describe("Slow reading", () => {
  it("makes nobody wait, holds little, and ends after a while", async () => {
    const limits = { waitingBytes: 100_000, waitingMs: 300 };
    const { host, guest, phone, isHarmless } = await settle({ limits });
    const speaker = await comeIn(host, guest);
    speaker.socket.pause();
    const note = "x".repeat(60_000);
    for (let at = 0; at < 200; at++) void phone.kept.add([{ ...boughtOats(`rice-${at}`), note }]);
    await until(() => events(host).includes("farewell slow"), 40_000);
    await phone.sync.settled();
    await isHarmless();
  });

  it("of a request's own head is cut off", async () => {
    const { host, isHarmless } = await settle({ limits: { requestMs: 400 } });
    expect(await sendRaw(host, "GET /health HTTP/1.1\r\nHost: x\r\nX-Slow: ")).toMatch(/^HTTP\/1.1 408/);
    expect(events(host)).toContain("request-broken ERR_HTTP_REQUEST_TIMEOUT");
    await isHarmless();
  });
});

describe("Tricks with paths", () => {
  it("reach no file beside the app's own, and no other route", async () => {
    const folder = newFolder();
    const files = join(folder, "dist");
    mkdirSync(files);
    writeFileSync(join(files, "index.html"), "the app");
    writeFileSync(join(folder, "secret.txt"), "hush");
    const { host, keeper, isHarmless } = await settle({ files });
    for (const path of [
      "/../secret.txt",
      "/..%2fsecret.txt",
      "/%2e%2e/secret.txt",
      "/%2e%2e%2fsecret.txt",
      "/..\\secret.txt",
      "/..%5csecret.txt",
      "/assets/../../secret.txt",
      "//secret.txt",
      "/secret.txt%00.html",
      "/%",
    ]) {
      const answer = await sendRaw(host, `GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`);
      expect(answer).not.toContain("hush");
    }
    const headers = { Authorization: `Bearer ${keeper.credential}` };
    const ask = async (path: string) => (await fetch(`${host.url}${path}`, { headers })).status;
    expect(await ask(`/api/v1/kitchens/${keeper.kitchen}`)).toBe(200);
    for (const name of ["..", "%2e%2e", `${keeper.kitchen}%00`, `${keeper.kitchen}'--`, "__proto__"])
      expect([401, 404]).toContain(await ask(`/api/v1/kitchens/${name}/devices`));
    for (const path of ["/sync/", "/sync?x=1", "//sync", "/"]) expect(await openSpeaker(host, { path })).toBe(404);
    const refused = host.journal.filter(({ event }) => event === "request-refused").map(({ facts }) => facts.path);
    expect(refused).toContain("/secret.txt");
    expect(events(host)).toContain("socket-refused path");
    await isHarmless();
  });
});

describe("Tricks with headers", () => {
  it("open no socket for a page of another origin", async () => {
    const { host, isHarmless } = await settle({ origins: ["https://kitchen.example"] });
    for (const origin of ["https://evil.example", "null", "http://127.0.0.1:1", "https://kitchen.example.evil.example"])
      expect(await openSpeaker(host, { headers: { Origin: origin } })).toBe(403);
    expect(events(host)).toContain("socket-refused origin");
    for (const origin of ["https://kitchen.example", host.url]) {
      const speaker = await openTaken(host, { headers: { Origin: origin } });
      speaker.socket.terminate();
    }
    await isHarmless();
  });

  it("hide no address where no proxy is trusted, and choose none where one is", async () => {
    const limits = { mistakes: { burst: 2, perSecond: 0.001 } };
    const direct = await settle({ limits });
    const ask = async ({ url }: TestHost, address: string) => {
      const headers = { "X-Forwarded-For": address, Authorization: `Bearer aaaaaaaa.${SECRET}` };
      return (await fetch(`${url}/api/v1/kitchens/aaaaaaaa/devices`, { headers })).status;
    };
    expect([await ask(direct.host, "1.1.1.1"), await ask(direct.host, "2.2.2.2")]).toEqual([401, 401]);
    expect(await ask(direct.host, "3.3.3.3")).toBe(429);
    const behind = await settle({ limits, trustedProxies: 1 });
    const asked = [];
    for (const forged of ["1.1.1.1", "2.2.2.2", "3.3.3.3"]) asked.push(await ask(behind.host, `${forged}, 9.9.9.9`));
    expect(asked).toEqual([401, 401, 429]);
    expect(behind.host.journal.at(-1)?.facts.address).toBe("9.9.9.9");
    await behind.isHarmless();
  });

  it("that break HTTP or are too long are refused", async () => {
    const { host, isHarmless } = await settle();
    const long = `GET /health HTTP/1.1\r\nHost: x\r\nX-Long: ${"x".repeat(100_000)}\r\n\r\n`;
    expect(await sendRaw(host, long)).toMatch(/^HTTP\/1.1 431/);
    const split =
      "POST /health HTTP/1.1\r\nHost: x\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n";
    expect(await sendRaw(host, split)).toMatch(/^HTTP\/1.1 400/);
    expect(events(host).filter((each) => each.startsWith("request-broken HPE_")).length).toBe(2);
    await isHarmless();
  });

  it("are answered with those that keep a page from doing harm, on every path", async () => {
    const { host } = await settle();
    for (const path of ["/", "/health", "/api/v1/nothing", "/assets/none.js"]) {
      const { headers } = await fetch(`${host.url}${path}`);
      const policy = headers.get("content-security-policy") ?? "";
      expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
      expect(policy).toContain("default-src 'self'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/script-src[^;]*unsafe-inline|https?:/);
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
      expect(headers.get("permissions-policy")).toMatch(/camera=\(?self\)?, microphone=\(\), geolocation=\(\)/);
      expect(headers.get("strict-transport-security")).toMatch(/max-age=\d{8}/);
      expect(headers.get("access-control-allow-origin")).toBeNull();
      expect(headers.get("set-cookie")).toBeNull();
      for (const name of ["x-powered-by", "server", "location"]) expect(headers.get(name)).toBeNull();
      expect(headers.get("content-type")).toMatch(/^(application\/json|text\/(html|plain); ?charset=utf-8)/i);
    }
  });

  it("keep an answer of the API from being shown as a page", async () => {
    const { host, keeper } = await settle();
    const headers = { Authorization: `Bearer ${keeper.credential}` };
    for (const path of ["/nothing", `/kitchens/${keeper.kitchen}`, `/kitchens/${keeper.kitchen}/export`]) {
      const answer = await fetch(`${host.url}/api/v1${path}`, { headers });
      expect(answer.headers.get("content-disposition")).toMatch(/^attachment; filename="[a-z0-9-]+\.json"$/);
    }
  });
});
