import { execFileSync } from "node:child_process";
import { expect, it } from "vitest";
import { ServerProcess } from "../testing/ServerProcess.testing.ts";
import { boughtOats, letIn, makeKitchen, until } from "../testing/startHost.testing.ts";
import { findProgram } from "../testing/startServices.testing.ts";
import { useHosts } from "../testing/useHosts.testing.ts";

const { join, newFolder, track } = useHosts();
const program = findProgram("prlimit");

if (program === undefined) it.skip("A disk that takes nothing more: prlimit is not on this machine");
else
  it("A disk that takes nothing more is told to devices, which go on; once it takes again, all is kept and handed on", async () => {
    const server = await ServerProcess.start({ HALFLOAF_FOLDER: newFolder() });
    track({ stop: () => server.kill() });
    const limitFiles = (bytes: string) => execFileSync(program, [`--fsize=${bytes}`, "--pid", String(server.pid)]);
    const keeper = await makeKitchen(server);
    const phone = await join(keeper, "phone");
    const laptop = await join(await letIn(keeper, "cook"), "laptop");
    await phone.kept.add([boughtOats("oats-1")]);
    await until(() => laptop.kept.events.state.lots.size === 1);
    limitFiles("4096:unlimited");
    await phone.kept.add([boughtOats("oats-2")]);
    await laptop.kept.add([boughtOats("oats-3")]);
    await until(() => phone.sync.view.hasTrouble && laptop.sync.view.hasTrouble);
    expect([phone.sync.view.unsent, laptop.sync.view.unsent]).toEqual([1, 1]);
    expect(phone.kept.events.state.lots.has("oats-2")).toBe(true);
    expect(phone.kept.events.state.lots.has("oats-3")).toBe(false);
    limitFiles("unlimited:unlimited");
    await until(() => [phone, laptop].every(({ kept }) => kept.events.state.lots.size === 3), 20_000);
    await Promise.all([phone.sync.settled(), laptop.sync.settled()]);
    expect([phone, laptop].map(({ sync }) => sync.view.hasTrouble)).toEqual([false, false]);
    const late = await join(keeper, "tablet");
    expect(late.kept.events.state.lots.size).toBe(3);
  });
