import { HostDesk, type Invitation, KitchenSync, type Socket, toSyncMemory } from "@halfloaf/keep/sync";
import { type Device, type KitchenOnDevice, readDevice } from "../kitchen/device.ts";
import { KitchenSession } from "../kitchen/KitchenSession.ts";
import { loadTables } from "../kitchen/loadStarter.ts";
import { JOINING, joiningId } from "./joining.ts";
import { markKeyOf, readShared, writeShared } from "./shared.ts";

/** What joining came to: the device with the kitchen open in it, or why not. */
export type Joined = { readonly ok: true; readonly device: Device } | { readonly ok: false; readonly reason: string };

/** Uses an invitation up and brings the kitchen here. A copy that this device has of it is gone on with. */
export async function joinKitchen(invitation: Invitation, name: string, device: Device): Promise<Joined> {
  const known = listAll(device).find(({ id }) => readShared(id)?.kitchen === invitation.kitchen);
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
  const id = joiningId();
  return id === undefined ? undefined : bringHere(id, device);
}

function listAll({ kitchens, removed = [] }: Device): readonly KitchenOnDevice[] {
  return [...kitchens, ...removed];
}

/** Brings it here in one tab; another that would as well waits for that, and finds the kitchen on the device. */
async function bringHere(id: string, device: Device): Promise<Joined> {
  // Without HTTPS a browser has no locks; then two tabs at once may each bring it.
  if (navigator.locks === undefined) return bringHereNow(id, device);
  return navigator.locks.request(JOINING, () => {
    const isStill = joiningId() === id;
    return isStill ? bringHereNow(id, device) : { ok: true, device: readDevice() };
  });
}

async function bringHereNow(id: string, device: Device): Promise<Joined> {
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
  const rows = session.kept.rawRows();
  await session.close();
  const isIn = reason === undefined && title !== undefined;
  const known = listAll(device).some((each) => each.id === id);
  const copy = isIn && !known ? await findCopy(rows, device) : undefined;
  if (copy !== undefined) writeShared(copy, readShared(id));
  localStorage.removeItem(JOINING);
  // What was made for it alone is not left behind.
  if (!known && (!isIn || copy !== undefined)) {
    writeShared(id, undefined);
    indexedDB.deleteDatabase(id);
  }
  return isIn
    ? { ok: true, device: withOpen(device, { id: copy ?? id, title }) }
    : { ok: false, reason: reason ?? "strange" };
}

/** The device with that kitchen open and on its list. */
function withOpen(device: Device, joined: KitchenOnDevice): Device {
  const { by: _by, ...rest } = device;
  const { removed = [] } = device;
  const isOther = ({ id }: KitchenOnDevice): boolean => id !== joined.id;
  return {
    ...rest,
    open: joined.id,
    kitchens: [...device.kitchens.filter(isOther), joined],
    removed: removed.filter(isOther),
  };
}

/**
 * The kitchen of this device that these rows are of, such as it kept when it left: two sets of rows are of one kitchen where
 * they share a row. What was done in it meanwhile goes to the others with the next talk. Undefined where there is none.
 */
async function findCopy(rows: readonly unknown[], device: Device): Promise<string | undefined> {
  for (const { id } of listAll(device)) {
    const session = readShared(id) === undefined ? await openCopy(id, device, true) : undefined;
    const isSame = session !== undefined && session.view !== undefined && !session.kept.isOther(rows);
    await session?.close();
    if (isSame) return id;
  }
  return undefined;
}

async function openCopy(id: string, device: Device, expected = false): Promise<KitchenSession | undefined> {
  const tables = await loadTables();
  const opened = await KitchenSession.open(id, { starter: tables, device: device.name, expected });
  return "ok" in opened ? undefined : opened;
}
