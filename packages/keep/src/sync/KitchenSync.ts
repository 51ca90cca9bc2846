import { deviceOf, numberOf } from "halfloaf/kitchen/record";
import * as v from "valibot";
import type * as Y from "yjs";
import type { KeptKitchen } from "../KeptKitchen.ts";
import { type Farewell, parseMessage, type Refusal, ServerMessage, SYNC_PATH, SYNC_PROTOCOL } from "./messages.ts";
import { isInRuns } from "./numberRuns.ts";
import type { Membership, Socket, SyncMark, SyncMemory, SyncState, SyncView } from "./syncView.ts";
import { nameRow, UnsentRows } from "./UnsentRows.ts";

export interface SyncOptions {
  /** Opens a WebSocket: `(url) => new WebSocket(url)`. */
  readonly openSocket: (url: string) => Socket;
  readonly memory: SyncMemory;
  /** A number from 0 to below 1, so that many devices do not all come back at once. */
  readonly chance?: () => number;
}

/** Waits between tries, in milliseconds: twice as long each time, up to the most. */
const WAIT_MS = { first: 400, most: 30_000, trouble: 2_000 };

/** Pushes follow each other no faster than this, so that quick acts go together; and how long an answer may take. */
const APART_MS = 30;
const ANSWER_MS = 20_000;

/** After these another try is welcome. */
const PASSING: readonly Farewell[] = ["restart", "full", "slow", "flooding"];

type Said<Say extends ServerMessage["say"]> = Extract<ServerMessage, { say: Say }>;

/**
 * Joins a kept kitchen to the server that it is shared on. What the kitchen needs is here, always; the server hands rows on.
 * A row counts as sent once the server has told that it is on disk; what it refuses comes back with a reason and stays here.
 * Only one opening of a store should have this running: others see through the store what it brings.
 */
export class KitchenSync {
  readonly #kept: KeptKitchen;
  readonly #membership: Membership;
  readonly #options: SyncOptions;
  readonly #unsent = new UnsentRows();
  /** How many of the rows here the server was not known to have when this was started; counted one by one once it is met. */
  #owed = 0;
  readonly #returned = new Map<string, Refusal>();
  /** Ids of rows that the server has. */
  readonly #known = new Set<string>();
  readonly #hearers = new Set<() => void>();
  readonly #rows: Y.Array<unknown>;
  #view: SyncView = { state: { kind: "apart", tries: 0 }, unsent: 0, returned: [], here: [], hasTrouble: false };
  #mark: SyncMark | undefined;
  #socket: Socket | undefined;
  /** From where on the log was read this time, and how far it goes. */
  #readFrom = 0;
  #goal = 0;
  #messageChars = 0;
  #place: { readonly by?: string; readonly at?: string } | undefined;
  #inFlight: { readonly ref: number; readonly ids: readonly string[] } | undefined;
  #ref = 0;
  #tries = 0;
  #isRunning = false;
  /** True until this device has met the kitchen once: only then can it turn out to hold another one. */
  #isFirstTime = true;
  #hasCompared = false;
  #work: Promise<void> = Promise.resolve();
  #tryTimer: ReturnType<typeof setTimeout> | undefined;
  #sendTimer: ReturnType<typeof setTimeout> | undefined;
  #answerTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(kept: KeptKitchen, membership: Membership, options: SyncOptions) {
    this.#kept = kept;
    this.#membership = membership;
    this.#options = options;
    this.#rows = kept.document.getArray("rows");
  }

  /** How things stand; another object whenever that has changed. */
  get view(): SyncView {
    return this.#view;
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Connects, and goes on doing so until it is stopped. */
  start(): void {
    if (this.#isRunning) return;
    this.#isRunning = true;
    this.#rows.observe(this.#takeLocal);
    // What is damaged here may lack rows that were read: they are read anew.
    const isSound = this.#kept.damaged().length === 0 && !this.#kept.isIncomplete();
    const mark = this.#options.memory.read();
    this.#isFirstTime = mark === undefined;
    this.#mark = isSound ? mark : undefined;
    // The log that was read is all here: what is here beyond it was not sent, as far as anybody knows.
    this.#owed = this.#mark === undefined ? 0 : Math.max(0, this.#namesHere().size - this.#mark.upTo);
    this.#connect();
  }

  stop(): void {
    if (!this.#isRunning) return;
    this.#isRunning = false;
    this.#rows.unobserve(this.#takeLocal);
    for (const timer of [this.#tryTimer, this.#sendTimer, this.#answerTimer]) clearTimeout(timer);
    this.#hangUp();
    this.#show({ state: { kind: "apart", tries: 0 }, here: [] });
  }

  /** Tries at once where it is waiting, as when the network came back. */
  tryNow(): void {
    if (!this.#isRunning || this.#socket !== undefined) return;
    clearTimeout(this.#tryTimer);
    this.#connect();
  }

  /** Says who is at this device and on which screen; words of an id. */
  sayPlace(place: { readonly by?: string; readonly at?: string }): void {
    this.#place = place;
    if (this.#view.state.kind === "together") this.#say({ say: "here", ...place });
  }

  /** Waits until everything here is there and everything there is here, or the server refused the device. */
  settled(): Promise<SyncView> {
    const isSettled = () =>
      this.#view.state.kind === "refused" || (this.#view.state.kind === "together" && this.#view.unsent === 0);
    return new Promise((resolve) => {
      if (isSettled()) return resolve(this.#view);
      const end = this.subscribe(() => {
        if (!isSettled()) return;
        end();
        resolve(this.#view);
      });
    });
  }

  #connect(): void {
    // While tries fail one after the other, nothing flickers: it is apart until a server answers.
    if (this.#tries === 0) this.#show({ state: { kind: "joining" } });
    this.#hasCompared = false;
    const socket = this.#options.openSocket(this.#membership.server.replace(/^http/, "ws") + SYNC_PATH);
    this.#socket = socket;
    const isOurs = () => this.#socket === socket;
    socket.onopen = () => {
      if (!isOurs()) return;
      this.#show({ state: { kind: "joining" } });
      this.#greet();
    };
    socket.onmessage = ({ data }) => {
      if (isOurs()) this.#hear(String(data), isOurs);
    };
    // Not before all is taken that was said until then: a farewell says why.
    socket.onclose = () => {
      this.#afterwards(isOurs, () => this.#comeApart());
    };
    socket.onerror = () => {};
  }

  #greet(): void {
    const { kitchen, credential } = this.#membership;
    const { log, upTo: after } = this.#mark ?? { log: undefined, upTo: 0 };
    const writer = this.#kept.writer;
    const hello = { say: "hello", protocol: SYNC_PROTOCOL, kitchen, credential, after, writer };
    this.#say(log === undefined ? hello : { ...hello, log });
  }

  /** Messages are taken one after the other: rows must be on disk before it is remembered that they were read. */
  #hear(text: string, isOurs: () => boolean): void {
    const read = parseMessage(ServerMessage, text);
    if (!read.ok) this.#comeApart();
    else this.#afterwards(isOurs, () => this.#take(read.value));
  }

  #afterwards(isOurs: () => boolean, act: () => Promise<void> | void): void {
    this.#work = this.#work.then(async () => {
      if (isOurs()) await act();
    });
  }

  async #take(message: ServerMessage): Promise<void> {
    if (message.say === "welcome") return this.#enter(message);
    if (message.say === "rows") return this.#takeRows(message);
    if (message.say === "answer") return this.#takeAnswer(message);
    if (message.say === "which") return this.#compare(message.numbers);
    if (message.say === "here") return this.#show({ here: message.devices });
    if (message.say === "bye") return this.#takeFarewell(message.reason);
    this.#inFlight = undefined;
    clearTimeout(this.#answerTimer);
    this.#show({ hasTrouble: true });
    this.#sendSoon(WAIT_MS.trouble);
  }

  #enter({ log, upTo, role, messageBytes }: Said<"welcome">): Promise<void> {
    const isAnother = this.#mark === undefined || this.#mark.log !== log || this.#mark.upTo > upTo;
    if (isAnother) this.#mark = { log, upTo: 0 };
    this.#readFrom = this.#mark?.upTo ?? 0;
    this.#goal = upTo;
    // A character takes up to three bytes.
    this.#messageChars = Math.floor(messageBytes / 3) - 1_000;
    this.#known.clear();
    this.#unsent.clear();
    this.#returned.clear();
    this.#show({ role });
    return this.#goOn();
  }

  async #takeRows({ rows, upTo }: Said<"rows">): Promise<void> {
    for (const row of rows) {
      const named = nameRow(row);
      if (named !== undefined) this.#known.add(named.id);
    }
    const fault = await this.#kept.catchUp();
    if (this.#isFirstTime && this.#mark?.upTo === 0 && this.#kept.isOther(rows)) return this.#refuse("other-kitchen");
    const { kept } = await this.#kept.merge(rows);
    const mark = { log: this.#mark?.log ?? "", upTo };
    this.#mark = mark;
    if (kept.ok && fault === undefined && this.#kept.waiting === 0) this.#options.memory.write(mark);
    await this.#goOn();
  }

  /** Once everything is read, what is here is compared with what is there, and both are together. */
  async #goOn(): Promise<void> {
    if (this.#hasCompared || (this.#mark?.upTo ?? 0) < this.#goal) return;
    const local = this.#namesHere();
    // Rows that were read earlier are not here: the store was lost or set back. They are read anew.
    if (local.size < this.#goal && this.#readFrom > 0) return this.#readAnew();
    if (local.size > (this.#mark?.upTo ?? 0)) return this.#say({ say: "which" });
    for (const id of local.keys()) this.#known.add(id);
    this.#meet();
  }

  #readAnew(): void {
    this.#mark = undefined;
    this.#comeApart();
  }

  #compare(numbers: Readonly<Record<string, string>>): void {
    for (const [id, row] of this.#namesHere()) {
      const runs = Object.hasOwn(numbers, deviceOf(id)) ? numbers[deviceOf(id)] : undefined;
      const isThere = this.#known.has(id) || (runs !== undefined && isInRuns(runs, numberOf(id)));
      if (isThere) {
        this.#known.add(id);
        this.#unsent.remove(id);
      } else this.#unsent.add(row);
    }
    this.#meet();
  }

  #meet(): void {
    this.#hasCompared = true;
    this.#owed = 0;
    this.#tries = 0;
    if (this.#isFirstTime && this.#mark !== undefined) this.#options.memory.write(this.#mark);
    this.#isFirstTime = false;
    this.#show({ state: { kind: "together" }, hasTrouble: false });
    if (this.#place !== undefined) this.#say({ say: "here", ...this.#place });
    this.#send();
  }

  #namesHere() {
    return new Map(
      this.#rows.toArray().flatMap((row) => {
        const named = nameRow(row);
        return named === undefined ? [] : [[named.id, named] as const];
      }),
    );
  }

  /** Offers again what came back, as after its cause was mended. */
  offerAgain(): void {
    const here = this.#namesHere();
    for (const id of this.#returned.keys()) {
      const row = here.get(id);
      if (row !== undefined) this.#unsent.add(row);
    }
    this.#returned.clear();
    this.#show({});
    this.#send();
  }

  #takeLocal = ({ changes }: Y.YArrayEvent<unknown>): void => {
    if (changes.deleted.size > 0) {
      this.#takeDropped();
      return;
    }
    for (const row of changes.delta.flatMap(({ insert }) => (Array.isArray(insert) ? insert : []))) {
      const named = nameRow(row);
      if (named !== undefined && !this.#known.has(named.id)) this.#unsent.add(named);
    }
    if (this.#unsent.size + this.#owed === this.#view.unsent) return;
    this.#show({});
    this.#sendSoon(0);
  };

  #takeDropped(): void {
    const here = this.#namesHere();
    for (const id of [...this.#returned.keys(), ...this.#unsent.ids()]) {
      if (here.has(id)) continue;
      this.#returned.delete(id);
      this.#unsent.remove(id);
    }
    this.#show({});
  }

  #sendSoon(afterMs: number): void {
    if (this.#sendTimer !== undefined) return;
    this.#sendTimer = setTimeout(() => {
      this.#sendTimer = undefined;
      this.#send();
    }, afterMs);
  }

  #send(): void {
    if (this.#view.state.kind !== "together" || this.#inFlight !== undefined || this.#unsent.size === 0) return;
    const rows = this.#unsent.next(this.#messageChars);
    const ref = ++this.#ref;
    this.#inFlight = { ref, ids: rows.map(({ id }) => id) };
    this.#say({ say: "push", ref, rows });
    // A network that is gone without a word is found out by its silence.
    this.#answerTimer = setTimeout(() => this.#comeApart(), ANSWER_MS);
  }

  #takeAnswer({ ref, refused }: Said<"answer">): void {
    if (this.#inFlight?.ref !== ref) return;
    clearTimeout(this.#answerTimer);
    const returned = new Map(refused.flatMap((each) => (each.id === undefined ? [] : [[each.id, each] as const])));
    for (const id of this.#inFlight.ids) {
      this.#unsent.remove(id);
      const refusal = returned.get(id);
      if (refusal === undefined) this.#known.add(id);
      else this.#returned.set(id, refusal);
    }
    this.#inFlight = undefined;
    this.#show({ hasTrouble: false });
    if (this.#unsent.size > 0) this.#sendSoon(APART_MS);
  }

  #takeFarewell(reason: Farewell): void {
    if (!PASSING.includes(reason)) this.#refuse(reason);
    // Else the socket closes by itself, and another try is made.
  }

  #refuse(reason: Farewell | "other-kitchen"): void {
    this.#hangUp();
    this.#show({ state: { kind: "refused", reason }, here: [] });
  }

  #comeApart(): void {
    this.#hangUp();
    if (!this.#isRunning) return;
    this.#show({ state: { kind: "apart", tries: this.#tries }, here: [] });
    const most = Math.min(WAIT_MS.most, WAIT_MS.first * 2 ** this.#tries++);
    const chance = this.#options.chance ?? Math.random;
    this.#tryTimer = setTimeout(() => this.#connect(), most * (0.5 + chance() / 2));
  }

  #hangUp(): void {
    clearTimeout(this.#answerTimer);
    clearTimeout(this.#sendTimer);
    this.#sendTimer = undefined;
    this.#inFlight = undefined;
    this.#hasCompared = false;
    const socket = this.#socket;
    this.#socket = undefined;
    socket?.close();
  }

  #say(message: object): void {
    this.#socket?.send(JSON.stringify(message));
  }

  #show(change: Partial<SyncView> & { readonly state?: SyncState }): void {
    this.#view = {
      ...this.#view,
      ...change,
      unsent: this.#unsent.size + this.#owed,
      returned: [...this.#returned.values()],
    };
    for (const hearer of this.#hearers) hearer();
  }
}

/** Remembers a mark in the storage of a browser, or in anything that keeps texts by name. */
export function toSyncMemory(
  storage: { getItem(name: string): string | null; setItem(name: string, value: string): void },
  name: string,
): SyncMemory {
  const Mark = v.object({ log: v.string(), upTo: v.number() });
  return {
    read: () => {
      try {
        const read = v.safeParse(Mark, JSON.parse(storage.getItem(name) ?? "null"));
        return read.success ? read.output : undefined;
      } catch {
        // What can't be read is as if nothing were remembered.
        return undefined;
      }
    },
    write: (mark) => {
      try {
        storage.setItem(name, JSON.stringify(mark));
      } catch {
        // The rows are kept all the same; they are read once more next time.
      }
    },
  };
}
