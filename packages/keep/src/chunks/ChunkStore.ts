/** What a chunk holds: one change of the document, or the whole document as it stood once `covers` was taken in. */
export type ChunkKind = "change" | "snapshot";

/** One piece of a kept document; `seq` grows by at least one from chunk to chunk of a store. */
export interface Chunk {
  readonly seq: number;
  readonly kind: ChunkKind;
  readonly bytes: Uint8Array;
}

/** A chunk whose bytes are not those that were written. */
export interface DamagedChunk {
  readonly seq: number;
  readonly kind: ChunkKind;
}

/** What a store holds after some point, in the order of `seq`. */
export interface ChunksRead {
  readonly chunks: readonly Chunk[];
  readonly damaged: readonly DamagedChunk[];
  /** Greatest `seq` seen, damaged ones included; the point that was asked for where there is nothing new. */
  readonly upTo: number;
}

/** Why a store could not do what it was asked; `detail` is the platform's own word for it. */
export interface StoreFault {
  readonly ok: false;
  /** full: no space is left. busy: another process held it too long. closed: it was closed. failed: anything else. */
  readonly reason: "full" | "busy" | "closed" | "failed";
  readonly detail: string;
}

/** Given once the bytes are on disk: what is told as kept survives the end of the process. */
export type Kept = { readonly ok: true; readonly seq: number } | StoreFault;

/**
 * Where the chunks of one document are kept. Changes may be taken in again and in any order, so a store need not know
 * what they mean. Two processes, or two tabs, may have the same store open.
 */
export interface ChunkStore {
  /** All that stands after `after`; 0 gives all there is. */
  read(after: number): Promise<ChunksRead | StoreFault>;
  append(bytes: Uint8Array): Promise<Kept>;
  /**
   * Keeps the whole document, which holds every change up to `covers`. The snapshot before it stays with the changes that
   * came after, so that a damaged snapshot loses nothing; what is older than both goes.
   */
  compact(snapshot: Uint8Array, covers: number): Promise<Kept>;
  /** Calls back when somebody else may have added something; gives what ends it. */
  watch(heard: () => void): () => void;
  close(): Promise<void>;
}

/** An opened store, or why there is none. */
export type OpenedStore<Store extends ChunkStore = ChunkStore> =
  | { readonly ok: true; readonly store: Store }
  | {
      readonly ok: false;
      /** newer: a later program wrote it and it stays untouched. damaged: it is no store any more. */
      readonly reason: "newer" | "damaged" | "missing" | "unopenable";
      readonly detail: string;
    };

/** Version of what a store holds; a store of a greater one is left as it is. */
export const STORE_VERSION = 1;
