import { existsSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Membership, SyncMark, SyncMemory } from "@halfloaf/keep/sync";
import * as v from "valibot";

/** What a folder remembers of the server that its kitchen is shared on; the credential in it is a secret. */
const Sharing = v.strictObject({
  format: v.literal("halfloaf-sharing"),
  version: v.literal(1),
  server: v.string(),
  kitchen: v.string(),
  device: v.string(),
  credential: v.string(),
  mark: v.optional(v.strictObject({ log: v.string(), upTo: v.number() })),
});

const FILE = "sharing.json";

/** Where the kitchen of a folder is shared; undefined where it is not, or what is remembered can't be read. */
export function readSharing(folder: string): Membership | undefined {
  return read(folder);
}

export function writeSharing(folder: string, membership: Membership): void {
  write(folder, { format: "halfloaf-sharing", version: 1, ...membership });
}

/** Remembers in the folder how far the server's log was read. */
export function toFolderMemory(folder: string): SyncMemory {
  return {
    read: () => read(folder)?.mark,
    write: (mark: SyncMark) => {
      const sharing = read(folder);
      if (sharing !== undefined) write(folder, { ...sharing, mark });
    },
  };
}

function read(folder: string): v.InferOutput<typeof Sharing> | undefined {
  const path = join(folder, FILE);
  if (!existsSync(path)) return undefined;
  try {
    const found = v.safeParse(Sharing, JSON.parse(readFileSync(path, "utf8")));
    return found.success ? found.output : undefined;
  } catch {
    return undefined;
  }
}

function write(folder: string, sharing: v.InferOutput<typeof Sharing>): void {
  const path = join(folder, FILE);
  // Nobody else on the machine may read the credential.
  writeFileSync(`${path}.part`, `${JSON.stringify(sharing, null, 2)}\n`, { mode: 0o600, flush: true });
  renameSync(`${path}.part`, path);
}
