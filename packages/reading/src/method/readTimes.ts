import { isVague, NUMBER, toNumber } from "./readNumbers.ts";

/** A length of time as a text tells it. */
export interface TimeFound {
  /** The upper end where the text gives a range; for "each side" the time of both. */
  readonly minutes: number;
  readonly start: number;
  readonly end: number;
  /** Why it is less sure than it reads. */
  readonly reason?: "time-range" | "time-vague" | "time-overnight" | "time-each-side";
}

/** Longest time that a step of a dish is believed to take: 30 days, as for a pickle. */
const MOST_MINUTES = 30 * 24 * 60;
/** What a night is reckoned with: eight hours. Common practice, no source. */
const NIGHT_MINUTES = 480;

const TIME = new RegExp(
  `(?<from>${NUMBER})(?:\\s*(?:-|–|—|to|or)\\s*(?<to>${NUMBER}))?[\\s-]*(?:more |further |full |whole |good )?` +
    "(?<unit>seconds?|secs?|minutes?|mins?|hours?|hrs?|hr|h|m|days?)(?![a-zà-ÿ\\d])(?<half>\\s+and a half\\b)?" +
    "(?<sides>\\s*(?:,? ?(?:per|each|on each|a|on both) ?sides?|(?:on )?each side))?" +
    "|(?<hours>\\d{1,2})h(?<rest>\\d{2})(?:m|mins?)?(?!\\w)|\\b(?<night>overnight)\\b",
  "giu",
);

/** What stands before or after a time that tells when or how often, not how long. */
const NOT_LONG = /\b(?:every|within|once|last|final|after the first)\s*$/i;
const NOT_LONG_AFTER = /^\s*(?:before|earlier|ahead|old\b|apart)/i;
/** "Let stand 10 minutes before serving" tells how long, since something waits; "add 5 minutes before the end" tells when. */
const WAITS =
  /\b(?:for|stand|rest|cool|sit|let|leave|chill|set aside|prove|rise|soak|marinate|refrigerate|freeze)\b[^.;]{0,40}$/i;
/** What stands between the hours and the minutes of one time, and between the ends of a range told in full. */
const GOES_ON = /^\.?\s*(?:,|and|,\s*and)?\s*$/i;
const UP_TO = /^\.?\s*(?:-|–|to|or)\s*$/i;

const SIZES: readonly [RegExp, number][] = [
  [/^s/i, 1 / 60],
  [/^m/i, 1],
  [/^h/i, 60],
  [/^d/i, 24 * 60],
];

/** The lengths of time that a text tells, in its order. "Every 5 minutes" and "10 minutes before" are none. */
export function readTimes(text: string): TimeFound[] {
  const times: (TimeFound & { readonly sizeMinutes: number })[] = [];
  for (const match of text.matchAll(TIME)) {
    const groups = match.groups as Readonly<Record<string, string | undefined>>;
    const time = { ...readMatch(groups), start: match.index, end: match.index + match[0].length };
    const before = times.at(-1);
    const between = before === undefined ? undefined : text.slice(before.end, time.start);
    if (
      before !== undefined &&
      between !== undefined &&
      before.sizeMinutes > time.sizeMinutes &&
      GOES_ON.test(between)
    ) {
      times[times.length - 1] = { ...before, minutes: before.minutes + time.minutes, end: time.end };
    } else if (before !== undefined && between !== undefined && UP_TO.test(between) && time.minutes >= before.minutes) {
      times[times.length - 1] = { ...time, start: before.start, reason: "time-range" };
    } else times.push(time);
  }
  return times
    .filter(({ start, end, minutes }) => isLength(text, start, end) && minutes > 0 && minutes <= MOST_MINUTES)
    .map(({ sizeMinutes, ...time }) => time);
}

function isLength(text: string, start: number, end: number): boolean {
  if (NOT_LONG.test(text.slice(Math.max(0, start - 20), start))) return false;
  const [, after] = /^\s*(before)?/i.exec(text.slice(end, end + 12)) ?? [];
  if (after !== undefined && WAITS.test(text.slice(Math.max(0, start - 60), start))) return true;
  return !NOT_LONG_AFTER.test(text.slice(end, end + 12));
}

/** The minutes of a match; NaN where a number in it is none. */
function readMatch(groups: Readonly<Record<string, string | undefined>>): {
  readonly minutes: number;
  readonly sizeMinutes: number;
  readonly reason?: NonNullable<TimeFound["reason"]>;
} {
  const { from, to, unit, half, sides, hours, rest, night } = groups;
  if (night !== undefined) return { minutes: NIGHT_MINUTES, sizeMinutes: 1, reason: "time-overnight" };
  if (hours !== undefined) return { minutes: Number(hours) * 60 + Number(rest), sizeMinutes: 1 };
  const sizeMinutes = SIZES.find(([pattern]) => pattern.test(unit as string))?.[1] as number;
  const value = (toNumber((to ?? from) as string) ?? Number.NaN) + (half === undefined ? 0 : 0.5);
  const minutes = value * sizeMinutes * (sides === undefined ? 1 : 2);
  if (to !== undefined) return { minutes, sizeMinutes, reason: "time-range" };
  if (sides !== undefined) return { minutes, sizeMinutes, reason: "time-each-side" };
  return isVague(from as string) ? { minutes, sizeMinutes, reason: "time-vague" } : { minutes, sizeMinutes };
}

const ISO =
  /^\s*-?P(?:(\d+(?:[.,]\d+)?)Y)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)W)?(?:(\d+(?:[.,]\d+)?)D)?(?:T(?:(\d+(?:[.,]\d+)?)H)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)S)?)?\s*$/i;

/**
 * The minutes of a time that stands for itself: an ISO 8601 duration ("PT1H30M", also with fractions), a text ("about 1 hour
 * 15 minutes", "1:15"), or bare minutes. Undefined for none, for zero, and for what is no length of time; a calendar's
 * years and months are none. **Source**: ISO 8601-1:2019, 5.5.2.
 */
export function readDuration(text: string): number | undefined {
  const short = text.slice(0, 100);
  const iso = ISO.exec(short);
  const clock = /^\s*(\d{1,2}):(\d{2})(?::\d{2})?\s*$/.exec(short);
  const bare = /^\s*(\d{1,4})\s*$/.exec(short);
  const minutes = iso
    ? minutesOfIso(iso)
    : clock
      ? Number(clock[1]) * 60 + Number(clock[2])
      : bare
        ? Number(bare[1])
        : sumOf(readTimes(short).map((time) => time.minutes));
  return minutes !== undefined && minutes > 0 && minutes <= MOST_MINUTES ? minutes : undefined;
}

function minutesOfIso([, years, months, ...parts]: readonly (string | undefined)[]): number | undefined {
  const values = [years, months, ...parts].map((part) => Number((part ?? "0").replace(",", ".")));
  if (values[0] !== 0 || values[1] !== 0) return undefined;
  const sizes = [0, 0, 7 * 24 * 60, 24 * 60, 60, 1, 1 / 60];
  return sumOf(values.map((value, at) => value * (sizes[at] as number)));
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
