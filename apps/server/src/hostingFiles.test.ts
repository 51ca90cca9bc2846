import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ServerMessage } from "@halfloaf/keep/sync";
import * as v from "valibot";
import { expect, it } from "vitest";
import { findProgram } from "./testing/startServices.testing.ts";
import { Measures } from "./watch/Measures.ts";

const unit = fileURLToPath(new URL("../../../docs/hosting/halfloaf.service", import.meta.url));
const program = findProgram("systemd-analyze");

if (program === undefined) it.skip("The unit for systemd: systemd is not on this machine");
else
  it("The unit for systemd can be read, and leaves the server exposed little", () => {
    expect(
      execFileSync(program, ["security", "--offline=true", "--threshold=20", unit], { stdio: "pipe" }).toString(),
    ).toMatch(/Overall exposure level for halfloaf.service: [01]\.\d OK/);
  });

it("The rules for Prometheus ask for what a server counts, and every reason that they name is one that it tells", async () => {
  const rules = readFileSync(fileURLToPath(new URL("../../../docs/hosting/alerts.yaml", import.meta.url)), "utf8");
  const told = await new Measures().registry.getMetricsAsJSON();
  const counted = told.map(({ name }) => name);
  const asked = [...rules.matchAll(/halfloaf_[a-z_]+/g)].map(([name]) => name.replace(/_bucket$/, ""));
  expect(asked.length).toBeGreaterThan(4);
  expect(asked.filter((name) => !counted.includes(name))).toEqual([]);
  const bye = ServerMessage.options.find(({ entries }) => entries.say.literal === "bye");
  const reasons = [...rules.matchAll(/farewells_total\{reason=~?"([a-z|]+)"/g)].flatMap(([, list = ""]) =>
    list.split("|"),
  );
  for (const reason of reasons) expect(v.is(bye as v.GenericSchema, { say: "bye", reason })).toBe(true);
});
