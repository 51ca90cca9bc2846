import { expect, it } from "vitest";
import { forgetUnseen } from "./forgetUnseen.ts";
import { comeIn } from "./testing/speak.testing.ts";
import { desk, makeKitchen } from "./testing/startHost.testing.ts";
import { useHosts } from "./testing/useHosts.testing.ts";

const { start } = useHosts();
const DAY_MS = 86_400_000;

it("A kitchen that nobody has come to for so many days is gone; one that a device came to meanwhile stays", async () => {
  let nowMs = Date.parse("2026-03-02T12:00:00Z");
  const host = await start({ now: () => nowMs });
  const [left, used] = [await makeKitchen(host), await makeKitchen(host)];
  nowMs += 300 * DAY_MS;
  const speaker = await comeIn(host, used);
  nowMs += 80 * DAY_MS;
  await forgetUnseen(host.parts, host.hub, 365);
  expect(await desk.listDevices(left)).toEqual({ ok: false, reason: "unknown" });
  expect((await desk.listDevices(used)).ok).toBe(true);
  expect(speaker.socket.readyState).toBe(speaker.socket.OPEN);
  expect(host.journal.filter(({ event }) => event === "kitchen-forgotten").length).toBe(1);
  speaker.socket.terminate();
});
