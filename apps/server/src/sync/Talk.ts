import type { StoreFault } from "@halfloaf/keep";
import {
  DeviceMessage,
  type Farewell,
  parseMessage,
  type Refusal,
  SYNC_PROTOCOL,
  toNumberRuns,
} from "@halfloaf/keep/sync";
import { deviceOf } from "halfloaf/kitchen/record";
import type { RawData, WebSocket } from "ws";
import { Allowance } from "../Allowance.ts";
import { isFault } from "../host/HostStore.ts";
import { isSecret, splitCredential } from "../secrets.ts";
import { isTooDeep } from "../truth/isTooDeep.ts";
import { judgeRows } from "../truth/judgeRows.ts";
import { endTalk, Guest } from "./Guest.ts";
import type { Lobby } from "./Lobby.ts";

type Said<Say extends DeviceMessage["say"]> = Extract<DeviceMessage, { say: Say }>;

/** Messages that wait to be answered: from so many on nothing more is read, with more still the talk ends. */
const READ_UP_TO = 8;
const MOST_UNANSWERED = 400;

/** Lists and objects within each other: a kitchen's own are not half as deep. */
const MOST_DEPTH = 40;

/** How often a device may ask which rows there are. */
const WHICH_RATE = { burst: 3, perSecond: 0.1 };

/** To the hour is close enough for when a device came last. */
const SEEN_MS = 3_600_000;

/** One socket: messages are answered one after the other, in the order in which they came. */
export class Talk {
  guest: Guest | undefined;
  readonly closed: Promise<void>;
  readonly #socket: WebSocket;
  readonly #address: string;
  readonly #hub: Lobby;
  readonly #messages: Allowance;
  readonly #rows: Allowance;
  readonly #which: Allowance;
  readonly #unanswered: string[] = [];
  readonly #sinceMs: number;
  /** Who writes by this opening, until its first row has claimed that for the device. */
  #writer: string | undefined;
  #isAnswering = false;
  #isAlive = true;
  #hasEnded = false;

  constructor(socket: WebSocket, address: string, hub: Lobby) {
    const { limits, now } = hub.parts;
    this.#socket = socket;
    this.#address = address;
    this.#hub = hub;
    this.#sinceMs = now();
    this.#messages = new Allowance(limits.messages, this.#sinceMs);
    this.#rows = new Allowance(limits.rows, this.#sinceMs);
    this.#which = new Allowance(WHICH_RATE, this.#sinceMs);
    this.closed = new Promise((resolve) => socket.once("close", () => resolve()));
    socket.on("message", (data: RawData, isBinary: boolean) => this.#hear(data, isBinary));
    socket.on("pong", () => {
      this.#isAlive = true;
    });
    socket.on("error", (error: Error & { code?: string }) =>
      this.#note("socket-error", { detail: error.code ?? error.message }),
    );
  }

  /** Ends the talk and writes down why. */
  end(reason: Farewell): void {
    if (this.#hasEnded) return;
    this.#hasEnded = true;
    this.#hub.parts.measures.farewells.inc({ reason });
    this.#note("farewell", { reason });
    endTalk(this.#socket, reason);
  }

  ping(): void {
    this.#noteSeen();
    if (this.#isAlive) this.#socket.ping();
    else this.#socket.terminate();
    this.#isAlive = false;
  }

  /** Notes that the device is here, so that a kitchen in use is never taken for one that was left. */
  #noteSeen(): void {
    const { store, now } = this.#hub.parts;
    if (this.guest === undefined || now() - this.guest.device.seenAtMs <= SEEN_MS) return;
    this.guest.device = { ...this.guest.device, seenAtMs: now() };
    void store.noteSeen(this.guest.device.kitchen, this.guest.device.id, now());
  }

  look(nowMs: number): void {
    if (this.guest === undefined && nowMs - this.#sinceMs > this.#hub.parts.limits.helloMs) this.end("malformed");
    if (this.guest?.look(nowMs) === "slow") {
      this.end("slow");
      // Its farewell would wait behind all that it has not read.
      this.#socket.terminate();
    }
  }

  #hear(data: RawData, isBinary: boolean): void {
    if (this.#hasEnded) return;
    this.#isAlive = true;
    const isTooFast = !this.#messages.take(this.#hub.parts.now());
    if (isTooFast || this.#unanswered.length >= MOST_UNANSWERED) this.end("flooding");
    else if (isBinary) this.end("malformed");
    else {
      this.#unanswered.push(data.toString());
      if (this.#unanswered.length >= READ_UP_TO) this.#socket.pause();
      if (!this.#isAnswering) void this.#answerAll();
    }
  }

  async #answerAll(): Promise<void> {
    this.#isAnswering = true;
    for (let text = this.#unanswered.shift(); text !== undefined; text = this.#unanswered.shift()) {
      if (this.#hasEnded) break;
      await this.#answerSafely(text);
      if (this.#unanswered.length < READ_UP_TO && this.#socket.isPaused) this.#socket.resume();
    }
    this.#isAnswering = false;
  }

  /** A defect ends the talk that met it and no other. */
  async #answerSafely(text: string): Promise<void> {
    try {
      await this.#answer(text);
    } catch (error) {
      const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
      this.#hub.parts.journal.error({ address: this.#address, detail }, "defect");
      this.end("restart");
    }
  }

  async #answer(text: string): Promise<void> {
    if (isTooDeep(text, MOST_DEPTH)) return this.end("malformed");
    const read = parseMessage(DeviceMessage, text);
    if (!read.ok) return this.end("malformed");
    const message = read.value;
    if (this.guest === undefined) return message.say === "hello" ? this.#greet(message) : this.end("malformed");
    if (message.say === "push") return this.#keep(message, this.guest);
    if (message.say === "which") return this.#tellWhich(this.guest);
    if (message.say === "hello") return this.end("malformed");
    const { by, at } = message;
    this.guest.place = { ...(by === undefined ? {} : { by }), ...(at === undefined ? {} : { at }) };
    this.#hub.tellHere(this.guest.device.kitchen);
  }

  async #greet({ protocol, kitchen, credential, log, after, writer }: Said<"hello">): Promise<void> {
    if (protocol !== SYNC_PROTOCOL) return this.end("protocol");
    const { store, limits, now } = this.#hub.parts;
    const { name, secret } = splitCredential(credential);
    if (this.#hub.mistakes.isShut(this.#address, name, now())) return this.end("full");
    const [device, found] = await Promise.all([store.findDevice(kitchen, name), store.findKitchen(kitchen)]);
    if (isFault(device) || isFault(found)) return this.#failStore(isFault(device) ? device : (found as StoreFault));
    if (!isSecret(secret, device?.secretHash) || device === undefined || found === undefined) {
      this.#hub.mistakes.note(this.#address, name, now());
      return this.end("unknown");
    }
    if (this.#socket.readyState !== this.#socket.OPEN) return;
    this.#writer = writer;
    // Who has read another log, or more of this one than there is, reads it from its beginning.
    const cursor = log === found.log && after <= found.upTo ? after : 0;
    this.guest = new Guest(this.#socket, device, cursor, this.#hub.parts);
    this.#noteSeen();
    const { messageBytes } = limits;
    const { role } = device;
    this.guest.say({ say: "welcome", device: device.id, role, log: found.log, upTo: found.upTo, messageBytes });
    this.#hub.parts.journal.info({ address: this.#address, kitchen, device: device.id, role }, "device-came");
    this.#hub.enter(this.guest, found.upTo);
  }

  async #keep({ ref, rows }: Said<"push">, guest: Guest): Promise<void> {
    const { measures, now } = this.#hub.parts;
    const waitMs = this.#rows.takeLater(now(), rows.length);
    if (waitMs > 0) await new Promise((resolve) => setTimeout(resolve, waitMs));
    const stop = measures.pushSeconds.startTimer();
    const { refused, pushed } = await this.#judgeAndAppend(rows, guest);
    if ("ok" in pushed) {
      this.#noteTrouble(pushed);
      return guest.say({ say: "trouble", ref });
    }
    stop();
    if (pushed.kind === "gone") return this.end("revoked");
    const all: Refusal[] = [
      ...refused,
      ...pushed.taken.map((id): Refusal => ({ id, reason: "id-taken" })),
      ...pushed.over.map((id): Refusal => ({ id, reason: "kitchen-full" })),
    ];
    measures.rows.inc(pushed.fresh.length);
    for (const { reason } of all) measures.refused.inc({ reason });
    if (all.length > 0) this.#note("rows-refused", { reasons: [...new Set(all.map(({ reason }) => reason))] });
    this.#hub.deliver(guest.device.kitchen, pushed.fresh, guest);
    guest.say({ say: "answer", ref, refused: all });
  }

  async #judgeAndAppend(rows: readonly unknown[], { device: { id: device, kitchen, role } }: Guest) {
    const { store, limits } = this.#hub.parts;
    const faults: StoreFault[] = [];
    const orNothing = (found: ReadonlyMap<string, string> | StoreFault) => {
      if (!isFault(found)) return found;
      faults.push(found);
      return new Map<string, string>();
    };
    const writer = this.#writer;
    if (writer !== undefined && role !== "reader" && rows.some((row) => isWrittenBy(row, writer))) {
      const claim = await store.claimWriter(kitchen, writer, device);
      if (isFault(claim)) return { refused: [], pushed: claim };
      this.#writer = undefined;
    }
    const { acts, refused } = await judgeRows(rows, {
      device,
      role,
      logRows: this.#hub.endOf(kitchen),
      mostRowChars: limits.rowChars,
      ownersOf: async (writers) => orNothing(await store.ownersOf(kitchen, writers)),
      sendersOf: async (ids) => orNothing(await store.sendersOf(kitchen, ids)),
    });
    const [fault] = faults;
    const { kitchenRows: mostRows, kitchenBytes: mostBytes } = limits;
    const pushed = fault ?? (await store.append({ kitchen, device, acts, mostRows, mostBytes }));
    return { refused, pushed };
  }

  async #tellWhich(guest: Guest): Promise<void> {
    const { store, now } = this.#hub.parts;
    if (!this.#which.take(now())) return this.end("flooding");
    const ids = await store.listIds(guest.device.kitchen);
    if (isFault(ids)) return this.#failStore(ids);
    guest.say({ say: "which", numbers: toNumberRuns(ids) });
  }

  /** What can't be looked up now can be later: the device is asked to come again. */
  #failStore(fault: StoreFault): void {
    this.#noteTrouble(fault);
    this.end("restart");
  }

  #noteTrouble({ reason, detail }: StoreFault): void {
    this.#hub.parts.measures.troubles.inc({ reason });
    this.#note("store-trouble", { reason, detail });
  }

  #note(event: string, facts: Readonly<Record<string, unknown>>): void {
    const { kitchen, id } = this.guest?.device ?? {};
    const who = this.guest === undefined ? {} : { kitchen, device: id };
    this.#hub.parts.journal.warn({ address: this.#address, ...who, ...facts }, event);
  }
}

function isWrittenBy(row: unknown, writer: string): boolean {
  const id = typeof row === "object" && row !== null && "id" in row ? row.id : undefined;
  return typeof id === "string" && deviceOf(id) === writer;
}
