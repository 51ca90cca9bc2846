import { isFault } from "./host/HostStore.ts";
import type { ServerParts } from "./ServerParts.ts";
import type { SyncHub } from "./sync/SyncHub.ts";

const DAY_MS = 86_400_000;

/** Takes away kitchens that no device has come to for so many days, and writes down how many; nothing where the store fails. */
export async function forgetUnseen({ store, journal, now }: ServerParts, hub: SyncHub, days: number): Promise<void> {
  const forgotten = await store.forgetUnseen(now() - days * DAY_MS);
  if (isFault(forgotten)) {
    journal.error({ reason: forgotten.reason, detail: forgotten.detail }, "store-trouble");
    return;
  }
  for (const kitchen of forgotten) {
    journal.info({ kitchen, days }, "kitchen-forgotten");
    hub.endDevice(kitchen);
  }
}

/** Does so at once and once a day, until it is ended by what is given. */
export function forgetEveryDay(parts: ServerParts, hub: SyncHub, days: number): () => void {
  void forgetUnseen(parts, hub, days);
  const timer = setInterval(() => void forgetUnseen(parts, hub, days), DAY_MS);
  timer.unref();
  return () => clearInterval(timer);
}
