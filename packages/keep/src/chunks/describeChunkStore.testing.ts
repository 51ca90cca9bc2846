import { afterEach, describe, expect, it } from "vitest";
import type { ChunkStore, ChunksRead, OpenedStore, StoreFault } from "./ChunkStore.ts";

/** Where the suite finds one and the same store again, and how it reaches behind the store to spoil it. */
export interface StorePlace {
  open(): Promise<OpenedStore<ChunkStore> | StoreFault>;
  /** Changes one byte of a chunk without the store knowing. */
  spoil(seq: number): Promise<void>;
  /** Leaves the store as a program of the next version would. */
  raiseVersion(): Promise<void>;
}

const bytes = (...values: number[]) => new Uint8Array(values);

/** What every store of chunks must do. */
export function describeChunkStore(name: string, makePlace: () => Promise<StorePlace>): void {
  describe(name, () => {
    const opened: ChunkStore[] = [];
    const openAt = async (place: StorePlace) => {
      const outcome = await place.open();
      if (!outcome.ok) throw new Error(`${outcome.reason}: ${outcome.detail}`);
      opened.push(outcome.store);
      return outcome.store;
    };
    afterEach(async () => {
      for (const store of opened.splice(0)) await store.close();
    });

    it("gives back what it kept, in order, after it was opened again", async () => {
      const place = await makePlace();
      const store = await openAt(place);
      for (const value of [1, 2, 3]) expect((await store.append(bytes(value))).ok).toBe(true);
      await store.close();
      const { chunks, upTo } = read(await (await openAt(place)).read(0));
      expect(chunks.map((chunk) => [...chunk.bytes])).toEqual([[1], [2], [3]]);
      expect(upTo).toBe(chunks[2]?.seq);
    });

    it("gives only what came after the point that is asked for", async () => {
      const store = await openAt(await makePlace());
      const first = await store.append(bytes(1));
      await store.append(bytes(2));
      const { chunks } = read(await store.read(first.ok ? first.seq : 0));
      expect(chunks.map((chunk) => [...chunk.bytes])).toEqual([[2]]);
    });

    it("keeps the snapshot before the newest and what came after it, and lets go of what is older", async () => {
      const store = await openAt(await makePlace());
      await store.append(bytes(1));
      const early = read(await store.read(0)).upTo;
      await store.compact(bytes(10), early);
      await store.append(bytes(2));
      const late = read(await store.read(0)).upTo;
      expect(read(await store.read(0)).chunks.map((chunk) => [...chunk.bytes])).toEqual([[1], [10], [2]]);
      await store.compact(bytes(20), late);
      expect(read(await store.read(0)).chunks.map((chunk) => [...chunk.bytes])).toEqual([[10], [2], [20]]);
      await store.compact(bytes(30), read(await store.read(0)).upTo);
      expect(read(await store.read(0)).chunks.map((chunk) => [...chunk.bytes])).toEqual([[20], [30]]);
    });

    it("names a chunk whose bytes have changed and gives the others", async () => {
      const place = await makePlace();
      const store = await openAt(place);
      await store.append(bytes(1, 1, 1));
      const kept = await store.append(bytes(2, 2, 2));
      await store.append(bytes(3, 3, 3));
      await store.close();
      const seq = kept.ok ? kept.seq : 0;
      await place.spoil(seq);
      const { chunks, damaged } = read(await (await openAt(place)).read(0));
      expect(damaged).toEqual([{ seq, kind: "change" }]);
      expect(chunks.map((chunk) => chunk.bytes[0])).toEqual([1, 3]);
    });

    it("leaves a store of a newer version untouched and says so", async () => {
      const place = await makePlace();
      await (await openAt(place)).close();
      await place.raiseVersion();
      expect(await place.open()).toMatchObject({ ok: false, reason: "newer" });
    });

    it("says that it is closed where it is", async () => {
      const store = await openAt(await makePlace());
      await store.close();
      expect(await store.append(bytes(1))).toMatchObject({ ok: false, reason: "closed" });
      expect(await store.read(0)).toMatchObject({ ok: false, reason: "closed" });
    });

    it("takes in from two openings at once, each seeing what the other kept", async () => {
      const place = await makePlace();
      const [one, other] = [await openAt(place), await openAt(place)];
      await Promise.all([1, 2, 3, 4, 5, 6].map((value) => (value % 2 ? one : other).append(bytes(value))));
      const values = async (store: ChunkStore) =>
        read(await store.read(0))
          .chunks.map((chunk) => chunk.bytes[0])
          .sort();
      expect(await values(one)).toEqual([1, 2, 3, 4, 5, 6]);
      expect(await values(other)).toEqual([1, 2, 3, 4, 5, 6]);
    });

    it("tells an opening that the other has added something", async () => {
      const place = await makePlace();
      const [one, other] = [await openAt(place), await openAt(place)];
      const heard = new Promise<void>((resolve) => one.watch(resolve));
      await other.append(bytes(1));
      await heard;
    });
  });
}

function read(outcome: Awaited<ReturnType<ChunkStore["read"]>>): ChunksRead {
  if ("ok" in outcome) throw new Error(`${outcome.reason}: ${outcome.detail}`);
  return outcome;
}
