import {
  type Act,
  KeptKitchen,
  type LedgerRow,
  type Mended,
  parseBackup,
  type StoreFault,
  type Undoable,
  type Written,
} from "@halfloaf/keep";
import { openIndexedDbStore } from "@halfloaf/keep/browser";
import type { RowAsked } from "@halfloaf/keep/sync";
import { type Kitchen, type Tables, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import {
  type AcceptedMenu,
  type EditedKitchen,
  menuOn,
  type Pen,
  type RecordState,
  toKitchen,
} from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { giveTurn, rest } from "./rest.ts";
import { today, watchDay } from "./today.ts";

/** The kitchen as a screen sees it: one picture for each state of it. */
export interface KitchenView {
  readonly day: CivilDate;
  readonly edited: EditedKitchen;
  /** The kitchen with its stores and prices as they are on the day. */
  readonly kitchen: Kitchen;
  readonly state: RecordState;
  readonly tables: Tables;
  /** The accepted week that has the day in it. */
  readonly menu: AcceptedMenu | undefined;
}

/** Why a kitchen could not be opened. */
export type OpeningFault =
  | StoreFault
  | { readonly ok: false; readonly reason: "newer" | "damaged" | "missing" | "unopenable"; readonly detail: string };

/** Tells whether a row may be written here; `isOwn` whether this device wrote a row that is taken back. */
export type Guard = (row: RowAsked, isOwn: (id: string) => boolean) => boolean;

/** An open kitchen: what screens look at and write to. */
export class KitchenSession {
  /** Name of its database. */
  readonly id: string;
  readonly kept: KeptKitchen;
  #starter: Tables;
  readonly #hearers = new Set<() => void>();
  readonly #unwatch: () => void;
  #view: KitchenView | undefined;
  /** Id of the eater who writes from now on; undefined = not said. */
  by: string | undefined;
  #refused: StoreFault | undefined;
  #mended: Mended | undefined;
  #guard: Guard | undefined;
  #isForbidden = false;

  private constructor(id: string, kept: KeptKitchen, starter: Tables) {
    this.id = id;
    this.kept = kept;
    this.#starter = starter;
    kept.subscribe(() => this.#changed());
    this.#unwatch = watchDay(() => this.#changed());
    addEventListener("beforeunload", this.#hold);
  }

  /** Opens the kitchen of that database; with `expected`, one that is not there any more is told. */
  static async open(
    id: string,
    { starter, device, expected }: { starter: Tables | Promise<Tables>; device: string; expected: boolean },
  ): Promise<KitchenSession | OpeningFault> {
    const openChannel = (name: string) => new BroadcastChannel(name);
    const [tables, opened] = await Promise.all([starter, openIndexedDbStore(id, { indexedDB, openChannel }, expected)]);
    if (!opened.ok) return opened;
    const kept = await KeptKitchen.open(opened.store, { foods: tables.foods, device, rest });
    if ("ok" in kept) return kept;
    const session = new KitchenSession(id, kept, tables);
    if (kept.damaged().length > 0) await session.#mend();
    // Worked out before it is asked for, so that a screen has only itself to show.
    session.view;
    await giveTurn();
    return session;
  }

  /** What of the kitchen was damaged when it was opened and was mended; undefined where nothing was, or once that is read. */
  get mended(): Mended | undefined {
    return this.#mended;
  }

  /** Takes note that the damage was read. */
  readMended(): void {
    this.#mended = undefined;
    this.#changed();
  }

  /** The kitchen as it is; undefined while there is none in the record. */
  get view(): KitchenView | undefined {
    const day = today();
    if (this.#view?.day !== day) this.#view = this.#look(day);
    return this.#view;
  }

  /** Why the last change could not be kept; undefined while all are. */
  get refused(): StoreFault | undefined {
    return this.#refused;
  }

  /** True where the last act was not done, since this device may not do it in a shared kitchen. */
  get isForbidden(): boolean {
    return this.#isForbidden;
  }

  /** Takes note that this was read. */
  readForbidden(): void {
    this.#tellForbidden(false);
  }

  /** Sets which rows may be written here; until then all may. */
  guard(guard: Guard): void {
    this.#guard = guard;
  }

  /** True where such a row may be written here. */
  mayWrite(row: RowAsked): boolean {
    return this.#guard?.(row, (id) => this.kept.isOwn(id)) ?? true;
  }

  /** Sets the starter tables in the language in use. */
  speak(starter: Tables): void {
    if (starter === this.#starter) return;
    this.#starter = starter;
    this.#changed();
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Writes one act. What can't be kept is told by `refused` and kept in memory until it can; what may not be is not written. */
  async write(act: (pen: Pen) => readonly LedgerRow[]): Promise<Written> {
    const allowed = (pen: Pen): readonly LedgerRow[] => {
      const rows = act(pen);
      return this.#isAllowed(rows) ? rows : [];
    };
    return this.#hear(await this.kept.write(allowed, this.by));
  }

  async edit(change: (kitchen: EditedKitchen) => EditedKitchen): Promise<Written> {
    if (!this.#isAllowed([{ kind: "edited" }])) return { rows: [], kept: { ok: true, seq: 0 } };
    return this.#hear(await this.kept.edit((kitchen) => change(kitchen as EditedKitchen), this.by));
  }

  async undo(): Promise<void> {
    if (this.undoable().undo === undefined) return;
    const written = await this.kept.undo(this.by);
    if (written !== undefined) this.#hear(written);
  }

  async redo(): Promise<void> {
    if (this.undoable().redo === undefined) return;
    const written = await this.kept.redo(this.by);
    if (written !== undefined) this.#hear(written);
  }

  /** What this device could take back and do again, as far as it may. */
  undoable(): Undoable {
    const { undo, redo } = this.kept.undoable();
    const isAllowed = (act: Act | undefined): act is Act =>
      act !== undefined && reversalOf(act).every((row) => this.mayWrite(row));
    return { ...(isAllowed(undo) ? { undo } : {}), ...(isAllowed(redo) ? { redo } : {}) };
  }

  /** Brings in a backup, or into a kitchen that has nothing yet a kitchen's file; one of a kitchen that began apart is left. */
  async bringIn(content: unknown): Promise<"brought" | "unreadable" | "other" | "forbidden"> {
    if (!this.#isAllowed([{ kind: "edited" }])) return "forbidden";
    const rows = parseBackup(content, this.#starter.dishes);
    if (!rows.ok) return "unreadable";
    if (this.kept.isOther(rows.value)) return "other";
    const { kept } = await this.kept.merge(rows.value);
    this.#hear({ rows: [], kept });
    return "brought";
  }

  /** Tries again to bring to disk what could not be kept. */
  async retry(): Promise<void> {
    this.#hear({ rows: [], kept: await this.kept.retry() });
  }

  close(): Promise<unknown> {
    this.#unwatch();
    removeEventListener("beforeunload", this.#hold);
    return this.kept.close();
  }

  /** Has the browser ask before a page is left that holds what is not on disk yet. */
  readonly #hold = (leaving: Event): void => {
    if (this.kept.waiting > 0) leaving.preventDefault();
  };

  async #mend(): Promise<void> {
    const mended = await this.kept.mend();
    if (mended.ok) this.#mended = mended;
    else this.#hear({ rows: [], kept: mended });
  }

  #isAllowed(rows: readonly RowAsked[]): boolean {
    const isAllowed = rows.every((row) => this.mayWrite(row));
    this.#tellForbidden(!isAllowed);
    return isAllowed;
  }

  #tellForbidden(isForbidden: boolean): void {
    if (isForbidden === this.#isForbidden) return;
    this.#isForbidden = isForbidden;
    this.#changed();
  }

  #hear(written: Written): Written {
    const refused = written.kept.ok ? undefined : written.kept;
    if (refused !== this.#refused) {
      this.#refused = refused;
      this.#changed();
    }
    return written;
  }

  #changed(): void {
    this.#view = undefined;
    for (const hearer of this.#hearers) hearer();
  }

  #look(day: CivilDate): KitchenView | undefined {
    const read = this.kept.kitchen();
    if (!read.ok) return undefined;
    const edited = read.value.kitchen;
    const { state } = this.kept.events;
    const tables = withOwnFoodsAndDishes(this.#starter, edited);
    const kitchen = toKitchen(edited, state, tables.foods, day);
    return { day, edited, kitchen, state, tables, menu: menuOn(state, day) };
  }
}

/** The kinds of rows that take an act back: an edit is edited again, all else is withdrawn. */
function reversalOf(act: Act): RowAsked[] {
  return act.rows.map(({ kind, id }) => (kind === "edited" ? { kind } : { kind: "withdrawn", events: [id] }));
}
