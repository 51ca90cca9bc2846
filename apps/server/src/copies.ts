import { once } from "node:events";
import { createReadStream, createWriteStream, renameSync } from "node:fs";
import { createInterface } from "node:readline";
import { finished } from "node:stream/promises";
import { createGunzip, createGzip } from "node:zlib";
import { ROLES } from "@halfloaf/keep/sync";
import * as v from "valibot";
import { type HostStore, isFault, type KitchenCopy } from "./host/HostStore.ts";
import { makeName } from "./secrets.ts";

/** The first line of a file of copies. */
const HEAD = { format: "halfloaf-host-copies", version: 1 };

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const Line = v.strictObject({
  kitchen: v.object({ id: v.string(), log: v.string() }),
  devices: v.array(
    v.strictObject({
      id: v.string(),
      kitchen: v.string(),
      name: v.string(),
      role: v.picklist(ROLES),
      secretHash: v.pipe(v.string(), v.base64()),
      madeAtMs: whole,
      seenAtMs: whole,
    }),
  ),
  // Files of earlier servers have none.
  calendars: v.optional(
    v.array(
      v.strictObject({
        id: v.string(),
        kitchen: v.string(),
        madeBy: v.string(),
        secretHash: v.pipe(v.string(), v.base64()),
        manner: v.string(),
        madeAtMs: whole,
        seenAtMs: whole,
      }),
    ),
    [],
  ),
  writers: v.array(v.tuple([v.string(), v.string()])),
  rows: v.array(v.strictObject({ seq: whole, id: v.string(), device: v.string(), text: v.string() })),
});

/**
 * Writes copies of all kitchens into one file, a line each, packed, while the server goes on. The file is there whole or not
 * at all. Gives how many; throws where the store or the disk fails.
 */
export async function writeCopies(store: HostStore, path: string): Promise<number> {
  const packing = createGzip();
  const written = finished(packing.pipe(createWriteStream(`${path}.part`, { mode: 0o600 })));
  const write = async (value: unknown) => {
    if (!packing.write(`${JSON.stringify(value)}\n`)) await once(packing, "drain");
  };
  await write(HEAD);
  let count = 0;
  for await (const copy of store.copyAll()) {
    if (isFault(copy)) throw new Error(`The store can't be read: ${copy.reason} ${copy.detail}`);
    await write({
      ...copy,
      kitchen: { id: copy.kitchen.id, log: copy.kitchen.log },
      devices: copy.devices.map(toPlain),
      calendars: copy.calendars.map(toPlain),
    });
    count++;
  }
  packing.end();
  await written;
  renameSync(`${path}.part`, path);
  return count;
}

/**
 * Brings all kitchens of a file of copies back in the place of what the store has of them; kitchens that are not in it stay.
 * Devices then send what came after the copy, and nothing is lost that one of them has. Gives how many.
 */
export async function readCopies(store: HostStore, path: string): Promise<number> {
  const lines = createInterface({
    input: createReadStream(path).pipe(createGunzip()),
    crlfDelay: Number.POSITIVE_INFINITY,
  });
  let count = -1;
  for await (const line of lines) {
    const content: unknown = JSON.parse(line);
    if (count === -1 && JSON.stringify(content) !== JSON.stringify(HEAD))
      throw new Error(`${path} holds no copies of this version: it begins with ${line.slice(0, 80)}`);
    if (count >= 0) {
      const restored = await store.restore(toCopy(v.parse(Line, content)), makeName());
      if (isFault(restored)) throw new Error(`The store can't be written: ${restored.reason} ${restored.detail}`);
    }
    count++;
  }
  if (count === -1) throw new Error(`${path} is empty`);
  return count;
}

function toPlain<Held extends { readonly secretHash: Uint8Array }>(held: Held) {
  return { ...held, secretHash: Buffer.from(held.secretHash).toString("base64") };
}

function toCopy({ kitchen, devices, calendars, writers, rows }: v.InferOutput<typeof Line>): KitchenCopy {
  const toHeld = <Plain extends { readonly secretHash: string }>(plain: Plain) => ({
    ...plain,
    secretHash: new Uint8Array(Buffer.from(plain.secretHash, "base64")),
  });
  return { kitchen, devices: devices.map(toHeld), calendars: calendars.map(toHeld), writers, rows };
}
