import type { Chunk, ChunkStore, Kept } from "./chunks/ChunkStore.ts";

/** A store that keeps nothing beyond the test and can be told to be full. */
export interface MemoryStore extends ChunkStore {
  isFull: boolean;
  readonly chunks: Chunk[];
}

export function openMemoryStore(): MemoryStore {
  const chunks: Chunk[] = [];
  let seq = 0;
  const add = (kind: Chunk["kind"], bytes: Uint8Array): Kept => {
    if (store.isFull) return { ok: false, reason: "full", detail: "as told" };
    chunks.push({ seq: ++seq, kind, bytes });
    return { ok: true, seq };
  };
  const store: MemoryStore = {
    isFull: false,
    chunks,
    read: async (after) => ({ chunks: chunks.filter((chunk) => chunk.seq > after), damaged: [], upTo: seq }),
    append: async (bytes) => add("change", bytes),
    compact: async (snapshot) => add("snapshot", snapshot),
    watch: () => () => {},
    close: async () => {},
  };
  return store;
}
