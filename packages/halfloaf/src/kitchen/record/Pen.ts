import type { Edit } from "./edit.ts";
import type { RecordEvent } from "./event.ts";
import { type EventId, toEventId } from "./eventId.ts";
import type { RecordLedger } from "./RecordLedger.ts";
import { nextStamp, type Stamp } from "./stamp.ts";

/** An event that is not written down yet. */
export type EventBody = BodyOf<RecordEvent>;
type BodyOf<Event> = Event extends RecordEvent ? Omit<Event, "id" | "atMs" | "tick" | "by" | "act"> : never;

/** An edit that is not written down yet. */
export type EditBody = Omit<Edit, "id" | "atMs" | "tick" | "by" | "act">;

/** Who writes, and when. */
export interface Writer {
  /** Id of the device; no two devices of a kitchen have one. */
  readonly device: string;
  /** Id of the eater who writes; absent = not said. */
  readonly by?: string;
  /** The device's clock, in ms since 1970-01-01 UTC. */
  readonly nowMs: number;
}

/**
 * Writes one act down: each row gets the next number of its device and a stamp later than all before, and every row but
 * the first names the first.
 */
export class Pen {
  private readonly writer: Writer;
  private number: number;
  private latest: Stamp | undefined;
  private act: EventId | undefined;

  /** `lastNumber` is the highest number the device ever used, `latest` the latest stamp it knows of. */
  constructor(writer: Writer, lastNumber: number, latest: Stamp | undefined) {
    this.writer = writer;
    this.number = lastNumber;
    this.latest = latest;
  }

  /** The id of the event that is written next. */
  get nextId(): EventId {
    return toEventId(this.writer.device, this.number + 1);
  }

  /** A name for the lot that the next event brings, beginning with what is in it. */
  nameLot(stem: string): string {
    return `${stem}-${this.nextId}`;
  }

  write<Body extends EventBody | EditBody>(body: Body): Extract<RecordEvent | Edit, { kind: Body["kind"] }> {
    const { by, nowMs } = this.writer;
    const id = this.nextId;
    const { atMs, tick } = nextStamp(this.latest, nowMs);
    this.number++;
    this.latest = { atMs, tick };
    const act = this.act === undefined ? {} : { act: this.act };
    this.act ??= id;
    const written = { id, atMs, tick, ...(by !== undefined && { by }), ...act, ...body };
    return written as unknown as Extract<RecordEvent | Edit, { kind: Body["kind"] }>;
  }
}

/** A pen that goes on where a ledger ends. Whoever keeps events must let one pen at a time write for a device. */
export function penOf(ledger: Pick<RecordLedger, "lastNumberOf" | "latestStamp">, writer: Writer): Pen {
  return new Pen(writer, ledger.lastNumberOf(writer.device), ledger.latestStamp);
}
