import { type DayJob, jobsOfDay, listCookings, type SittingKind, USUAL_MINUTES } from "../../kitchen/index.ts";
import { addDays, type CivilDate } from "../../quantity/index.ts";
import { wholeMinutes } from "../day/toDaySheet.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { FigureWords, SheetWords } from "../words/SheetWords.ts";
import type { CalendarEntry } from "./CalendarEntry.ts";
import { DAY, dayOf, minuteOf } from "./zonedTime.ts";

/** When sittings are, in minutes after midnight; one that is not said is when it usually is. */
export type SittingTimes = Readonly<Partial<Record<SittingKind, number>>>;

/** What of the words of a sheet a calendar needs. */
export interface CalendarSpeech extends Pick<SheetWords, "calendar"> {
  readonly figures: Pick<FigureWords, "money" | "mass" | "minutes" | "count">;
}

interface CalendarParts extends WeekSource {
  readonly times: SittingTimes;
  readonly words: CalendarSpeech;
}

const [REMIND_COOKING, REMIND_TRIP, REMIND_DAY] = [15, 60, -9 * 60];
/** What would have to begin before this is begun the evening before, so long after the evening sitting. */
const [NIGHT_ENDS, AFTER_EVENING, BEGIN_MINUTES] = [6 * 60, 90, 10];

/**
 * The cookings, trips, soaks and thawings of a week, and the last days of what must be used up by then. Ids name the sitting,
 * the shop or the lot on its day and not what is eaten, so that a week planned anew takes the place of the old one.
 */
export function toCalendar(source: WeekSource, words: CalendarSpeech, times: SittingTimes = {}): CalendarEntry[] {
  const parts: CalendarParts = { ...source, times, words };
  const entries = [...cookings(parts), ...trips(parts), ...begun(parts), ...lastDays(parts)];
  const seen = new Map<string, number>();
  return entries.map((entry) => {
    const count = (seen.get(entry.uid) ?? 0) + 1;
    seen.set(entry.uid, count);
    const own = count === 1 ? entry.uid : `${entry.uid}-${count}`;
    return { ...entry, uid: `${own}@${toIdWord(source.week.kitchen)}.halfloaf` };
  });
}

/** A name in letters that an id may have; names in other scripts go by their code points. */
function toIdWord(name: string): string {
  const plain = name.normalize("NFKD").toLowerCase().replace(/\p{M}/gu, "");
  return [...plain]
    .map((letter) =>
      /[a-z0-9]/.test(letter) ? letter : /\s/.test(letter) ? "-" : `x${letter.codePointAt(0)?.toString(16)}`,
    )
    .join("");
}

function timeOf({ times }: CalendarParts, kind: SittingKind): number {
  return times[kind] ?? USUAL_MINUTES[kind];
}

function cookings(parts: CalendarParts): CalendarEntry[] {
  const { week, kitchen, tables, names, words } = parts;
  const { calendar, figures } = words;
  return listCookings(week, kitchen, tables).map(({ date, sitting, packed, batches, elapsedMinutes: allMinutes }) => {
    const cooked = batches.flatMap((at) => week.batches[at] ?? []);
    const forMinutes = Math.max(1, wholeMinutes(allMinutes));
    const begins = dayOf(minuteOf(date, timeOf(parts, sitting)) - forMinutes);
    return {
      uid: `cook-${date}-${sitting}${packed ? "-packed" : ""}`,
      date: begins.date,
      atMinutes: begins.minutes,
      forMinutes,
      summary: calendar.cook(cooked.map(({ dish }) => names.dish(dish)).join("; ")),
      description: cooked
        .map(({ dish, portions, elapsedMinutes }) =>
          calendar.cookDish(names.dish(dish), figures.count(portions), figures.minutes(wholeMinutes(elapsedMinutes))),
        )
        .join("\n"),
      remindMinutes: REMIND_COOKING,
    };
  });
}

/** A trip is home before what is first cooked for the sitting that its shop's packs are for. */
function trips(parts: CalendarParts): CalendarEntry[] {
  const { week, kitchen, names, words } = parts;
  const { calendar, figures } = words;
  return week.trips.map(({ shop: id, date, minutes, lines, tillMinor }) => {
    const shop = kitchen.shops.find((one) => one.id === id);
    const sitting = (shop?.beforeSitting ?? "evening") as SittingKind;
    const cooked = week.batches.filter((batch) => batch.date === date && batch.kind === sitting);
    const forMinutes = Math.max(1, wholeMinutes(minutes));
    const cooking = Math.max(0, ...cooked.map(({ elapsedMinutes }) => wholeMinutes(elapsedMinutes)));
    const begins = dayOf(minuteOf(date, (timeOf(parts, sitting) || USUAL_MINUTES.evening) - cooking - forMinutes));
    const money = (minor: number) => figures.money(minor, week.currency);
    return {
      uid: `trip-${date}-${id}`,
      date: begins.date,
      atMinutes: begins.minutes,
      forMinutes,
      summary: calendar.trip(names.shop(id)),
      description: [
        ...lines.map(({ count, label, priceMinor }) =>
          calendar.tripLine(figures.count(count), label, money(priceMinor)),
        ),
        calendar.tripTill(money(tillMinor)),
      ].join("\n"),
      location: names.shop(id),
      remindMinutes: REMIND_TRIP,
    };
  });
}

type Begun = Extract<DayJob, { kind: "thaw" | "soak" | "ahead" }>;

function begun(parts: CalendarParts): CalendarEntry[] {
  const { week, kitchen, tables, names, words } = parts;
  const days = Array.from({ length: week.days + 1 }, (_, day) => addDays(week.from, day - 1));
  const jobs = days.flatMap((date) => jobsOfDay(week, kitchen, tables, date));
  return (
    jobs
      .filter((job): job is Begun => job.kind === "thaw" || job.kind === "soak" || job.kind === "ahead")
      // What is to thaw at once is there already, when it should have been in the fridge.
      .filter(({ cautions }) => cautions === undefined)
      .map((job) => {
        const { kind, dish, step, foods, text } = job;
        const what = foods.length > 0 ? foods.map(names.food).join(", ") : names.dish(dish);
        return {
          uid: `${kind}-${job.date}-${job.sitting}-${dish}-${step ?? "stores"}`,
          ...whenBegun(parts, job),
          forMinutes: BEGIN_MINUTES,
          summary: words.calendar.begin(kind, what, names.dish(dish)),
          ...(text !== undefined && { description: text }),
          remindMinutes: 0,
        };
      })
  );
}

/** When it must begin at the latest; nobody gets up at night for it. */
function whenBegun(
  parts: CalendarParts,
  { date, sitting, beforeMinutes }: Begun,
): { date: CivilDate; atMinutes: number } {
  const at = dayOf(minuteOf(date, timeOf(parts, sitting)) - beforeMinutes);
  if (at.minutes >= NIGHT_ENDS) return { date: at.date, atMinutes: at.minutes };
  return {
    date: addDays(at.date, -1),
    atMinutes: Math.min(DAY - BEGIN_MINUTES, timeOf(parts, "evening") + AFTER_EVENING),
  };
}

/** Lots whose last day falls into the week, unless they are finished before it. */
function lastDays({ week, names, words }: CalendarParts): CalendarEntry[] {
  const last = addDays(week.from, week.days - 1);
  return week.lots.flatMap((lot): CalendarEntry[] => {
    const { id, food, keepsUntil } = lot;
    if (keepsUntil === undefined || keepsUntil < week.from || keepsUntil > last) return [];
    const uses = week.batches.flatMap((batch) =>
      batch.uses.filter((use) => use.lot === id).map(({ massG }) => ({ on: batch.date, massG })),
    );
    const usedBefore = uses.filter(({ on }) => on < keepsUntil).reduce((sum, { massG }) => sum + massG, 0);
    const restG = lot.massG - usedBefore;
    if (restG < 1) return [];
    return [
      {
        uid: `use-up-${id}`,
        date: keepsUntil,
        summary: words.calendar.useUp(names.food(food), words.figures.mass(restG)),
        description: words.calendar.useUpNote,
        remindMinutes: REMIND_DAY,
      },
    ];
  });
}
