import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { WeekPlan } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterAll, beforeAll, expect, test } from "vitest";

const bin = fileURLToPath(new URL("../bin/halfloaf.mjs", import.meta.url));
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-main-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

function run(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...words], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 2 ** 26,
    env: { ...process.env, COLUMNS: "72" },
  });
  return { status, stdout, stderr };
}

test("week gives one plan as data on the output, talk beside it, and no colours in a pipe", () => {
  const { status, stdout, stderr } = run(
    "week",
    "six-flat",
    "--days",
    "1",
    "--effort",
    "quick",
    "--proof",
    "0",
    "--json",
  );
  expect([0, 3]).toContain(status);
  const data = JSON.parse(stdout);
  if (status === 0) expect(v.safeParse(WeekPlan, data).issues).toBe(undefined);
  else expect(data.outcome).toBe("no-plan");
  expect(stderr).toContain("Planning Six in the house at Marl Cross");
  expect(stdout + stderr).not.toContain("\u001b");
});

test("card prints a page as wide as it is told", () => {
  const { status, stdout, stderr } = run("card", "red-lentil-cumin-soup-pitta");
  expect([status, stderr]).toEqual([0, ""]);
  expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(72);
  expect(stdout.trimEnd().replace(/\s+/g, " ")).toMatch(/a doctor or dietitian come before anything said here\.$/);
});

test("a file of 200 MB and broken JSON are refused with code 2, nothing on the output, nothing touched", () => {
  writeFileSync(join(folder, "large.json"), "");
  truncateSync(join(folder, "large.json"), 200 * 2 ** 20);
  writeFileSync(join(folder, "broken.json"), '{\n  "format": "halfloaf-kitchen",\n}');
  const before = readdirSync(folder);
  const large = run("week", "large.json");
  expect([large.status, large.stdout]).toEqual([2, ""]);
  expect(large.stderr).toContain("has 200 MB; more than 32 MB is not read");
  const broken = run("week", "broken.json");
  expect([broken.status, broken.stdout]).toEqual([2, ""]);
  expect(broken.stderr.replace(/\s+/g, " ")).toContain("in line 3, column 1 stands");
  expect(readdirSync(folder)).toEqual(before);
});

test("a reader that leaves early is no fault", async () => {
  const child = spawn(process.execPath, [bin, "card", "red-lentil-cumin-soup-pitta", "--json"], { cwd: folder });
  child.stdout.destroy();
  let talked = "";
  child.stderr.on("data", (part) => {
    talked += part;
  });
  const status = await new Promise((resolve) => child.on("close", resolve));
  expect([status, talked]).toEqual([0, ""]);
});

test.skipIf(process.platform === "win32")(
  "Ctrl-C ends the search and shows the best so far",
  async () => {
    const child = spawn(process.execPath, [bin, "week", "--days", "1", "--effort", "long", "--proof", "0"], {
      cwd: folder,
    });
    let talked = "";
    child.stderr.on("data", (part) => {
      // The search has begun as soon as it is announced, give it a moment for a first plan.
      if (talked === "") setTimeout(() => child.kill("SIGINT"), 1500);
      talked += part;
    });
    const status = await new Promise((resolve) => child.on("close", resolve));
    expect([0, 3]).toContain(status);
    expect(talked).toMatch(/Stopped after \d+ moves|No plan was found/);
  },
  60_000,
);
