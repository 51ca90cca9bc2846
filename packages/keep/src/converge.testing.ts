import fc from "fast-check";
import { type EventBody, toCanonicalText } from "halfloaf/kitchen/record";
import * as Y from "yjs";
import { ActLog } from "./acts.ts";
import type { KeptKitchen } from "./KeptKitchen.ts";
import { boughtOats, demoKitchen, openKept } from "./keep.testing.ts";
import { openMemoryStore } from "./memoryStore.testing.ts";

/** One thing done on one of three devices. */
interface Deed {
  readonly device: number;
  readonly what: (typeof DEEDS)[number];
  readonly other: number;
  readonly size: number;
}

const DEEDS = ["buy", "buy", "use", "use", "undo", "redo", "rename", "meet", "compact", "reopen"] as const;

/** By how much the clock of each device is off, in milliseconds. */
const SKEWS_MS = [0, -5_000, 90_000];

/** What is done on three devices that are apart and meet now and then. */
export const deeds: fc.Arbitrary<Deed[]> = fc.array(
  fc.record({
    device: fc.nat(2),
    what: fc.constantFrom(...DEEDS),
    other: fc.nat(2),
    size: fc.integer({ min: 1, max: 300 }),
  }),
  { maxLength: 40 },
);

/** Two devices bring each other what they lack. */
export function meet(one: KeptKitchen, other: KeptKitchen): void {
  for (const [from, to] of [
    [other, one],
    [one, other],
  ] as const) {
    const missing = Y.encodeStateAsUpdate(from.document, Y.encodeStateVector(to.document));
    Y.applyUpdate(to.document, missing, "other device");
  }
}

/** Lives the deeds, lets all devices meet at the end, and throws where they do not agree or a device lost something. */
export async function converge(list: readonly Deed[]): Promise<void> {
  const stores = SKEWS_MS.map(() => openMemoryStore());
  let clock = 100_000;
  const openAt = (at: number) =>
    openKept(stores[at] ?? openMemoryStore(), { device: `d${at}`, now: () => clock++ + (SKEWS_MS[at] ?? 0) });
  const devices = await Promise.all(SKEWS_MS.map((_, at) => openAt(at)));
  const at = (place: number) => devices[place] as KeptKitchen;
  await at(0).edit(() => smallKitchen);
  for (const [step, { device, what, other, size }] of list.entries()) {
    const kept = at(device);
    if (what === "buy") await kept.add([boughtOats(`lot-${step}`)]);
    if (what === "use") await kept.add(useSome(kept, size));
    if (what === "undo") await kept.undo();
    if (what === "redo") await kept.redo();
    if (what === "rename") await kept.edit((kitchen) => ({ ...(kitchen ?? smallKitchen), name: `Name ${size}` }));
    if (what === "meet") meet(kept, at(other));
    if (what === "compact") await kept.compact();
    // What another device brought is told as kept by nobody yet, so it is waited for.
    if (what === "reopen") await kept.retry();
    if (what === "reopen") devices[device] = await openAt(device);
    if (what === "reopen" && at(device).rows().length !== kept.rows().length) throw new Error("rows were lost");
    checkHistory(at(device));
  }
  for (const one of devices) for (const other of devices) meet(one, other);
  for (const kept of devices) checkHistory(kept);
  const [first, ...others] = devices.map(tell);
  for (const each of others) if (each !== first) throw new Error(`${each}\nis not\n${first}`);
}

/** Acts that were kept up row by row are those of all rows at once. */
function checkHistory(kept: KeptKitchen): void {
  const [told, anew] = [kept.history(), new ActLog(kept.rows()).acts].map((acts) => toCanonicalText(acts));
  if (told !== anew) throw new Error(`${told}\nis not\n${anew}`);
}

const whole = demoKitchen("one-ring");
const smallKitchen = { ...whole, shops: whole.shops.slice(0, 1), packs: [], dishes: [] };

/** All that a device says of the kitchen, as text. */
function tell(kept: KeptKitchen): string {
  const { lots, plates, toCount, withdrawn, faults } = kept.events.state;
  const told = [kept.rows(), kept.kitchen(), [...lots], plates, [...toCount], [...withdrawn].sort(), faults];
  return toCanonicalText(told);
}

function useSome(kept: KeptKitchen, massG: number): EventBody[] {
  const [lot] = kept.events.state.lots.keys();
  return lot === undefined ? [] : [{ kind: "used", on: "2026-03-03", lot, massG }];
}
