import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { findProgram } from "./testing/startServices.testing.ts";

const unit = fileURLToPath(new URL("../../../docs/hosting/halfloaf.service", import.meta.url));
const program = findProgram("systemd-analyze");

if (program === undefined) it.skip("The unit for systemd: systemd is not on this machine");
else
  it("The unit for systemd can be read, and leaves the server exposed little", () => {
    expect(
      execFileSync(program, ["security", "--offline=true", "--threshold=20", unit], { stdio: "pipe" }).toString(),
    ).toMatch(/Overall exposure level for halfloaf.service: [01]\.\d OK/);
  });
