import type { SyncView } from "@halfloaf/keep/sync";
import { useSyncExternalStore } from "react";
import { syncRun } from "./SyncRun.ts";

/** How the open kitchen stands to its server; undefined where it is not shared. */
export function useSyncView(): SyncView | undefined {
  return useSyncExternalStore(syncRun.subscribe, () => syncRun.view);
}
