import * as v from "valibot";

const FORM = /^([a-z0-9]+(?:-[a-z0-9]+)*)-([1-9][0-9]{0,14})$/;

/** Id of an event: the device that wrote it and the number it gave it, from 1 on, such as `kitchen-phone-17`. */
export const EventId = v.pipe(
  v.string(),
  v.regex(FORM, "a device and the number it gave the event, joined by a hyphen"),
);
export type EventId = v.InferOutput<typeof EventId>;

/** The id of a device's event of that number. */
export function toEventId(device: string, number: number): EventId {
  return `${device}-${number}`;
}

/** The device that wrote an event. */
export function deviceOf(id: EventId): string {
  return id.slice(0, id.lastIndexOf("-"));
}

/** The number that its device gave an event. */
export function numberOf(id: EventId): number {
  return Number(id.slice(id.lastIndexOf("-") + 1));
}
