import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { HostStore } from "./host/HostStore.ts";
import { openPostgresHost } from "./host/openPostgresHost.ts";
import { openSqliteHost } from "./host/openSqliteHost.ts";
import { type Limits, USUAL_LIMITS } from "./limits.ts";
import type { ServerParts } from "./ServerParts.ts";
import { makeName } from "./secrets.ts";
import type { Settings } from "./settings.ts";
import { openJournal } from "./watch/Journal.ts";
import { Measures } from "./watch/Measures.ts";
import { throttleJournal } from "./watch/throttleJournal.ts";
import { openRedisWire } from "./wire/openRedisWire.ts";
import { openNoWire, type Wire } from "./wire/Wire.ts";

/** Opens the store that the settings name; its folder is made where there is none. */
export async function openStore({ databaseUrl, folder }: Settings): Promise<HostStore> {
  if (databaseUrl !== undefined) return openPostgresHost(databaseUrl);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return openSqliteHost(join(folder, "kitchens.sqlite"));
}

/** Opens all that a server of these settings needs. Throws where the store can't be opened. */
export async function openParts(settings: Settings): Promise<ServerParts> {
  const server = makeName();
  const measures = new Measures({ isWhole: true });
  const journal = openJournal(settings.logLevel);
  return {
    store: await openStore(settings),
    wire: openWire(settings, server),
    server,
    limits: toLimits(settings),
    journal: throttleJournal(journal, { now: Date.now, onLeftOut: () => measures.leftOut.inc() }),
    measures,
    now: Date.now,
  };
}

/** Where more may be open, more may come at once. */
function toLimits({ socketsOfAddress }: Settings): Limits {
  if (socketsOfAddress === undefined) return USUAL_LIMITS;
  const arrivals = { ...USUAL_LIMITS.arrivals, burst: socketsOfAddress };
  return { ...USUAL_LIMITS, socketsOfAddress, arrivals };
}

function openWire({ redisUrl, databaseUrl }: Settings, server: string): Wire {
  if (redisUrl !== undefined) return openRedisWire(redisUrl, server);
  // Others may have the same database open, and nobody tells of it.
  return openNoWire({ isAlone: databaseUrl === undefined });
}
