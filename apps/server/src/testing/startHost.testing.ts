import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { KeptKitchen } from "@halfloaf/keep";
import { HostDesk, KitchenSync, type Membership, type Role, type Socket, type SyncMark } from "@halfloaf/keep/sync";
import { openMemoryStore } from "@halfloaf/keep/testing/memory";
import { WebSocket } from "ws";
import type { ApiOptions } from "../api/ApiDesk.ts";
import type { HostStore } from "../host/HostStore.ts";
import { openSqliteHost } from "../host/openSqliteHost.ts";
import { type Limits, USUAL_LIMITS } from "../limits.ts";
import type { ServerParts } from "../ServerParts.ts";
import { makeName } from "../secrets.ts";
import { serve } from "../serve.ts";
import { SyncHub } from "../sync/SyncHub.ts";
import type { SocketOptions } from "../sync/takeSockets.ts";
import { Measures } from "../watch/Measures.ts";
import { openNoWire, type Wire } from "../wire/Wire.ts";

/** A line of the journal of a server under test. */
interface Line {
  readonly level: "info" | "warn" | "error";
  readonly event: string;
  readonly facts: Readonly<Record<string, unknown>>;
}

/** A real server on a free port, with its parts laid open. */
export interface TestHost {
  readonly url: string;
  readonly port: number;
  readonly parts: ServerParts;
  readonly hub: SyncHub;
  readonly journal: readonly Line[];
  stop(): Promise<void>;
}

export interface TestHostOptions extends Partial<ApiOptions>, Partial<SocketOptions> {
  readonly store?: HostStore;
  readonly wire?: Wire;
  readonly limits?: Partial<Limits>;
  readonly files?: string;
  readonly port?: number;
  readonly now?: () => number;
  readonly metricsToken?: string;
}

/** So much may be asked in tests that are not about rates. */
const FREE = { burst: 1e6, perSecond: 1e6 };

/** Starts a server, with SQLite in a folder of its own where no store is given. */
export async function startHost(options: TestHostOptions = {}): Promise<TestHost> {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-server-"));
  const store = options.store ?? openSqliteHost(join(folder, "kitchens.sqlite"));
  const journal: Line[] = [];
  const note = (level: Line["level"]) => (facts: Line["facts"], event: string) =>
    void journal.push({ level, event, facts });
  const parts: ServerParts = {
    store,
    wire: options.wire ?? openNoWire(),
    server: makeName(),
    limits: { ...USUAL_LIMITS, requests: FREE, kitchens: FREE, mistakes: FREE, arrivals: FREE, ...options.limits },
    journal: { info: note("info"), warn: note("warn"), error: note("error") },
    measures: new Measures(),
    now: options.now ?? Date.now,
  };
  const hub = new SyncHub(parts);
  const { registration = { kind: "open" }, trustedProxies = 0, origins = [], metricsToken } = options;
  const host = { parts, hub, registration, trustedProxies, origins, metricsToken };
  const serving = await serve({ files: options.files ?? folder, host }, options.port ?? 0, "127.0.0.1");
  return {
    url: `http://127.0.0.1:${serving.port}`,
    port: serving.port,
    parts,
    hub,
    journal,
    stop: async () => {
      await serving.close();
      await parts.wire.close();
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export const desk = new HostDesk(fetch);

/** The value of an answer that must be one. */
export function answered<Value>(answer: { ok: true; value: Value } | { ok: false; reason: string }): Value {
  if (!answer.ok) throw new Error(answer.reason);
  return answer.value;
}

/** Makes a kitchen and gives its keeper. */
export async function makeKitchen(host: Pick<TestHost, "url">, name = "Phone"): Promise<Membership> {
  return answered(await desk.makeKitchen(host.url, name));
}

/** Lets another device into a kitchen. */
export async function letIn(keeper: Membership, role: Role, name = "Laptop"): Promise<Membership> {
  return answered(await desk.join(answered(await desk.invite(keeper, role)), name));
}

/** A device with its kitchen in memory and its talk with a server. */
export interface TestDevice {
  readonly kept: KeptKitchen;
  readonly sync: KitchenSync;
}

const openSocket = (url: string) => new WebSocket(url) as unknown as Socket;

/** Opens a device; it is not connected yet. */
export async function openDevice(
  membership: Membership,
  name: string,
  { store = openMemoryStore(), mark = { value: undefined as SyncMark | undefined }, open = openSocket } = {},
): Promise<TestDevice> {
  const kept = await KeptKitchen.open(store, { foods: new Map(), device: name });
  if ("ok" in kept) throw new Error(kept.reason);
  const memory = {
    read: () => mark.value,
    write: (value: SyncMark) => {
      mark.value = value;
    },
  };
  return { kept, sync: new KitchenSync(kept, membership, { openSocket: open, memory, chance: () => 0 }) };
}

/** Waits until something holds, for so long at most. */
export async function until(holds: () => boolean, mostMs = 10_000): Promise<void> {
  for (const started = Date.now(); !holds(); ) {
    if (Date.now() - started > mostMs) throw new Error(`It does not hold after ${mostMs} ms: ${holds}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** A purchase of oats, as an event that is not written down yet. */
export function boughtOats(lot: string) {
  return {
    kind: "bought" as const,
    on: "2026-03-02",
    lot,
    food: "oats-rolled",
    place: "dry-store" as const,
    massG: 500,
    costMinor: 85,
  };
}
