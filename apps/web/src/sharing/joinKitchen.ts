import { HostDesk, type Invitation, KitchenSync, type Socket, toSyncMemory } from "@halfloaf/keep/sync";
import type { Device } from "../kitchen/device.ts";
import { KitchenSession } from "../kitchen/KitchenSession.ts";
import { loadStarter } from "../kitchen/loadStarter.ts";
import { markKeyOf, readShared, writeShared } from "./shared.ts";

/** What joining came to: the device with the kitchen open in it, or why not. */
export type Joined = { readonly ok: true; readonly device: Device } | { readonly ok: false; readonly reason: string };

const JOINING = "halfloaf-joining";

/** Uses an invitation up and brings the kitchen here. A copy that this device has of it is used again. */
export async function joinKitchen(invitation: Invitation, name: string, device: Device): Promise<Joined> {
  const known = device.kitchens.find(({ id }) => readShared(id)?.kitchen === invitation.kitchen);
  const id = known?.id ?? `kitchen-${Date.now().toString(36)}`;
  // Its place first: an invitation is used up once, and nothing may go wrong after it.
  const opened = await openCopy(id, device);
  if (opened === undefined) return { ok: false, reason: "no-room" };
  await opened.close();
  const joined = await new HostDesk(fetch).join(invitation, name);
  if (!joined.ok) return joined;
  if (!writeShared(id, joined.value)) return { ok: false, reason: "no-room" };
  localStorage.setItem(JOINING, id);
  return bringHere(id, device);
}

/** Goes on with a joining that was broken off; undefined where there is none. */
export function goOnJoining(device: Device): Promise<Joined> | undefined {
  const id = localStorage.getItem(JOINING);
  return id === null || readShared(id) === undefined ? undefined : bringHere(id, device);
}

async function bringHere(id: string, device: Device): Promise<Joined> {
  const session = await openCopy(id, device);
  const shared = readShared(id);
  if (session === undefined || shared === undefined) return { ok: false, reason: "no-room" };
  const openSocket = (url: string): Socket => new WebSocket(url) as unknown as Socket;
  const sync = new KitchenSync(session.kept, shared, { openSocket, memory: toSyncMemory(localStorage, markKeyOf(id)) });
  sync.start();
  const reason = await new Promise<string | undefined>((resolve) => {
    const look = (): void => {
      const { state, role } = sync.view;
      if (state.kind === "refused") resolve(state.reason);
      else if (state.kind === "together" && session.view !== undefined) {
        if (role !== undefined) writeShared(id, { ...shared, role });
        resolve(undefined);
      }
    };
    sync.subscribe(look);
    session.subscribe(look);
  });
  sync.stop();
  const title = session.view?.kitchen.name;
  await session.close();
  localStorage.removeItem(JOINING);
  if (reason !== undefined || title === undefined) return { ok: false, reason: reason ?? "strange" };
  const { by: _by, ...rest } = device;
  const others = device.kitchens.filter((each) => each.id !== id);
  return { ok: true, device: { ...rest, open: id, kitchens: [...others, { id, title }] } };
}

async function openCopy(id: string, device: Device): Promise<KitchenSession | undefined> {
  const { tables } = await loadStarter();
  const opened = await KitchenSession.open(id, { starter: tables, device: device.name, expected: false });
  return "ok" in opened ? undefined : opened;
}
