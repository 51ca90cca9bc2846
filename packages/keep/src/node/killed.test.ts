import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, it } from "vitest";
import { openKitchenFolder } from "./openKitchenFolder.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-killed-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const writer = fileURLToPath(new URL("./writeUntilKilled.testing.ts", import.meta.url));

/** Lets the writer write and kills it without warning once it has told of so many; gives the lots it told of. */
function writeAndKill(start: number, count: number): Promise<string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["--import", "tsx", writer, folder, String(start)], { stdio: "pipe" });
    let [told, faults] = ["", ""];
    child.stdout.on("data", (text) => {
      told += text;
      if (told.split("\n").length > count) child.kill("SIGKILL");
    });
    child.stderr.on("data", (text) => {
      faults += text;
    });
    child.on("close", (_, signal) => {
      // What stands after the last line break was cut off in the middle.
      if (signal === "SIGKILL") resolve(told.split("\n").slice(0, -1));
      else reject(new Error(faults));
    });
  });
}

it("Every event that was told as kept is there after the process was killed amid 500 writes", async () => {
  const told: string[] = [];
  for (const count of [2, 90, 160, 250]) told.push(...(await writeAndKill(told.length * 2, count)));
  expect(told.length).toBeGreaterThanOrEqual(500);
  const opened = await openKitchenFolder(folder, { foods: new Map(), device: "after" });
  if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
  expect(opened.repair).toBeUndefined();
  const { lots } = opened.kept.events.state;
  expect(told.filter((lot) => !lots.has(lot))).toEqual([]);
  await opened.kept.close();
});
