import type { Present } from "@halfloaf/keep/sync";
import type { HostedRow } from "../host/HostStore.ts";
import type { Guest } from "./Guest.ts";
import { toRowsText } from "./toRowsText.ts";

/** Who is in a kitchen by way of another server, and until when that holds unless it is heard of again. */
interface Others {
  readonly devices: readonly Present[];
  readonly untilMs: number;
}

/** How long what another server told of its devices holds, in milliseconds. */
const HOLDS_MS = 60_000;

/** A kitchen that devices are in now, on this server. It holds nothing that is not in the store as well. */
export class Room {
  readonly kitchen: string;
  readonly guests = new Set<Guest>();
  readonly #others = new Map<string, Others>();
  /** How far the log goes as far as is known. */
  upTo = 0;
  /** What was said of who is there, so that nothing is said twice. */
  told = "";

  constructor(kitchen: string) {
    this.kitchen = kitchen;
  }

  /** Hands rows on to all who have read up to them; the others read on by themselves. The sender has its own rows already. */
  deliver(fresh: readonly HostedRow[], upTo: number, sender?: Guest): void {
    this.upTo = Math.max(this.upTo, upTo);
    const text = toRowsText(fresh, upTo);
    for (const guest of this.guests) guest.take(fresh[0]?.seq, upTo, guest === sender ? toRowsText([], upTo) : text);
  }

  /** The devices here, each once, in the order of their names. */
  here(): Present[] {
    const devices = new Map<string, Present>();
    for (const { device, place } of this.guests)
      devices.set(device.id, { device: device.id, name: device.name, role: device.role, ...place });
    return [...devices.values()].sort((a, b) => (a.device < b.device ? -1 : 1));
  }

  /** The devices here and on the other servers. */
  everywhere(nowMs: number): Present[] {
    const devices = new Map(this.here().map((each) => [each.device, each]));
    for (const [server, { devices: theirs, untilMs }] of this.#others) {
      if (untilMs < nowMs) this.#others.delete(server);
      else for (const each of theirs) if (!devices.has(each.device)) devices.set(each.device, each);
    }
    return [...devices.values()].sort((a, b) => (a.device < b.device ? -1 : 1));
  }

  noteOthers(server: string, devices: readonly Present[], nowMs: number): void {
    if (devices.length === 0) this.#others.delete(server);
    else this.#others.set(server, { devices, untilMs: nowMs + HOLDS_MS });
  }
}
