import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach } from "vitest";
import { openDevice, startHost, type TestDevice, type TestHost, type TestHostOptions } from "./startHost.testing.ts";

interface Running {
  stop(): unknown;
}

/** Servers and devices of the tests of a file: whatever is started here ends after each test, the last first. Called once a file. */
export function useHosts() {
  const running: Running[] = [];
  afterEach(async () => {
    for (const each of running.splice(0).reverse()) await each.stop();
  });
  const track = <Each extends Running>(each: Each): Each => {
    running.push(each);
    return each;
  };
  /** Opens a device that is not connected yet. */
  const open = async (...words: Parameters<typeof openDevice>): Promise<TestDevice> => {
    const device = await openDevice(...words);
    track(device.sync);
    return device;
  };
  return {
    track,
    open,
    start: async (options?: TestHostOptions): Promise<TestHost> => track(await startHost(options)),
    /** Opens a device and waits until it is level with its server. */
    join: async (...words: Parameters<typeof openDevice>): Promise<TestDevice> => {
      const device = await open(...words);
      device.sync.start();
      await device.sync.settled();
      return device;
    },
    /** Ends one before the others. */
    end: async (each: Running): Promise<void> => {
      running.splice(running.indexOf(each), 1);
      await each.stop();
    },
    newFolder: (): string => {
      const folder = mkdtempSync(join(tmpdir(), "halfloaf-test-"));
      track({ stop: () => rmSync(folder, { recursive: true, force: true }) });
      return folder;
    },
  };
}
