import type { Calendar, CalendarEntry } from "./CalendarEntry.ts";
import { minuteOf, toDateTime } from "./zonedTime.ts";
import { zoneLines } from "./zoneLines.ts";

/** Octets of a line before it goes on in the next. **Source**: RFC 5545, 3.1. */
const MOST_OCTETS = 75;

/**
 * The text of a calendar. Times stand with their zone, which is described in the text as far as the entries go, so that
 * they hold through changes of the clock. A zone that is not known leaves the times floating. **Source**: RFC 5545; RFC
 * 7986 (NAME, REFRESH-INTERVAL).
 */
export function writeCalendar({ name, entries, zone, stamp }: Calendar): string {
  const minutes = entries.flatMap(({ date, atMinutes }) =>
    atMinutes === undefined ? [] : [minuteOf(date, atMinutes)],
  );
  const described = zone === undefined || minutes.length === 0 ? undefined : zoneLines(zone, minutes);
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Halfloaf//Sheets//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `NAME:${escapeText(name)}`,
    "REFRESH-INTERVAL;VALUE=DURATION:PT6H",
    ...(described ?? []),
    ...entries.flatMap((entry) => entryLines(entry, described === undefined ? undefined : zone, stamp)),
    "END:VCALENDAR",
  ];
  return `${lines.map(foldLine).join("\r\n")}\r\n`;
}

function entryLines(entry: CalendarEntry, zone: string | undefined, stamp: string): string[] {
  const { uid, summary, description, location, remindMinutes } = entry;
  return [
    "BEGIN:VEVENT",
    `UID:${escapeText(uid)}`,
    `DTSTAMP:${stamp}`,
    ...timeLines(entry, zone),
    `SUMMARY:${escapeText(summary)}`,
    ...(description === undefined ? [] : [`DESCRIPTION:${escapeText(description)}`]),
    ...(location === undefined ? [] : [`LOCATION:${escapeText(location)}`]),
    "TRANSP:TRANSPARENT",
    ...(remindMinutes === undefined ? [] : alarmLines(remindMinutes, summary)),
    "END:VEVENT",
  ];
}

function timeLines({ date, atMinutes, forMinutes = 0 }: CalendarEntry, zone: string | undefined): string[] {
  if (atMinutes === undefined) return [`DTSTART;VALUE=DATE:${date.replaceAll("-", "")}`, "DURATION:P1D"];
  const at = toDateTime(minuteOf(date, atMinutes));
  return [zone === undefined ? `DTSTART:${at}` : `DTSTART;TZID=${zone}:${at}`, `DURATION:${toDuration(forMinutes)}`];
}

function alarmLines(beforeMinutes: number, summary: string): string[] {
  const sign = beforeMinutes > 0 ? "-" : "";
  return [
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${escapeText(summary)}`,
    `TRIGGER:${sign}${toDuration(Math.abs(beforeMinutes))}`,
    "END:VALARM",
  ];
}

function toDuration(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return hours === 0 ? `PT${rest}M` : `PT${hours}H${rest === 0 ? "" : `${rest}M`}`;
}

/** A text as it may stand in a value; what a calendar cannot hold is left out. **Source**: RFC 5545, 3.3.11. */
function escapeText(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, "\ufffd")
    .replace(/\r\n?/g, "\n")
    .replace(/(?![\n\t])\p{Cc}/gu, "")
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll("\n", "\\n");
}

/** A line in pieces of at most 75 octets each, no letter cut apart. */
function foldLine(line: string): string {
  let [folded, octets] = ["", 0];
  for (const letter of line) {
    const size = octetsOf(letter.codePointAt(0) as number);
    if (octets + size > MOST_OCTETS) {
      folded += "\r\n ";
      octets = 1;
    }
    folded += letter;
    octets += size;
  }
  return folded;
}

/** Octets of a code point in UTF-8. **Source**: RFC 3629. */
function octetsOf(code: number): number {
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
