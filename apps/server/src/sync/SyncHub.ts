import type { Farewell, Present } from "@halfloaf/keep/sync";
import type { WebSocket } from "ws";
import { Allowances } from "../Allowance.ts";
import { type HostedDevice, type HostedRow, isFault } from "../host/HostStore.ts";
import { Mistakes } from "../Mistakes.ts";
import type { ServerParts } from "../ServerParts.ts";
import type { WireMessage } from "../wire/Wire.ts";
import type { Guest } from "./Guest.ts";
import type { Lobby } from "./Lobby.ts";
import { Room } from "./Room.ts";
import { Talk } from "./Talk.ts";

/** How often the hub looks after its sockets, and after the store where the wire hears or does not, in milliseconds. */
const LOOK_MS = 1_000;
const STORE_MS = { hears: 15_000, deaf: 1_500 };
const PING_MS = 30_000;
const HERE_MS = 20_000;

/** So many kitchens are asked for at once. */
const KITCHENS_ASKED = 1_000;

/** The sockets of a server: who is in which kitchen, and what each is to be told. No kitchen is bound to a server. */
export class SyncHub implements Lobby {
  readonly parts: ServerParts;
  readonly mistakes: Mistakes;
  readonly #arrivals: Allowances;
  readonly #rooms = new Map<string, Room>();
  readonly #talks = new Set<Talk>();
  readonly #talksOf = new Map<string, number>();
  readonly #timers: readonly ReturnType<typeof setInterval>[];
  readonly #ends: (() => Promise<void>)[] = [];
  #lookedAtMs = 0;
  /** True once it takes no sockets any more. */
  isClosing = false;

  constructor(parts: ServerParts) {
    this.parts = parts;
    this.mistakes = new Mistakes(parts.limits.mistakes);
    this.#arrivals = new Allowances(parts.limits.arrivals);
    parts.wire.listen((message) => (message === undefined ? void this.lookIntoAll() : this.#hear(message)));
    this.#timers = [
      setInterval(() => this.#look(), LOOK_MS),
      setInterval(() => this.#pingAll(), PING_MS),
      setInterval(() => this.#tellOthers(), HERE_MS),
    ];
    for (const timer of this.#timers) timer.unref();
  }

  /** True where another socket from this address can't be taken. */
  isFull(address: string): "sockets" | "address" | "arrivals" | undefined {
    const { limits, now } = this.parts;
    if (this.isClosing || this.#talks.size >= limits.sockets) return "sockets";
    if ((this.#talksOf.get(address) ?? 0) >= limits.socketsOfAddress) return "address";
    return this.#arrivals.take(address, now()) ? undefined : "arrivals";
  }

  /** Takes a socket: from now on it is spoken to. */
  take(socket: WebSocket, address: string): void {
    const talk = new Talk(socket, address, this);
    this.#talks.add(talk);
    this.#talksOf.set(address, (this.#talksOf.get(address) ?? 0) + 1);
    this.parts.measures.sockets.set(this.#talks.size);
    socket.once("close", () => {
      this.#talks.delete(talk);
      const left = (this.#talksOf.get(address) ?? 1) - 1;
      if (left === 0) this.#talksOf.delete(address);
      else this.#talksOf.set(address, left);
      this.parts.measures.sockets.set(this.#talks.size);
      if (talk.guest !== undefined) this.leave(talk.guest);
    });
  }

  enter(guest: Guest, upTo: number): void {
    const { kitchen } = guest.device;
    let room = this.#rooms.get(kitchen);
    if (room === undefined) {
      room = new Room(kitchen);
      this.#rooms.set(kitchen, room);
      this.parts.wire.follow(kitchen);
      this.parts.wire.send({ kind: "who", kitchen });
      this.parts.measures.kitchens.set(this.#rooms.size);
    }
    room.guests.add(guest);
    room.upTo = Math.max(room.upTo, upTo);
    void guest.readOn(room.upTo);
    this.tellHere(kitchen);
    // It may have been removed while it was being let in.
    void this.#verify(kitchen);
  }

  leave(guest: Guest): void {
    const { kitchen } = guest.device;
    const room = this.#rooms.get(kitchen);
    if (room === undefined || !room.guests.delete(guest)) return;
    this.tellHere(kitchen);
    if (room.guests.size > 0) return;
    this.#rooms.delete(kitchen);
    this.parts.wire.leave(kitchen);
    this.parts.measures.kitchens.set(this.#rooms.size);
  }

  endOf(kitchen: string): number {
    return this.#rooms.get(kitchen)?.upTo ?? 0;
  }

  deliver(kitchen: string, fresh: readonly HostedRow[], sender: Guest): void {
    const upTo = fresh.at(-1)?.seq;
    if (upTo === undefined) return;
    this.#rooms.get(kitchen)?.deliver(fresh, upTo, sender);
    this.parts.wire.send({ kind: "rows", kitchen, upTo, rows: fresh });
  }

  tellHere(kitchen: string): void {
    const room = this.#rooms.get(kitchen);
    if (room === undefined) return;
    this.parts.wire.send({ kind: "here", kitchen, server: this.parts.server, devices: room.here() });
    this.#sayHere(room, room.everywhere(this.parts.now()));
  }

  /** A device was removed or has another role, or all were: its sockets end, here and on the other servers. */
  endDevice(kitchen: string, device?: string): void {
    const changed = device === undefined ? { kitchen } : { kitchen, device };
    this.parts.wire.send({ kind: "changed", ...changed });
    void this.#verify(kitchen);
  }

  /** Does something more at the end. */
  onClose(end: () => Promise<void>): void {
    this.#ends.push(end);
  }

  /** Ends all talks, so that devices come back to another server or to the next version of this one. */
  async close(): Promise<void> {
    this.isClosing = true;
    for (const timer of this.#timers) clearInterval(timer);
    for (const talk of this.#talks) talk.end("restart");
    await Promise.all([...this.#talks].map((talk) => talk.closed));
    for (const end of this.#ends) await end();
  }

  /** Looks into the store whether logs have grown, or devices have changed, without being told. */
  async lookIntoAll(): Promise<void> {
    await this.#lookIntoStore();
    for (const kitchen of [...this.#rooms.keys()]) {
      this.parts.wire.send({ kind: "who", kitchen });
      await this.#verify(kitchen);
    }
  }

  #hear(message: WireMessage): void {
    const room = this.#rooms.get(message.kitchen);
    if (room === undefined) return;
    if (message.kind === "rows") {
      if (message.rows.length > 0) room.deliver(message.rows, message.upTo);
      else for (const guest of room.guests) void guest.readOn(message.upTo);
    } else if (message.kind === "here") {
      room.noteOthers(message.server, message.devices, this.parts.now());
      this.#sayHere(room, room.everywhere(this.parts.now()));
    } else if (message.kind === "changed") void this.#verify(message.kitchen);
    else {
      const { server, wire } = this.parts;
      wire.send({ kind: "here", kitchen: message.kitchen, server, devices: room.here() });
    }
  }

  #sayHere(room: Room, devices: readonly Present[]): void {
    const text = JSON.stringify({ say: "here", devices });
    if (text === room.told) return;
    room.told = text;
    for (const guest of room.guests) guest.socket.send(text);
  }

  /** Ends the talks of devices that are not there any more or have another role. */
  async #verify(kitchen: string): Promise<void> {
    const room = this.#rooms.get(kitchen);
    if (room === undefined) return;
    const devices = await this.parts.store.listDevices(kitchen);
    if (isFault(devices)) return;
    const known = new Map(devices.map((device) => [device.id, device]));
    for (const talk of this.#talks) {
      if (talk.guest?.device.kitchen !== kitchen) continue;
      const reason = whyToEnd(talk.guest.device, known);
      if (reason !== undefined) talk.end(reason);
    }
  }

  #look(): void {
    const nowMs = this.parts.now();
    for (const talk of this.#talks) talk.look(nowMs);
    const every = this.parts.wire.hears ? STORE_MS.hears : STORE_MS.deaf;
    if (nowMs - this.#lookedAtMs < every) return;
    this.#lookedAtMs = nowMs;
    void this.#lookIntoStore();
  }

  async #lookIntoStore(): Promise<void> {
    const kitchens = [...this.#rooms.keys()];
    for (let from = 0; from < kitchens.length; from += KITCHENS_ASKED) {
      const ends = await this.parts.store.endsOf(kitchens.slice(from, from + KITCHENS_ASKED));
      if (isFault(ends)) return;
      for (const [kitchen, upTo] of ends)
        for (const guest of this.#rooms.get(kitchen)?.guests ?? []) void guest.readOn(upTo);
    }
  }

  #pingAll(): void {
    for (const talk of this.#talks) talk.ping();
  }

  #tellOthers(): void {
    const { server, wire } = this.parts;
    for (const room of this.#rooms.values())
      wire.send({ kind: "here", kitchen: room.kitchen, server, devices: room.here() });
  }
}

function whyToEnd({ id, role }: HostedDevice, known: ReadonlyMap<string, HostedDevice>): Farewell | undefined {
  const device = known.get(id);
  if (device === undefined) return known.size === 0 ? "deleted" : "revoked";
  return device.role === role ? undefined : "restart";
}
