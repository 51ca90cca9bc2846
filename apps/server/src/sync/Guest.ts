import type { Farewell, Role, ServerMessage } from "@halfloaf/keep/sync";
import type { WebSocket } from "ws";
import { type HostedDevice, isFault } from "../host/HostStore.ts";
import type { ServerParts } from "../ServerParts.ts";
import { toRowsText } from "./toRowsText.ts";

/** Bytes of rows that are read of a log and said at once. */
const PAGE_BYTES = 200_000;

/** How long a socket has to close by itself, in milliseconds. */
const CLOSING_MS = 2_000;

/** Codes of RFC 6455 and of the range that it leaves to applications. */
const CLOSE_CODES: Readonly<Partial<Record<Farewell, number>>> = { restart: 1012, full: 1013, malformed: 1007 };
const USUAL_CLOSE_CODE = 4_000;

/** A device that was let in, at the other end of a socket. It has read the log up to `cursor`. */
export class Guest {
  readonly socket: WebSocket;
  device: HostedDevice;
  place: { readonly by?: string; readonly at?: string } = {};
  #cursor: number;
  /** How far the log is known to go. */
  #goal: number;
  #isReading = false;
  #stuckSinceMs: number | undefined;
  readonly #parts: ServerParts;

  constructor(socket: WebSocket, device: HostedDevice, cursor: number, parts: ServerParts) {
    this.socket = socket;
    this.device = device;
    this.#cursor = cursor;
    this.#goal = cursor;
    this.#parts = parts;
  }

  get role(): Role {
    return this.device.role;
  }

  say(message: ServerMessage): void {
    this.socket.send(JSON.stringify(message));
  }

  /** Is given rows from `first` on as they come in; reads on by itself where it is not as far as that yet. */
  take(first: number | undefined, upTo: number, text: string): void {
    this.#goal = Math.max(this.#goal, upTo);
    if (this.#isReading || first !== this.#cursor + 1 || this.#isFull()) return void this.readOn(upTo);
    this.#cursor = upTo;
    this.socket.send(text);
  }

  /** Says what the log has up to there, in pages, no faster than the device reads. */
  async readOn(upTo: number): Promise<void> {
    this.#goal = Math.max(this.#goal, upTo);
    if (this.#isReading) return;
    this.#isReading = true;
    while (this.#cursor < this.#goal && !this.#isFull() && this.socket.readyState === this.socket.OPEN) {
      const page = await this.#parts.store.readLog(this.device.kitchen, this.#cursor, PAGE_BYTES);
      if (isFault(page)) {
        this.#parts.measures.troubles.inc({ reason: page.reason });
        break;
      }
      const last = page.rows.at(-1);
      if (last === undefined) break;
      this.#cursor = last.seq;
      this.#goal = Math.max(this.#goal, page.upTo);
      this.socket.send(toRowsText(page.rows, last.seq));
    }
    this.#isReading = false;
  }

  /** Goes on where the device has read, or tells that it has read nothing for too long. */
  look(nowMs: number): "well" | "slow" {
    if (!this.#isFull()) {
      this.#stuckSinceMs = undefined;
      if (this.#cursor < this.#goal) void this.readOn(this.#goal);
      return "well";
    }
    this.#stuckSinceMs ??= nowMs;
    return nowMs - this.#stuckSinceMs > this.#parts.limits.waitingMs ? "slow" : "well";
  }

  #isFull(): boolean {
    return this.socket.bufferedAmount > this.#parts.limits.waitingBytes;
  }
}

/** Ends a talk and says why; a socket that does not close by itself is cut. */
export function endTalk(socket: WebSocket, reason: Farewell): void {
  if (socket.readyState !== socket.OPEN) {
    socket.terminate();
    return;
  }
  socket.send(JSON.stringify({ say: "bye", reason }));
  socket.close(CLOSE_CODES[reason] ?? USUAL_CLOSE_CODE, reason);
  setTimeout(() => socket.terminate(), CLOSING_MS).unref();
}
