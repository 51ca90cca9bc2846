import { cpSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, expect, it } from "vitest";
import { boughtOats, demoKitchen, foods } from "../keep.testing.ts";
import { type OpenedFolder, openKitchenFolder } from "./openKitchenFolder.ts";

const root = mkdtempSync(join(tmpdir(), "halfloaf-damaged-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const sound = join(root, "sound");
const DAY_MS = 86_400_000;
/** Where SQLite's header has the version of what the file holds. **Source**: sqlite.org, "Database File Format", 1.3. */
const VERSION_AT = [60, 61, 62, 63];

const openAt = (folder: string, nowMs: number): Promise<OpenedFolder> =>
  openKitchenFolder(folder, { foods, device: "laptop", now: () => nowMs });

const inSnapshot = Array.from({ length: 12 }, (_, at) => `early-${at}`);
const after = Array.from({ length: 12 }, (_, at) => `late-${at}`);

beforeAll(async () => {
  for (const [day, lots] of [inSnapshot, [], after].entries()) {
    const opened = await openAt(sound, (2 * day + 1) * DAY_MS - (day === 2 ? 1.5 * DAY_MS : 0));
    if (!opened.ok) throw new Error(opened.reason);
    if (day === 0) await opened.kept.edit(() => demoKitchen("one-ring"));
    for (const lot of lots) await opened.kept.add([boughtOats(lot)]);
    await opened.kept.close();
  }
});

/** What befalls a file, at places given as shares of its length. */
type Harm =
  | { readonly kind: "cut"; readonly at: number }
  | { readonly kind: "flip"; readonly bits: readonly { readonly at: number; readonly bit: number }[] }
  | { readonly kind: "wipe"; readonly at: number; readonly bytes: number; readonly value: number };

/** Anywhere, and often in the header, which is small. */
const place = fc.oneof(
  fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  fc.double({ min: 0, max: 0.0015, noNaN: true }),
);
const harms: fc.Arbitrary<Harm> = fc.oneof(
  fc.record({ kind: fc.constant("cut" as const), at: place }),
  fc.record({
    kind: fc.constant("flip" as const),
    bits: fc.array(fc.record({ at: place, bit: fc.nat(7) }), { minLength: 1, maxLength: 30 }),
  }),
  fc.record({
    kind: fc.constant("wipe" as const),
    at: place,
    bytes: fc.integer({ min: 1, max: 20_000 }),
    value: fc.constantFrom(0, 0xff),
  }),
);

/** Harms the file; true where the version in its header may be another now. */
function harm(file: string, what: Harm): boolean {
  const bytes = readFileSync(file);
  const at = (share: number) => Math.floor(share * bytes.length);
  if (what.kind === "cut") {
    truncateSync(file, at(what.at));
    return false;
  }
  const before = VERSION_AT.map((each) => bytes[each]).join();
  if (what.kind === "wipe") bytes.fill(what.value, at(what.at), Math.min(bytes.length, at(what.at) + what.bytes));
  else for (const { at: share, bit } of what.bits) bytes[at(share)] = (bytes[at(share)] ?? 0) ^ (1 << bit);
  writeFileSync(file, bytes);
  return before !== VERSION_AT.map((each) => bytes[each]).join();
}

const lotsOf = (opened: OpenedFolder): string[] => {
  if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
  return [...opened.kept.events.state.lots.keys()].sort();
};

it("A file cut short, wiped in part or with bits turned at random opens, has all that the snapshot has and nothing made up", async () => {
  let count = 0;
  const property = fc.asyncProperty(harms, async (what) => {
    const folder = join(root, `harmed-${++count}`);
    cpSync(sound, folder, { recursive: true });
    const mayBeNewer = harm(join(folder, "kitchen.sqlite"), what);
    const opened = await openAt(folder, 6 * DAY_MS);
    if (mayBeNewer && !opened.ok && opened.reason === "newer") return;
    const lots = lotsOf(opened);
    expect(lots).toEqual(expect.arrayContaining(inSnapshot));
    expect([...inSnapshot, ...after]).toEqual(expect.arrayContaining(lots));
    if (!opened.ok) return;
    if (lots.length < 24) expect(opened.repair).toBeDefined();
    expect(opened.kept.kitchen().ok).toBe(true);
    const { kept } = await opened.kept.add([boughtOats("now-1")]);
    expect(kept.ok).toBe(true);
    await opened.kept.close();
    const again = await openAt(folder, 6 * DAY_MS + 1);
    expect(lotsOf(again)).toEqual([...lots, "now-1"].sort());
    if (again.ok) {
      expect(again.repair).toBeUndefined();
      await again.kept.close();
    }
    rmSync(folder, { recursive: true });
  });
  await fc.assert(property, { numRuns: 25, endOnFailure: true });
});
