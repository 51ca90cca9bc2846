import { lateLoads } from "./lateLoads.ts";

/**
 * Loads a part of the app that comes over the network: a script, a text, a table. It never fails; where the network is gone it
 * waits until that is back and asks again (`lateLoads`), and whoever shows what is waited for says so (`Loading`).
 */
export async function loadSurely<Loaded>(load: () => Promise<Loaded>): Promise<Loaded> {
  try {
    return await load();
  } catch {
    return loadLate(load);
  }
}

async function loadLate<Loaded>(load: () => Promise<Loaded>): Promise<Loaded> {
  const end = lateLoads.begin();
  for (;;) {
    await lateLoads.nextTry();
    try {
      const loaded = await load();
      end();
      return loaded;
    } catch {
      await lateLoads.look();
    }
  }
}
