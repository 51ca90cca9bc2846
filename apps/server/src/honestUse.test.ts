import type { Membership } from "@halfloaf/keep/sync";
import { describe, expect, it } from "vitest";
import { USUAL_LIMITS } from "./limits.ts";
import { comeIn, type Speaker } from "./testing/speak.testing.ts";
import {
  answered,
  boughtOats,
  desk,
  letIn,
  makeKitchen,
  type TestDevice,
  type TestHost,
  until,
} from "./testing/startHost.testing.ts";
import { useHosts } from "./testing/useHosts.testing.ts";

const { start, join } = useHosts();

const LINES = 60;
const refusals = ({ journal }: TestHost) =>
  journal.filter(({ event }) => ["farewell", "request-refused", "socket-refused", "rows-refused"].includes(event));

describe("With the usual limits", () => {
  it("six phones behind one address tick a full shop at once, and the flooder among them alone is ended", async () => {
    const host = await start({ limits: USUAL_LIMITS });
    const keeper = await makeKitchen(host);
    const members = [keeper, ...(await Promise.all(Array.from({ length: 5 }, () => letIn(keeper, "cook"))))];
    const phones: TestDevice[] = [];
    for (const [at, member] of members.entries()) phones.push(await join(member, `phone-${at}`));
    const shop = async ({ kept, sync }: TestDevice, at: number) => {
      for (let line = 0; line < LINES; line++) {
        await kept.add([boughtOats(`oats-${at}-${line}`)]);
        sync.sayPlace({ at: line % 2 ? "buying" : "stores" });
      }
    };
    const haveAll = (count: number) => phones.every(({ kept }) => kept.events.state.lots.size === count);
    await Promise.all(phones.map(shop));
    await until(() => haveAll(phones.length * LINES), 20_000);
    expect(refusals(host)).toEqual([]);
    const flooder = await comeIn(host, members[1] as Membership);
    for (let count = 0; count < 400; count++) flooder.say({ say: "here", at: `place-${count}` });
    expect((await flooder.next("bye")).reason).toBe("flooding");
    await phones[0]?.kept.add([boughtOats("oats-last")]);
    await until(() => haveAll(phones.length * LINES + 1));
    expect(phones.every(({ sync }) => sync.view.state.kind === "together")).toBe(true);
    expect(refusals(host).length).toBe(1);
  });

  it("300 people behind one address join within ten minutes, some by a link that is used up; who asks without end is refused and harms nobody", async () => {
    let nowMs = Date.parse("2026-03-02T19:00:00Z");
    const host = await start({ limits: USUAL_LIMITS, now: () => nowMs });
    const speakers: Speaker[] = [];
    const come = async (member: Membership) => {
      nowMs += 2_000;
      answered(await desk.listDevices(member));
      speakers.push(await comeIn(host, member));
    };
    const mistaken: string[] = [];
    const settleFlat = async (flat: number) => {
      const keeper = await makeKitchen(host);
      await come(keeper);
      for (let mate = 0; mate < 3; mate++) {
        const invited = answered(await desk.invite(keeper, "cook"));
        await come(answered(await desk.join(invited, "Phone")));
        const again = flat % 10 === 0 ? await desk.join(invited, "Laptop") : undefined;
        if (again?.ok === false) mistaken.push(again.reason);
      }
      return keeper;
    };
    const keepers: Membership[] = [];
    for (let from = 0; from < 75; from += 5)
      keepers.push(...(await Promise.all(Array.from({ length: 5 }, (_, at) => settleFlat(from + at)))));
    expect(speakers.length).toBe(300);
    expect(new Set(mistaken)).toEqual(new Set(["no-such-invitation"]));
    expect(refusals(host).length).toBe(mistaken.length);
    const [keeper] = keepers as [Membership];
    let asked = 0;
    for (; asked < 2_000; asked++) if ((await fetch(`${host.url}/api/v1/nothing`)).status === 429) break;
    expect(asked).toBeLessThan(700);
    expect(await desk.listDevices(keeper)).toEqual({ ok: false, reason: "too-many-requests" });
    // Who is in stays in, and hears the others.
    const row = { id: "phone-1", atMs: 5, tick: 0, ...boughtOats("oats-1") };
    speakers[0]?.say({ say: "push", ref: 1, rows: [row] });
    expect((await speakers[0]?.next("answer"))?.refused).toEqual([]);
    expect(speakers.filter(({ socket }) => socket.readyState !== socket.OPEN)).toEqual([]);
    nowMs += 1_000;
    expect((await desk.listDevices(keeper)).ok).toBe(true);
    for (const { socket } of speakers) socket.terminate();
  });
});
