import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { loadTables } from "../input/loadTables.ts";
import { toMemory } from "../output/memory.testing.ts";
import { tellPace } from "../work/pace/tellPace.ts";
import { runnerIn } from "./keep.testing.ts";
import { openAnyKitchen } from "./openAnyKitchen.ts";

const DAY = "2026-12-07";
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-any-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a kept kitchen has the pace that was learned of its cook, and tells it; one that is not kept has none", async () => {
  const run = runnerIn(folder, DAY);
  await run("settle home --from port-ansel");
  const open = async (name: string) => {
    const opened = await openAnyKitchen(name, { ...toMemory(folder), nowMs: () => Date.parse(DAY) }, loadTables(), DAY);
    if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
    return opened.value.kitchen;
  };
  expect((await open("home")).pace).toBe(undefined);
  await run("work red-lentil-cumin-soup-pitta --kitchen home --begun A:chop=0 --done A:chop=12 --now 12 --learn");
  const kept = await open("home");
  expect(kept.pace).toEqual({ cut: expect.closeTo(1.2, 9) });
  expect(tellPace(kept)).toBe("Minutes are reckoned at the pace of the cook, of what dishes state: cutting 120 %.");
  const demo = await open("port-ansel");
  expect([demo.pace, tellPace(demo)]).toEqual([undefined, undefined]);
});
