import { type FoodTable, withOwnFoods } from "halfloaf/food";
import {
  compareEvents,
  compareStamps,
  compareWritten,
  deviceOf,
  type Edit,
  type EditBody,
  type EditedKitchen,
  EditLog,
  type EventBody,
  editsBetween,
  type KitchenAsEdited,
  numberOf,
  Pen,
  parseEdit,
  parseEvent,
  type RecordEvent,
  RecordLedger,
  type Stamp,
  settleTwins,
  toCanonicalText,
} from "halfloaf/kitchen/record";
import type { Issue, Parsed } from "halfloaf/quantity";
import * as Y from "yjs";
import { type Act, ActLog, findUndoable, type LedgerRow, type Undoable } from "./acts.ts";
import type { ChunkStore, DamagedChunk, Kept, StoreFault } from "./chunks/ChunkStore.ts";
import { reverseAct } from "./reverseAct.ts";

/** A row that this program does not understand, and why; it stays in the document as it is. */
export interface StrangeRow {
  readonly row: unknown;
  readonly issues: readonly Issue[];
}

/** What an act came to: its rows, and whether they are on disk. What is not is there all the same and is tried again. */
export interface Written {
  readonly rows: readonly LedgerRow[];
  readonly kept: Kept;
}

/** What had to be mended of a store whose pieces were damaged. */
export interface Mended {
  readonly ok: true;
  /** Pieces that could not be read. */
  readonly damaged: number;
  /** Rows that are there now. */
  readonly rows: number;
  /** Those of them that were brought from elsewhere. */
  readonly brought: number;
}

export interface OpeningOptions {
  /** The foods there are beside those of the kitchen's own. */
  readonly foods: FoodTable;
  /** What this device is called, in words of an id. */
  readonly device: string;
  /** Milliseconds since 1970 by the device's clock. */
  readonly now?: () => number;
  /** A number from 0 to below 1, for the id of this opening. */
  readonly chance?: () => number;
  /** Waited for between the steps of opening, so that whoever shares the thread gets a turn; absent = all is done at once. */
  readonly rest?: () => Promise<void>;
}

/** So many changes are kept one by one before the whole document is. */
const CHANGES_TO_COMPACT = 200;

/** So many rows are read, or taken in, in one step of opening. */
const ROWS_OF_STEP = 50;

/** Rows that this program understands. */
interface ReadRows {
  readonly events: RecordEvent[];
  readonly edits: Edit[];
}

/** A change that is in the document and not yet on disk. */
interface Waiting {
  readonly bytes: Uint8Array;
  readonly told: ((kept: Kept) => void)[];
}

/**
 * A kitchen as a shared document: rows that are added and never changed, on disk before they are told as kept. Several openings of
 * one store, and documents of other devices, bring in each other's rows; what follows is the same for all.
 */
export class KeptKitchen {
  readonly document: Y.Doc;
  readonly #store: ChunkStore;
  readonly #foods: FoodTable;
  readonly #device: string;
  readonly #writer: string;
  readonly #now: () => number;
  readonly #rows: Y.Array<unknown>;
  readonly #strange = new Map<string, StrangeRow>();
  readonly #damaged: DamagedChunk[] = [];
  readonly #hearers = new Set<() => void>();
  readonly #waiting: Waiting[] = [];
  #edits = new EditLog();
  #events: RecordLedger;
  /** Own foods that `#events` reckons with; whether any row ever named one. */
  #foodsText = toCanonicalText([]);
  #hasOwnFoods = false;
  #isWriting = false;
  #upTo = 0;
  #sinceSnapshot = 0;
  #number = 0;
  #latest: Stamp | undefined;
  /** The acts as last asked for; undefined where rows have come since that belong among them. */
  #acts: ActLog | undefined;
  #unwatch: () => void = () => {};

  private constructor(store: ChunkStore, { foods, device, now, chance }: OpeningOptions) {
    this.#store = store;
    this.#device = device;
    this.#now = now ?? (() => Date.now());
    this.#writer = `${device}-${Math.floor((chance ?? Math.random)() * 36 ** 8).toString(36)}`;
    this.#foods = foods;
    this.#events = new RecordLedger(foods);
    this.document = new Y.Doc();
    this.#rows = this.document.getArray("rows");
  }

  /** Opens the kitchen that a store holds; a fresh store holds none, and `edit` makes it. */
  static async open(store: ChunkStore, options: OpeningOptions): Promise<KeptKitchen | StoreFault> {
    const { rest = async () => {} } = options;
    const kept = new KeptKitchen(store, options);
    const fault = await kept.catchUp();
    if (fault !== undefined) return fault;
    await kept.#takeFirst(rest);
    kept.#rows.observe(({ changes }) => {
      if (changes.deleted.size > 0) kept.#takeAnew();
      else kept.#takeIn(changes.delta.flatMap(({ insert }) => insert ?? []) as unknown[]);
    });
    // Not before all is read: a document that somebody listens to writes down anew whatever it takes in.
    kept.document.on("update", (bytes: Uint8Array, origin: unknown) => {
      if (origin !== store) kept.#enqueue(bytes);
    });
    kept.#unwatch = store.watch(() => void kept.catchUp());
    return kept;
  }

  /** Reads what other openings of the store have added. */
  async catchUp(): Promise<StoreFault | undefined> {
    const read = await this.#store.read(this.#upTo);
    if ("ok" in read) return read;
    const { chunks, damaged, upTo } = read;
    this.#damaged.push(...damaged);
    this.#upTo = Math.max(this.#upTo, upTo);
    this.#sinceSnapshot += chunks.filter(({ kind }) => kind === "change").length;
    if (chunks.length > 0)
      this.document.transact(() => {
        for (const { bytes } of chunks) Y.applyUpdate(this.document, bytes, this.#store);
      }, this.#store);
    return undefined;
  }

  /** What happened, with the keeping times of the kitchen's own foods as well; another one once those change. */
  get events(): RecordLedger {
    return this.#events;
  }

  /** The kitchen as edited, or all that is wrong with it; a fresh store has nothing of it. */
  kitchen(): Parsed<KitchenAsEdited> {
    return this.edits.kitchen();
  }

  /** What was set by hand; another one once rows were dropped. */
  get edits(): EditLog {
    return this.#edits;
  }

  /** Rows of a newer program, and rows that are none: they stay where they are and count for nothing here. */
  strange(): readonly StrangeRow[] {
    return [...this.#strange.values()];
  }

  /** Pieces of the store whose bytes are not those that were written. */
  damaged(): readonly DamagedChunk[] {
    return this.#damaged;
  }

  /** True while rows are missing that others follow on, as after damage, until another device brings them. */
  isIncomplete(): boolean {
    return this.document.store.pendingStructs !== null;
  }

  /** Rows that are here and can't take their place, since what they follow on is missing. */
  pendingRows(): unknown[] {
    const pending = this.document.store.pendingStructs;
    if (pending === null) return [];
    return Y.decodeUpdateV2(pending.update).structs.flatMap((struct) =>
      struct instanceof Y.Item && struct.content instanceof Y.ContentAny ? struct.content.arr : [],
    );
  }

  /** Who writes by this opening, as its rows' ids say. */
  get writer(): string {
    return this.#writer;
  }

  /** True where this device wrote the row of that id, in this opening or an earlier one. */
  isOwn(id: string): boolean {
    return this.#isOurs(deviceOf(id));
  }

  /** Greatest `seq` of the store whose content is taken in. */
  get upTo(): number {
    return this.#upTo;
  }

  /** How many changes are not on disk yet. */
  get waiting(): number {
    return this.#waiting.length;
  }

  /** Writes what happened as one act, in the order given. `by` is the id of the eater who did it. */
  async add(bodies: readonly EventBody[], by?: string): Promise<Written> {
    return this.write((pen) => bodies.map((body) => pen.write(body)), by);
  }

  /** Writes one act: `act` is given the pen to write its rows with and gives them back. */
  async write(act: (pen: Pen) => readonly LedgerRow[], by?: string): Promise<Written> {
    const writer = { device: this.#writer, nowMs: this.#now(), ...(by === undefined ? {} : { by }) };
    const pen = new Pen(writer, this.#number, this.#latest);
    const rows = act(pen);
    return { rows, kept: await this.#push(rows) };
  }

  /** Sets the kitchen to another state as one act: only what differs is written. */
  async edit(change: (kitchen: EditedKitchen | undefined) => EditedKitchen, by?: string): Promise<Written> {
    const now = this.kitchen();
    const before = now.ok ? now.value.kitchen : undefined;
    return this.#set(editsBetween(before, change(before)), by);
  }

  /** What `undo` and `redo` would take back: acts of this device alone. */
  undoable(): Undoable {
    return findUndoable(this.history(), (writer) => this.#isOurs(writer));
  }

  /** Takes back the last act of this device; undefined where there is none. What others have set since stays. */
  async undo(by?: string): Promise<Written | undefined> {
    const { undo } = this.undoable();
    return undo && this.#set(reverseAct(undo, this.edits), by);
  }

  /** Does again what was undone last; undefined where nothing was, or something was done since. */
  async redo(by?: string): Promise<Written | undefined> {
    const { redo } = this.undoable();
    return redo && this.#set(reverseAct(redo, this.edits), by);
  }

  /** All acts in the order in which they were written. */
  history(): readonly Act[] {
    this.#acts ??= new ActLog(this.rows());
    return this.#acts.acts;
  }

  /** All rows that this program understands, in the order in which they were written. */
  rows(): LedgerRow[] {
    return [...this.events.events, ...this.edits.all()].sort(compareWritten);
  }

  /** Brings in rows of another record, such as a backup; those that are here already change nothing. */
  async merge(rows: readonly unknown[]): Promise<{ readonly added: number; readonly kept: Kept }> {
    const fresh = rows.filter((row) => !this.#isHere(row));
    return { added: fresh.length, kept: await this.#push(fresh) };
  }

  /**
   * Takes rows out of this device's copy for good, as if they had never been written: such as a server refused, so that
   * nobody else has them. Their numbers are not given again.
   */
  async drop(ids: readonly string[]): Promise<Kept> {
    const gone = new Set(ids);
    const places = this.#rows.toArray().flatMap((row, at) => (gone.has(idOf(row) ?? "") ? [at] : []));
    this.document.transact(() => {
      for (const at of places.reverse()) this.#rows.delete(at);
    });
    return this.retry();
  }

  /**
   * True where rows are of another kitchen: this one has rows, and none of them. All devices of a kitchen have its first rows;
   * two kitchens that began apart, be it from one file, would each count its stores.
   */
  isOther(rows: readonly unknown[]): boolean {
    return rows.length > 0 && this.#rows.length > 0 && !rows.some((row) => this.#isHere(row));
  }

  /** All rows as they stand in the document, those of newer programs too: what a backup holds. */
  rawRows(): unknown[] {
    return this.#rows.toArray();
  }

  /** Calls back after every change; gives what ends it. */
  subscribe(hearer: () => void): () => void {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  }

  /** Tries again to bring to disk what could not be kept, and tells how far that went. */
  async retry(): Promise<Kept> {
    return new Promise((resolve) => {
      const last = this.#waiting.at(-1);
      if (last === undefined) resolve({ ok: true, seq: this.#upTo });
      else {
        last.told.push(resolve);
        void this.#drain();
      }
    });
  }

  /** Keeps the whole document as one piece, so that the next opening is quick. */
  async compact(): Promise<Kept> {
    const fault = await this.catchUp();
    if (fault !== undefined) return fault;
    const kept = await this.#store.compact(Y.encodeStateAsUpdate(this.document), this.#upTo);
    if (kept.ok) this.#sinceSnapshot = 0;
    return kept;
  }

  /**
   * Makes the store sound again after damage: rows that have lost their place are written anew, and what `more` has besides,
   * such as the rows of a backup. Damaged pieces leave the store; `damaged` tells of them until it is opened again.
   */
  async mend(more: readonly unknown[] = []): Promise<Mended | StoreFault> {
    await this.merge(this.pendingRows());
    const { added } = await this.merge(more);
    // Twice, so that the damaged pieces are older than both snapshots of the store and go.
    for (const _ of [1, 2]) {
      const kept = await this.compact();
      if (!kept.ok) return kept;
    }
    return { ok: true, damaged: this.#damaged.length, rows: this.#rows.length, brought: added };
  }

  /** Brings everything to disk and closes the store; the fault where something could not be kept. */
  async close(): Promise<Kept> {
    this.#unwatch();
    const kept = await this.retry();
    if (kept.ok && this.#sinceSnapshot >= CHANGES_TO_COMPACT) await this.compact();
    await this.#store.close();
    this.document.destroy();
    return kept;
  }

  #set(bodies: readonly (EventBody | EditBody)[], by: string | undefined): Promise<Written> {
    return this.write((pen) => bodies.map((body) => pen.write(body)), by);
  }

  #isOurs(writer: string): boolean {
    return writer.slice(0, writer.lastIndexOf("-")) === this.#device;
  }

  async #push(rows: readonly unknown[]): Promise<Kept> {
    if (rows.length === 0) return { ok: true, seq: this.#upTo };
    this.#rows.push([...rows]);
    return this.retry();
  }

  /** Reckons all anew after rows have gone. */
  #takeAnew(): void {
    this.#strange.clear();
    this.#edits = new EditLog();
    this.#events = new RecordLedger(this.#foods);
    this.#foodsText = toCanonicalText([]);
    this.#hasOwnFoods = false;
    this.#takeIn(this.#rows.toArray());
  }

  /** Takes in what an opened store holds, a step at a time; nobody hears of it yet. */
  async #takeFirst(rest: () => Promise<void>): Promise<void> {
    const all = this.#rows.toArray();
    const read: ReadRows = { events: [], edits: [] };
    for (let at = 0; at < all.length; at += ROWS_OF_STEP) {
      await rest();
      this.#read(all.slice(at, at + ROWS_OF_STEP), read);
    }
    this.#takeEdits(read.edits);
    await rest();
    // In the order in which they count none is applied twice.
    const events = read.events.sort(compareEvents);
    for (let at = 0; at < events.length; at += ROWS_OF_STEP) {
      this.#takeEvents(events.slice(at, at + ROWS_OF_STEP));
      await rest();
    }
    // What comes of the edits is asked for as soon as the kitchen is there.
    this.kitchen();
    await rest();
  }

  #takeIn(rows: readonly unknown[]): void {
    const read: ReadRows = { events: [], edits: [] };
    this.#read(rows, read);
    const { events, edits } = read;
    this.#addActs([...events, ...edits].sort(compareWritten));
    this.#takeEdits(edits);
    this.#takeEvents(events);
    for (const hearer of this.#hearers) hearer();
  }

  /** Adds to `read` the rows that are understood; the others are strange. */
  #read(rows: readonly unknown[], { events, edits }: ReadRows): void {
    for (const row of rows) {
      const isEdit = typeof row === "object" && row !== null && "kind" in row && row.kind === "edited";
      const read = isEdit ? parseEdit(row) : parseEvent(row);
      if (!read.ok) this.#strange.set(toCanonicalText(row), { row, issues: read.issues });
      else if (read.value.kind === "edited") edits.push(read.value);
      else events.push(read.value);
    }
  }

  #takeEdits(edits: readonly Edit[]): void {
    this.edits.add(edits);
    this.#hasOwnFoods ||= edits.some(({ thing }) => thing.startsWith("foods/"));
    if (this.#hasOwnFoods && edits.length > 0) this.#takeFoods();
    this.#note(edits);
  }

  #takeEvents(events: readonly RecordEvent[]): void {
    this.events.add(events);
    this.#note(events);
  }

  /** Notes which stamp is the latest and which number this opening gave last. */
  #note(rows: readonly LedgerRow[]): void {
    for (const row of rows) {
      if (this.#latest === undefined || compareStamps(this.#latest, row) < 0) this.#latest = row;
      if (deviceOf(row.id) === this.#writer) this.#number = Math.max(this.#number, numberOf(row.id));
    }
  }

  #addActs(written: readonly LedgerRow[]): void {
    const [first, latest] = [written[0], this.#latest];
    if (first === undefined || this.#acts === undefined) return;
    const isKnown = written.some(({ id }) => this.events.find(id) ?? this.edits.find(id));
    const isLast = latest !== undefined && compareStamps(latest, first) < 0;
    if (isLast && !isKnown && new Set(written.map(({ id }) => id)).size === written.length) this.#acts.add(written);
    else this.#acts = undefined;
  }

  /** Reckons all that happened anew where the kitchen's own foods are others than before. */
  #takeFoods(): void {
    const read = this.kitchen();
    const text = read.ok ? toCanonicalText(read.value.kitchen.foods) : this.#foodsText;
    if (!read.ok || text === this.#foodsText) return;
    this.#foodsText = text;
    this.#events = new RecordLedger(withOwnFoods(this.#foods, read.value.kitchen), this.#events.events);
  }

  #isHere(row: unknown): boolean {
    if (this.#strange.has(toCanonicalText(row))) return true;
    const id = idOf(row);
    if (id === undefined) return false;
    const known = this.events.find(id) ?? this.edits.find(id);
    // A twin that differs is brought in, so that every device settles it alike.
    return known !== undefined && settleTwins(known, row) === "same";
  }

  #enqueue(bytes: Uint8Array): void {
    this.#waiting.push({ bytes, told: [] });
    void this.#drain();
  }

  /** Brings waiting changes to disk one after the other; at the first that can't be kept all are told so. */
  async #drain(): Promise<void> {
    if (this.#isWriting) return;
    this.#isWriting = true;
    for (let next = this.#waiting[0]; next !== undefined; next = this.#waiting[0]) {
      const kept = await this.#store.append(next.bytes);
      if (!kept.ok) {
        for (const { told } of this.#waiting) for (const tell of told.splice(0)) tell(kept);
        break;
      }
      this.#sinceSnapshot++;
      if (kept.seq === this.#upTo + 1) this.#upTo = kept.seq;
      this.#waiting.shift();
      for (const tell of next.told) tell(kept);
    }
    this.#isWriting = false;
  }
}

function idOf(row: unknown): string | undefined {
  return typeof row === "object" && row !== null && "id" in row ? String(row.id) : undefined;
}
