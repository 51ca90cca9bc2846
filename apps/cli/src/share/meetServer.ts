import type { KeptKitchen } from "@halfloaf/keep";
import { KitchenSync, type Membership, type Socket, type SyncView } from "@halfloaf/keep/sync";
import { WebSocket } from "ws";
import { toFolderMemory } from "./sharingFile.ts";

/** What a meeting with the server came to, or why there was none. */
export type Met =
  | { readonly ok: true; readonly sent: number; readonly received: number; readonly view: SyncView }
  | { readonly ok: false; readonly reason: string };

/** How long a meeting may take, in milliseconds: a large kitchen comes within seconds. */
const MOST_MS = 60_000;

/** Brings the kitchen and its server up to date with each other once. */
export async function meetServer(kept: KeptKitchen, membership: Membership, folder: string): Promise<Met> {
  const before = new Set(kept.rows().map(({ id }) => id));
  const openSocket = (url: string) => new WebSocket(url, { perMessageDeflate: false }) as unknown as Socket;
  const sync = new KitchenSync(kept, membership, { openSocket, memory: toFolderMemory(folder) });
  let unsent = 0;
  const met = new Promise<Met>((resolve) => {
    const timer = setTimeout(() => resolve({ ok: false, reason: "slow" }), MOST_MS);
    const end = (outcome: Met) => {
      clearTimeout(timer);
      resolve(outcome);
    };
    sync.subscribe(() => {
      const { view } = sync;
      unsent = Math.max(unsent, view.unsent);
      if (view.state.kind === "refused") end({ ok: false, reason: view.state.reason });
      else if (view.state.kind === "apart") end({ ok: false, reason: "unreachable" });
      else if (view.hasTrouble) end({ ok: false, reason: "storage" });
      else if (view.state.kind === "together" && view.unsent === 0)
        end({
          ok: true,
          sent: Math.max(0, unsent - view.returned.length),
          received: kept.rows().filter(({ id }) => !before.has(id)).length,
          view,
        });
    });
  });
  sync.start();
  const outcome = await met;
  sync.stop();
  return outcome;
}
