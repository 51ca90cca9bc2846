import type { FoodTable } from "../../food/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { compareEvents, compareWritten } from "./compareEvents.ts";
import type { EventOf, RecordEvent } from "./event.ts";
import { deviceOf, type EventId, numberOf } from "./eventId.ts";
import { RecordDraft, type SavedDraft } from "./RecordDraft.ts";
import type { EventFault, RecordState } from "./recordState.ts";
import { resolveWithdrawals, type Withdrawals } from "./resolveWithdrawals.ts";
import { settleTwins } from "./settleTwins.ts";
import type { Stamp } from "./stamp.ts";

/** Events between two saved drafts: a late event costs the work of at most so many besides those after it. */
const SAVE_EVERY = 2000;

/**
 * The events of a kitchen in their one order, and the state that follows from them. Events may be added in any order and
 * more than once. One that comes last in order is applied at once; for one that belongs earlier, the events since the last
 * draft saved before it are applied again.
 */
export class RecordLedger {
  private readonly foods: FoodTable;
  private readonly draft: RecordDraft;
  private readonly byId = new Map<EventId, RecordEvent>();
  private readonly inOrder: RecordEvent[] = [];
  /** Drafts as they were before the events at 0, 2000, 4000, ... of `inOrder`. */
  private readonly saved: SavedDraft[] = [];
  private readonly withdrawals = new Map<EventId, EventOf<"withdrawn">>();
  /** Ids that withdrawals name, known or not. */
  private readonly named = new Set<EventId>();
  private readonly forked = new Set<EventId>();
  private readonly numbers = new Map<string, number>();
  /** Ids whose numbers are not in `numbers` yet: they are asked for far more seldom than events come. */
  private readonly unread: EventId[] = [];
  private latest: RecordEvent | undefined;
  private resolved: Withdrawals = { withdrawn: new Set(), faults: [] };
  private told: RecordState | undefined;

  /** Keeping times come from the foods; the events may follow later. */
  constructor(foods: FoodTable, events: Iterable<RecordEvent> = []) {
    this.foods = foods;
    this.draft = new RecordDraft(foods);
    this.add(events);
  }

  /** The events in the order in which they count, withdrawn ones too. A live list: copy what must not change. */
  get events(): readonly RecordEvent[] {
    return this.inOrder;
  }

  /** The latest stamp among the events; undefined without events. The next event must be later. */
  get latestStamp(): Stamp | undefined {
    return this.latest;
  }

  /** The highest number that a device gave an event, 0 where it wrote none. */
  lastNumberOf(device: string): number {
    for (const id of this.unread.splice(0)) {
      const of = deviceOf(id);
      this.numbers.set(of, Math.max(this.numbers.get(of) ?? 0, numberOf(id)));
    }
    return this.numbers.get(device) ?? 0;
  }

  /** The event of an id; undefined where there is none. */
  find(id: EventId): RecordEvent | undefined {
    return this.byId.get(id);
  }

  /** Adds events in any order; those that are there already change nothing. Gives how many were new. */
  add(events: Iterable<RecordEvent>): number {
    const fresh: RecordEvent[] = [];
    const replaced = new Set<EventId>();
    for (const event of events) {
      const twin = this.byId.get(event.id);
      const settled = twin === undefined ? event : this.settle(twin, event);
      if (settled === undefined) continue;
      if (twin !== undefined) replaced.add(twin.id);
      else fresh.push(event);
      this.register(settled);
    }
    if (replaced.size > 0) this.startAnew();
    else if (fresh.length > 0) this.insert(fresh.sort(compareEvents));
    return fresh.length;
  }

  /** The state that follows from all events. A copy, made once after each change. */
  get state(): RecordState {
    this.told ??= this.tell(this.draft);
    return this.told;
  }

  /** The state at the end of a day, as far as it is known now: without what happened on later days. */
  stateOn(day: CivilDate): RecordState {
    const draft = new RecordDraft(this.foods);
    for (const event of this.inOrder) {
      if (event.on > day) break;
      if (!this.resolved.withdrawn.has(event.id)) draft.apply(event);
    }
    return this.tell(draft);
  }

  private tell(draft: RecordDraft): RecordState {
    const { faults, ...state } = draft.snapshot();
    const forks = [...this.forked].sort().map(
      (id): EventFault => ({
        event: id,
        issue: { code: "event-forked", path: ["id"], expected: "one event of this id", received: id },
      }),
    );
    const all = [...faults, ...this.resolved.faults, ...forks];
    return { ...state, withdrawn: new Set(this.resolved.withdrawn), faults: all };
  }

  /** The event that takes the place of its twin, undefined where the twin stays. */
  private settle(twin: RecordEvent, event: RecordEvent): RecordEvent | undefined {
    const winner = settleTwins(twin, event);
    if (winner !== "same") this.forked.add(event.id);
    this.told = undefined;
    return winner === "second" ? event : undefined;
  }

  private register(event: RecordEvent): void {
    const { id } = event;
    this.byId.set(id, event);
    this.withdrawals.delete(id);
    if (event.kind === "withdrawn") {
      this.withdrawals.set(id, event);
      for (const each of event.events) this.named.add(each);
    }
    this.unread.push(id);
    if (this.latest === undefined || compareWritten(this.latest, event) < 0) this.latest = event;
  }

  private startAnew(): void {
    this.draft.restore();
    this.inOrder.length = 0;
    this.saved.length = 0;
    this.resolved = { withdrawn: new Set(), faults: [] };
    this.insert([...this.byId.values()].sort(compareEvents));
  }

  private insert(fresh: readonly RecordEvent[]): void {
    this.told = undefined;
    const from = Math.min(this.placeOf(fresh[0] as RecordEvent), this.resolve(fresh));
    const later = this.inOrder.splice(this.goBack(from));
    for (const event of later.length === 0 ? fresh : merge(later, fresh)) this.append(event);
  }

  /** Goes back to the last draft saved before a place; gives the place where that was. */
  private goBack(place: number): number {
    if (place === this.inOrder.length) return place;
    const at = Math.floor(place / SAVE_EVERY);
    this.draft.restore(this.saved[at]);
    this.saved.length = at + 1;
    return at * SAVE_EVERY;
  }

  private append(event: RecordEvent): void {
    if (this.inOrder.length === SAVE_EVERY * this.saved.length) this.saved.push(this.draft.save());
    this.inOrder.push(event);
    if (!this.resolved.withdrawn.has(event.id)) this.draft.apply(event);
  }

  /** Judges withdrawals anew where they may have changed; the place of the first event for which they did. */
  private resolve(fresh: readonly RecordEvent[]): number {
    const isTouched = fresh.some(({ id, kind }) => kind === "withdrawn" || this.named.has(id));
    if (!isTouched) return this.inOrder.length;
    const before = this.resolved.withdrawn;
    this.resolved = resolveWithdrawals(this.withdrawals.values(), this.byId);
    const now = this.resolved.withdrawn;
    const changed = [...before, ...now].filter((id) => before.has(id) !== now.has(id));
    const places = changed.map((id) => this.placeOf(this.byId.get(id) as RecordEvent));
    return places.reduce((least, place) => Math.min(least, place), this.inOrder.length);
  }

  /** How many events of the list come before this one. */
  private placeOf(event: RecordEvent): number {
    let [low, high] = [0, this.inOrder.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (compareEvents(this.inOrder[middle] as RecordEvent, event) < 0) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Two lists in order as one. */
function* merge(a: readonly RecordEvent[], b: readonly RecordEvent[]): Generator<RecordEvent> {
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    const [first, second] = [a[i] as RecordEvent, b[j] as RecordEvent];
    if (compareEvents(first, second) < 0) {
      i++;
      yield first;
    } else {
      j++;
      yield second;
    }
  }
  yield* a.slice(i);
  yield* b.slice(j);
}
