export type { Act, LedgerRow, Undoable } from "./acts.ts";
export { BACKUP_VERSION, parseBackup, toBackup } from "./backup.ts";
export type {
  Chunk,
  ChunkStore,
  ChunksRead,
  DamagedChunk,
  Kept,
  OpenedStore,
  StoreFault,
} from "./chunks/ChunkStore.ts";
export { KeptKitchen, type Mended, type OpeningOptions, type StrangeRow, type Written } from "./KeptKitchen.ts";
