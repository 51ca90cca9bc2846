import { loadDishTextsDe } from "@halfloaf/data";
import type { Membership } from "@halfloaf/keep/sync";
import { fromKitchen } from "halfloaf/kitchen/record";
import { findWeek } from "halfloaf/sheet/testing";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MANNER } from "../testing/manner.testing.ts";
import {
  answered,
  boughtOats,
  desk,
  letIn,
  makeKitchen,
  startHost,
  type TestHost,
  until,
} from "../testing/startHost.testing.ts";
import { useHosts } from "../testing/useHosts.testing.ts";

const { start, join } = useHosts();

const { week, kitchen: planned } = findWeek("port-ansel", { days: 2, moves: 2_000 });
const noon = Date.parse(`${week.from}T12:00:00Z`);

/** A kitchen on a server with a week that was accepted. */
async function settle(host: TestHost) {
  const keeper = await makeKitchen(host);
  const phone = await join(keeper, "phone");
  await phone.kept.edit(() => fromKitchen(planned).kitchen);
  await phone.kept.add([{ kind: "menu-accepted", on: week.from, week }]);
  await phone.sync.settled();
  return { keeper, phone };
}
const make = async (member: Membership, manner = MANNER) => answered(await desk.makeCalendar(member, manner));

describe("The address of a calendar", () => {
  // One server for all that is drawn, since each starts a thread of its own for that.
  let host: TestHost;
  beforeAll(async () => {
    host = await startHost({ now: () => noon });
  });
  afterAll(() => host.stop());

  it("gives the accepted week in the words and by the clock of who made it, and what was planned anew once only", async () => {
    const { keeper, phone } = await settle(host);
    const { address } = await make(keeper);
    const answer = await fetch(address);
    expect(answer.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
    expect(answer.headers.get("cache-control")).toBe("no-store");
    const text = await answer.text();
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2.0\r\n/);
    const summaries = (told: string) => told.match(/^SUMMARY:.*$/gm) ?? [];
    expect(summaries(text).filter((line) => line.startsWith("SUMMARY:On the ring: ")).length).toBeGreaterThan(0);
    expect(summaries(text).filter((line) => line.startsWith("SUMMARY:To ")).length).toBe(week.trips.length);
    expect(text).toContain("TZID=Europe/Berlin");
    await phone.kept.add([{ kind: "menu-accepted", on: week.from, week }]);
    await phone.sync.settled();
    expect(summaries(await (await fetch(address)).text())).toEqual(summaries(text));
  });

  it("tells the starter dishes in German where it is written in German", async () => {
    const { keeper } = await settle(host);
    const { address } = await make(keeper, { ...MANNER, language: "de-AT" });
    const told = (await (await fetch(address)).text()).replaceAll("\r\n ", "");
    const texts = loadDishTextsDe().dishes as Readonly<Record<string, { readonly title: string }>>;
    for (const { dish } of week.batches) expect(told).toContain(texts[dish]?.title.replaceAll(",", "\\,"));
  });

  it("is empty while there is no week, and changes once one is accepted", async () => {
    const keeper = await makeKitchen(host);
    const { address } = await make(keeper);
    expect(await (await fetch(address)).text()).not.toContain("VEVENT");
    const phone = await join(keeper, "phone");
    await phone.kept.edit(() => fromKitchen(planned).kitchen);
    await phone.kept.add([{ kind: "menu-accepted", on: week.from, week }]);
    await phone.sync.settled();
    expect(await (await fetch(address)).text()).toContain("BEGIN:VEVENT");
  });

  it("is made by any device, listed for all without its secret, revoked by its maker or a keeper, and gone with its device", async () => {
    const keeper = await makeKitchen(host);
    const [cook, reader] = [await letIn(keeper, "cook"), await letIn(keeper, "reader")];
    const [one, two, three] = [await make(cook), await make(reader), await make(reader)];
    const listed = answered(await desk.listCalendars(cook));
    expect(listed.map(({ madeBy }) => madeBy).sort()).toEqual([cook.device, reader.device, reader.device].sort());
    const secrets = [one, two, three].map(({ address }) => /\.([\w-]{43})\.ics$/.exec(address)?.[1] ?? address);
    for (const secret of secrets) expect(JSON.stringify(listed)).not.toContain(secret);
    expect(await desk.removeCalendar(cook, two.calendar)).toEqual({ ok: false, reason: "role" });
    answered(await desk.removeCalendar(reader, two.calendar));
    answered(await desk.removeCalendar(keeper, one.calendar));
    for (const { address } of [one, two]) expect((await fetch(address)).status).toBe(404);
    expect((await fetch(three.address)).status).toBe(200);
    answered(await desk.removeDevice(keeper, reader.device));
    expect((await fetch(three.address)).status).toBe(404);
    const copies: string[] = [];
    for await (const copy of host.parts.store.copyAll()) copies.push(JSON.stringify(copy));
    for (const secret of secrets) expect(JSON.stringify([copies, host.journal])).not.toContain(secret);
  });

  it("lets nobody do anything else: it is no credential, for no other kitchen, and is refused where it is wrong or guessed", async () => {
    const host = await start({ limits: { mistakes: { burst: 5, perSecond: 0.001 } } });
    const keeper = await makeKitchen(host);
    const other = await makeKitchen(host);
    const { address, calendar } = await make(keeper);
    const code = /([^/]+)\.ics$/.exec(address)?.[1] ?? "";
    expect(await desk.exportKitchen({ ...keeper, credential: code })).toEqual({ ok: false, reason: "unknown" });
    for (const method of ["POST", "PUT", "DELETE"]) {
      const headers = { "Content-Type": "application/json" };
      expect((await fetch(address, { method, headers, ...(method === "DELETE" ? {} : { body: "{}" }) })).status).toBe(
        404,
      );
    }
    const posed = [
      address.replace(keeper.kitchen, other.kitchen),
      `${host.url}/api/v1/calendars/${keeper.kitchen}/${calendar}.${"A".repeat(43)}.ics`,
      address.replace(/\.ics$/, ""),
      `${host.url}/api/v1/calendars/${keeper.kitchen}/..%2f..%2fdevices`,
    ];
    for (const each of posed) expect((await fetch(each)).status).toBe(404);
    for (let guess = 0; guess < 5; guess++) await fetch(posed[1] ?? "");
    expect((await fetch(posed[1] ?? "")).status).toBe(429);
    expect(JSON.stringify(host.journal)).not.toContain("A".repeat(43));
  });

  it("is not made in a manner that can't be written, nor more often than a kitchen may have", async () => {
    const host = await start({ limits: { calendarsOfKitchen: 2 } });
    const keeper = await makeKitchen(host);
    for (const broken of [
      { zone: "Mars/Olympus" },
      { language: "not a tag!" },
      { words: { ...MANNER.words, cook: "x".repeat(201) } },
      { words: { ...MANNER.words, extra: "x" } },
      { words: {} },
    ])
      expect(await desk.makeCalendar(keeper, { ...MANNER, ...broken })).toEqual({ ok: false, reason: "malformed" });
    await make(keeper);
    await make(keeper);
    expect(await desk.makeCalendar(keeper, MANNER)).toEqual({ ok: false, reason: "too-many-calendars" });
  });

  it("is answered with 503 where the store can't be asked, and drawn by no thread that ticks wait for", async () => {
    const { keeper, phone } = await settle(host);
    const { address } = await make(keeper);
    await fetch(address);
    await phone.kept.add([boughtOats("oats-0")]);
    await phone.sync.settled();
    const asked = fetch(address);
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => phone.sync.view.unsent === 0, 2_000);
    expect((await asked).status).toBe(200);
    await phone.kept.add([boughtOats("oats-2")]);
    await phone.sync.settled();
    const { readLog } = host.parts.store;
    host.parts.store.readLog = async () => ({ ok: false, reason: "failed", detail: "as told" });
    expect((await fetch(address)).status).toBe(503);
    host.parts.store.readLog = readLog;
  });
});
