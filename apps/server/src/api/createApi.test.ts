import { connect } from "node:net";
import { parseInvitationLink, toInvitationLink } from "@halfloaf/keep/sync";
import { describe, expect, it } from "vitest";
import { answered, desk, letIn, makeKitchen, startHost } from "../testing/startHost.testing.ts";
import { useHosts } from "../testing/useHosts.testing.ts";

const { start } = useHosts();
const post = (url: string, body: unknown, type = "application/json") =>
  fetch(url, {
    method: "POST",
    headers: { "Content-Type": type },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });

describe("A kitchen on a server", () => {
  it("is made by its first device, which keeps it", async () => {
    const keeper = await makeKitchen(await start(), "Ada's phone");
    const devices = answered(await desk.listDevices(keeper));
    expect(devices).toMatchObject([{ device: keeper.device, name: "Ada's phone", role: "keeper" }]);
    expect(JSON.stringify(devices)).not.toContain(keeper.credential.split(".")[1]);
  });

  it("keeps of credentials and invitations nothing that would let somebody in", async () => {
    const { parts, url } = await start();
    const keeper = await makeKitchen({ url });
    const invitation = answered(await desk.invite(keeper, "cook"));
    const copies: string[] = [];
    for await (const copy of parts.store.copyAll()) copies.push(JSON.stringify(copy));
    const open = JSON.stringify(await parts.store.findInvitation(invitation.invitation));
    for (const secret of [keeper.credential, invitation.code].map((each) => each.split(".")[1] ?? ""))
      for (const text of [...copies, open]) expect(text).not.toContain(secret);
  });

  it("lets a device in by a link, once", async () => {
    const { url, journal } = await start();
    const keeper = await makeKitchen({ url });
    const invited = answered(await desk.invite(keeper, "cook"));
    const link = toInvitationLink(invited);
    const read = parseInvitationLink(link);
    if (read === undefined) throw new Error(link);
    const joined = answered(await desk.join(read, "Laptop"));
    expect(joined).toMatchObject({ kitchen: keeper.kitchen, server: url });
    expect(answered(await desk.listDevices(joined)).map(({ role }) => role)).toEqual(["keeper", "cook"]);
    expect(await desk.join(read, "Somebody")).toEqual({ ok: false, reason: "no-such-invitation" });
    expect(journal.some(({ event }) => event === "request-refused")).toBe(true);
  });

  it("lets nobody in by an invitation that is too old or was revoked", async () => {
    let now = 1_000_000;
    const { url } = await start({ now: () => now });
    const keeper = await makeKitchen({ url });
    const old = answered(await desk.invite(keeper, "cook", 1));
    const revoked = answered(await desk.invite(keeper, "cook", 5));
    expect(answered(await desk.listInvitations(keeper)).length).toBe(2);
    answered(await desk.revoke(keeper, revoked.invitation));
    now += 3_600_000;
    for (const each of [old, revoked])
      expect(await desk.join(each, "Late")).toEqual({ ok: false, reason: "no-such-invitation" });
    expect(answered(await desk.listInvitations(keeper))).toEqual([]);
  });

  it("is shared, changed and deleted by keepers alone", async () => {
    const keeper = await makeKitchen(await start());
    const cook = await letIn(keeper, "cook");
    const role = { ok: false, reason: "role" };
    expect(await desk.invite(cook, "cook")).toEqual(role);
    expect(await desk.listInvitations(cook)).toEqual(role);
    expect(await desk.revoke(cook, "abcdefgh")).toEqual(role);
    expect(await desk.removeDevice(cook, keeper.device)).toEqual(role);
    expect(await desk.changeRole(cook, cook.device, "keeper")).toEqual(role);
    expect(await desk.deleteKitchen(cook)).toEqual(role);
    expect(answered(await desk.removeDevice(cook, cook.device))).toBeNull();
    expect(await desk.listDevices(cook)).toEqual({ ok: false, reason: "unknown" });
  });

  it("is never left without a keeper", async () => {
    const keeper = await makeKitchen(await start());
    expect(await desk.removeDevice(keeper, keeper.device)).toEqual({ ok: false, reason: "last-keeper" });
    expect(await desk.changeRole(keeper, keeper.device, "cook")).toEqual({ ok: false, reason: "last-keeper" });
    const second = await letIn(keeper, "keeper");
    expect(answered(await desk.removeDevice(keeper, keeper.device))).toBeNull();
    expect(answered(await desk.listDevices(second)).length).toBe(1);
  });

  it("takes no more devices and invitations than one may have", async () => {
    const keeper = await makeKitchen(await start({ limits: { devicesOfKitchen: 2, invitationsOfKitchen: 2 } }));
    const [one, two] = [answered(await desk.invite(keeper, "cook")), answered(await desk.invite(keeper, "cook"))];
    expect(await desk.invite(keeper, "cook")).toEqual({ ok: false, reason: "too-many-invitations" });
    answered(await desk.join(one, "Second"));
    expect(await desk.join(two, "Third")).toEqual({ ok: false, reason: "too-many-devices" });
  });
});

describe("Registration", () => {
  it("is open to who knows the code, where there is one", async () => {
    const { url } = await start({ registration: { kind: "code", code: "open-sesame-2026" } });
    expect(await desk.makeKitchen(url, "Phone")).toEqual({ ok: false, reason: "code-needed" });
    expect(await desk.makeKitchen(url, "Phone", "open-sesame-2025")).toEqual({ ok: false, reason: "code-needed" });
    const keeper = answered(await desk.makeKitchen(url, "Phone", "open-sesame-2026"));
    expect((await letIn(keeper, "cook")).kitchen).toBe(keeper.kitchen);
  });

  it("is shut to an address that guesses the code", async () => {
    const registration = { kind: "code", code: "open-sesame-2026" } as const;
    const { url, journal } = await start({ registration, limits: { mistakes: { burst: 5, perSecond: 0.001 } } });
    for (let guess = 0; guess < 5; guess++)
      expect(await desk.makeKitchen(url, "Phone", `open-sesame-${guess}`)).toMatchObject({ reason: "code-needed" });
    expect(await desk.makeKitchen(url, "Phone", "open-sesame-2026")).toMatchObject({ reason: "too-many-mistakes" });
    expect(JSON.stringify(journal)).not.toContain("open-sesame");
  });

  it("can be closed", async () => {
    const { url } = await start({ registration: { kind: "closed" } });
    expect(await desk.makeKitchen(url, "Phone")).toEqual({ ok: false, reason: "registration-closed" });
  });
});

describe("Questions over HTTP", () => {
  it("are answered with 400 where they are malformed, with 413 where they are too large, with 404 where there is nothing", async () => {
    const { url, journal } = await start();
    const kitchens = `${url}/api/v1/kitchens`;
    for (const body of ["", "{", "[]", { device: "" }, { device: "x", admin: true }, { device: "x".repeat(61) }])
      expect((await post(kitchens, body)).status).toBe(400);
    expect((await post(kitchens, { device: "x".repeat(20_000) })).status).toBe(413);
    expect((await post(kitchens, { device: "Phone" }, "text/plain")).status).toBe(415);
    const nothing = await fetch(`${url}/api/v1/nothing`);
    expect([nothing.status, nothing.headers.get("cache-control")]).toEqual([404, "no-store"]);
    for (const method of ["PATCH", "OPTIONS", "PROPFIND"]) expect((await fetch(kitchens, { method })).status).toBe(404);
    expect(journal.at(-1)).toMatchObject({ event: "request-refused", facts: { reason: "missing" } });
  });

  it("from one address are answered with 429 where they are too many, and other addresses are not touched", async () => {
    const limits = { requests: { burst: 5, perSecond: 0.001 } };
    const { url, journal } = await start({ limits, trustedProxies: 1 });
    const ask = async (address: string) =>
      (await fetch(`${url}/api/v1/nothing`, { headers: { "X-Forwarded-For": address } })).status;
    for (let count = 0; count < 5; count++) expect(await ask("10.0.0.1")).toBe(404);
    expect(await ask("10.0.0.1")).toBe(429);
    expect(await ask("10.0.0.2")).toBe(404);
    expect(journal.at(-2)?.facts).toMatchObject({ address: "10.0.0.1", reason: "too-many-requests" });
  });

  it("make no more kitchens from one address than may be", async () => {
    const { url } = await start({ limits: { kitchens: { burst: 2, perSecond: 0.001 } } });
    await makeKitchen({ url });
    await makeKitchen({ url });
    expect(await desk.makeKitchen(url, "Phone")).toEqual({ ok: false, reason: "too-many-kitchens" });
  });

  it("that are under way when the server ends are answered still, and new ones are not taken", async () => {
    const { port, stop } = await startHost();
    const body = JSON.stringify({ device: "Phone" });
    const head = `POST /api/v1/kitchens HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`;
    const socket = connect(port, "127.0.0.1");
    let answer = "";
    socket.on("data", (data) => {
      answer += data.toString();
    });
    const ended = new Promise((resolve) => socket.once("close", resolve));
    await new Promise<void>((resolve) => socket.write(`${head}${body.slice(0, 5)}`, () => resolve()));
    await new Promise((resolve) => setTimeout(resolve, 50));
    const stopped = stop();
    await expect(fetch(`http://127.0.0.1:${port}/health`)).rejects.toThrow();
    socket.write(body.slice(5));
    await ended;
    await stopped;
    expect(answer).toMatch(/^HTTP\/1.1 201/);
  });
});

describe("Who watches a server", () => {
  it("is told whether it lives and is ready, and what it counts only with the token", async () => {
    const { url, parts } = await start({ metricsToken: "watching-2026-token" });
    await makeKitchen({ url });
    expect(await (await fetch(`${url}/health`)).json()).toEqual({ health: "well" });
    expect((await fetch(`${url}/ready`)).status).toBe(200);
    const metrics = (token: string) => fetch(`${url}/metrics`, { headers: { Authorization: `Bearer ${token}` } });
    expect((await metrics("wrong")).status).toBe(401);
    const told = await metrics("watching-2026-token");
    expect(await told.text()).toMatch(/halfloaf_requests_total\{status="201"\} 1\n/);
    parts.store.ping = async () => ({ ok: false, reason: "failed", detail: "as told" });
    expect((await fetch(`${url}/ready`)).status).toBe(503);
    expect((await fetch(`${url}/health`)).status).toBe(200);
  });

  it("gets no metrics where no token is set", async () => {
    const { url } = await start();
    expect((await fetch(`${url}/metrics`)).status).toBe(404);
  });
});
