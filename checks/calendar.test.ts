import { listCookings, sittingKitchen, solveCooking, stopAfter, toWorkProblem } from "halfloaf/kitchen";
import { type Calendar, type SheetWords, toCalendar, writeCalendar, zoneClock } from "halfloaf/sheet";
import { findWeek } from "halfloaf/sheet/testing";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";

/** **Source**: RFC 5545, through the independent parser ical.js. */
const STAMP = "20261129T120000Z";

const text = (...parts: readonly unknown[]) => parts.join(", ");
const WORDS = {
  calendar: {
    name: String,
    cook: String,
    cookDish: text,
    trip: text,
    tripLine: text,
    tripTill: text,
    begin: text,
    useUp: text,
    useUpNote: "label first",
  },
  figures: { count: String, mass: String, minutes: String, money: String },
} as unknown as SheetWords;

const source = findWeek("port-ansel");

function parse(calendar: Calendar): ICAL.Component {
  const root = new ICAL.Component(ICAL.parse(writeCalendar(calendar)));
  ICAL.TimezoneService.reset();
  for (const each of root.getAllSubcomponents("vtimezone")) ICAL.TimezoneService.register(new ICAL.Timezone(each));
  return root;
}

function eventsOf(root: ICAL.Component): ICAL.Event[] {
  return root.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
}

describe("the calendar of a week", () => {
  const entries = toCalendar(source, WORDS);
  const calendar: Calendar = { name: "Port Ansel", entries, zone: "Europe/Berlin", stamp: STAMP };
  const events = eventsOf(parse(calendar));

  test("the parser gives back every entry: id, summary, description, place, reminder", () => {
    expect(events).toHaveLength(entries.length);
    events.forEach((event, at) => {
      const {
        uid,
        summary,
        description = null,
        location = null,
        remindMinutes,
      } = entries[at] as (typeof entries)[number];
      expect([event.uid, event.summary, event.description, event.location]).toEqual([
        uid,
        summary,
        description,
        location,
      ]);
      const trigger = event.component.getFirstSubcomponent("valarm")?.getFirstPropertyValue("trigger");
      const seconds = trigger instanceof ICAL.Duration ? trigger.toSeconds() : undefined;
      expect(seconds === undefined ? undefined : -seconds / 60).toBeCloseTo(remindMinutes as number, 6);
    });
  });

  test("cookings, trips and last days are all there, and ids are each given once and stay the same", () => {
    const kinds = new Set(entries.map(({ uid }) => uid.split("-")[0]));
    for (const kind of ["cook", "trip", "use"]) expect(kinds).toContain(kind);
    expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length);
    expect(toCalendar(source, WORDS).map(({ uid }) => uid)).toEqual(entries.map(({ uid }) => uid));
  });

  test("a cooking ends when its sitting begins, by the clock of the place", () => {
    for (const event of events.filter(({ uid }) => /^cook-.*-evening/.test(uid))) {
      expect(event.endDate.toString().slice(11, 16)).toBe("19:00");
    }
  });
});

test("what is cooked at once for those who eat apart lasts as long as its order of work", () => {
  const six = findWeek("six-flat");
  const { week, kitchen, tables } = six;
  const shared = listCookings(week, kitchen, tables).filter(({ batches }) => batches.length > 1);
  expect(shared.length).toBeGreaterThan(0);
  const entries = toCalendar(six, WORDS);
  for (const { date, sitting, packed, dishes } of shared) {
    const stated = toWorkProblem({ ...sittingKitchen(kitchen, tables), dishes });
    if (!stated.ok) throw new Error("the kit does not suffice");
    const outcome = solveCooking(stated.cooking, { shouldStop: stopAfter(200), until: "keeping" });
    if (outcome.kind !== "timed") throw new Error("no order of work");
    const entry = entries.find(({ uid }) => uid.startsWith(`cook-${date}-${sitting}${packed ? "-packed" : ""}@`));
    expect(entry?.forMinutes).toBe(Math.max(1, outcome.timed.plan.serveMinutes));
  }
});

describe("time zones", () => {
  const at = (date: string, atMinutes: number) => ({
    uid: `${date}-${atMinutes}@test`,
    date,
    atMinutes,
    forMinutes: 30,
    summary: "x",
  });
  /** Around both changes of the clock of 2026 in Europe and in the United States, and where there is none. */
  const days = [
    "2026-03-07",
    "2026-03-08",
    "2026-03-28",
    "2026-03-29",
    "2026-07-01",
    "2026-10-25",
    "2026-10-31",
    "2026-11-01",
  ];

  test.each(["Europe/Berlin", "America/New_York", "Asia/Kolkata", "Australia/Lord_Howe", "UTC"])(
    "in %s the parser reckons each moment by the zone in the text as the system does by its own database",
    (zone) => {
      const clock = zoneClock(zone);
      if (clock === undefined) throw new Error(`${zone} is not known here`);
      const entries = days.flatMap((date) => [at(date, 7 * 60 + 30), at(date, 19 * 60)]);
      const events = eventsOf(parse({ name: "zones", entries, zone, stamp: STAMP }));
      events.forEach((event, place) => {
        const { date, atMinutes } = entries[place] as (typeof entries)[number];
        const unixS = event.startDate.convertToZone(ICAL.Timezone.utcTimezone).toUnixTime();
        expect(event.startDate.toString().slice(0, 16)).toBe(
          `${date}T${String(Math.floor(atMinutes / 60)).padStart(2, "0")}:${String(atMinutes % 60).padStart(2, "0")}`,
        );
        const shown = new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short", timeStyle: "short" });
        expect(shown.format(unixS * 1000)).toBe(event.startDate.toString().slice(0, 16).replace("T", " "));
      });
    },
  );

  test("the clock of Berlin goes forward on 29 March 2026 and back on 25 October: a day of 23 hours, a day of 25", () => {
    const clock = zoneClock("Europe/Berlin");
    const minutes = (from: string, to: string) => {
      const [a, b] = [from, to].map((day) => clock?.toUtc(Date.parse(`${day}T00:00Z`) / 60_000) ?? 0);
      return (b as number) - (a as number);
    };
    expect(minutes("2026-03-29", "2026-03-30")).toBe(23 * 60);
    expect(minutes("2026-10-25", "2026-10-26")).toBe(25 * 60);
  });
});

describe("the text", () => {
  const summary = 'Fish; chips, "\\n" \\ and a very long line of beans '.concat(
    "שלום עולם é 🍞 ".repeat(12),
    "\nsecond line",
  );
  const entry = { uid: "a@test", date: "2026-12-01", summary };
  const written = writeCalendar({ name: "text", entries: [entry], stamp: STAMP });

  test("no line is longer than 75 octets, each ends in CR LF, and none is cut within a letter", () => {
    const lines = written.split("\r\n");
    expect(lines.at(-1)).toBe("");
    for (const line of lines) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\n\r\ufffd]/);
    }
  });

  test("signs that mean something in a calendar, other scripts and breaks come back as they were", () => {
    const [event] = eventsOf(parse({ name: "text", entries: [entry], stamp: STAMP }));
    expect(event?.summary).toBe(summary);
    expect(event?.startDate.isDate).toBe(true);
  });
});
