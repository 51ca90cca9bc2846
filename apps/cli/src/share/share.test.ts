import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startHost, type TestHost } from "@halfloaf/server/testing/host";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runnerIn } from "../keep/keep.testing.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-share-"));
const run = runnerIn(folder, "2026-11-30");
const other = runnerIn(folder, "2026-11-30", { HALFLOAF_KITCHEN: "other", HALFLOAF_DEVICE: "phone" });
let host: TestHost;
beforeAll(async () => {
  host = await startHost();
});
afterAll(async () => {
  await host.stop();
  rmSync(folder, { recursive: true, force: true });
});

const linkOf = (printed: string) => printed.split("\n").find((line) => line.startsWith("http")) ?? "";

test("A kitchen is shared, joined by its link once, and each has what the other did after they met", async () => {
  expect((await run("settle home --from one-ring")).code).toBe(0);
  expect((await run("meet")).talked).toContain('Share it with "halfloaf share SERVER".');
  expect((await run(`share ${host.url}`)).printed).toMatch(/^\d+ rows sent, 0 rows received\.$/);
  expect((await run(`share ${host.url}`)).talked).toContain("shared already");
  const link = linkOf((await run("invite --role keeper")).printed);
  expect((await other(`join ${link}`)).printed).toMatch(/^0 rows sent, \d+ rows received\.$/);
  expect((await other("stores")).printed).toBe((await run("stores")).printed);
  expect((await run(`join ${link} --kitchen third`)).talked).toContain("used, revoked or is too old");
  expect((await other(`join ${link}`)).talked).toContain("holds a kitchen already");
  const eaten = await other("sitting midday --skipped all");
  expect(eaten.code).toBe(0);
  expect((await other("meet")).printed).toBe("1 row sent, 0 rows received.");
  expect((await run("meet")).printed).toBe("0 rows sent, 1 row received.");
  expect((await run("history --last 1")).printed).toContain("phone");
});

test("A device is removed, and then neither sends nor loses anything; its credential is its own", async () => {
  const path = join(folder, "other", "sharing.json");
  expect(statSync(path).mode & 0o077).toBe(0);
  const { device } = JSON.parse(readFileSync(path, "utf8")) as { device: string };
  expect((await run("devices")).lines.length).toBe(2);
  expect((await run(`devices --remove ${device}`)).lines.length).toBe(1);
  expect((await other("sitting evening --skipped all")).code).toBe(0);
  expect((await other("meet")).talked).toContain("does not know this device");
  expect((await other("history --last 1")).printed).toContain("phone");
  expect((await run("devices --remove nobody-at-all")).talked).toContain("none of that name");
});

test("What is no link, and a server that is not there, are told with what to do", async () => {
  expect((await run("join nonsense --kitchen fourth")).talked).toContain("what stands behind #");
  await run("settle lone --from one-ring");
  expect((await run("share http://127.0.0.1:1 --kitchen lone")).talked).toContain("can't be reached");
});

test("An address for calendars is made, read without a credential, listed by its maker and revoked", async () => {
  const made = (await run("calendars --make --zone Europe/Berlin")).lines;
  const address = made.find((line) => line.startsWith("http")) ?? "";
  expect(await (await fetch(address)).text()).toMatch(/^BEGIN:VCALENDAR/);
  const [listed = ""] = (await run("calendars")).lines;
  expect(listed).toContain("Europe/Berlin");
  expect(address).toContain(listed.split(" ")[0]);
  expect((await run("calendars --make --zone Mars/Olympus")).talked).toContain("no time zone");
  expect((await run("calendars --revoke nobody-at-all")).talked).toContain("none of that name");
  expect((await run(`calendars --revoke ${listed.split(" ")[0]}`)).lines).toEqual([]);
  expect((await fetch(address)).status).toBe(404);
});
