import type { Socket } from "@halfloaf/keep/sync";
import fc from "fast-check";
import { toCanonicalText } from "halfloaf/kitchen/record";
import { afterAll, beforeAll, expect, it } from "vitest";
import { WebSocket } from "ws";
import {
  boughtOats,
  letIn,
  makeKitchen,
  openDevice,
  startHost,
  type TestDevice,
  type TestHost,
  until,
} from "../testing/startHost.testing.ts";

let host: TestHost;
beforeAll(async () => {
  host = await startHost();
});
afterAll(() => host.stop());

const sockets: WebSocket[] = [];
const open = (url: string) => {
  const socket = new WebSocket(url);
  sockets.push(socket);
  return socket as unknown as Socket;
};

const DEEDS = ["buy", "use", "undo", "redo", "leave", "come", "cut", "rest"] as const;
const deeds = fc.array(
  fc.record({ device: fc.nat(2), what: fc.constantFrom(...DEEDS), massG: fc.integer({ min: 1, max: 700 }) }),
  { maxLength: 30 },
);

async function live(device: TestDevice, what: (typeof DEEDS)[number], massG: number, lot: string): Promise<void> {
  const { kept, sync } = device;
  if (what === "buy") await kept.add([boughtOats(lot)]);
  const [open] = kept.events.state.lots.keys();
  if (what === "use" && open !== undefined) await kept.add([{ kind: "used", on: "2026-03-03", lot: open, massG }]);
  if (what === "undo") await kept.undo();
  if (what === "redo") await kept.redo();
  if (what === "leave") sync.stop();
  if (what === "come") sync.start();
  if (what === "rest") await new Promise((resolve) => setTimeout(resolve, 10));
}

it("Devices that come, go and are cut off at any moment agree once all are together, and the server has it all", async () => {
  await fc.assert(
    fc.asyncProperty(deeds, async (list) => {
      const keeper = await makeKitchen(host);
      const others = [await letIn(keeper, "cook"), await letIn(keeper, "keeper")];
      const devices: TestDevice[] = [];
      for (const [at, member] of [keeper, ...others].entries())
        devices.push(await openDevice(member, `d${at}`, { open }));
      for (const { sync } of devices) sync.start();
      await Promise.all(devices.map(({ sync }) => sync.settled()));
      for (const [at, { device, what, massG }] of list.entries()) {
        // As a lost network would: all open sockets end without a word.
        if (what === "cut") for (const socket of sockets.splice(0)) socket.terminate();
        else await live(devices[device] as TestDevice, what, massG, `oats-${at}`);
      }
      for (const { sync } of devices) sync.start();
      const tell = ({ kept }: TestDevice) => toCanonicalText([kept.rows(), [...kept.events.state.lots]]);
      const areTogether = () =>
        devices.every(({ sync: { view } }) => view.state.kind === "together" && view.unsent === 0) &&
        new Set(devices.map(tell)).size === 1;
      await until(areTogether, 20_000);
      const end = await host.parts.store.endsOf([keeper.kitchen]);
      expect(end).toEqual(new Map([[keeper.kitchen, devices[0]?.kept.rows().length ?? 0]]));
      for (const { sync } of devices) sync.stop();
    }),
    { numRuns: 12, endOnFailure: true },
  );
});
