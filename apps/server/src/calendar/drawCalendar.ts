import { foodName } from "halfloaf/food";
import { type Tables, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import {
  type AcceptedMenu,
  type Edit,
  type EditedKitchen,
  EditLog,
  kitchensOfMenus,
  menuOn,
  parseEdit,
  parseEvent,
  type RecordEvent,
  RecordLedger,
} from "halfloaf/kitchen/record";
import { addDays, type CivilDate } from "halfloaf/quantity";
import {
  type CalendarEntry,
  type CalendarSpeech,
  fromCalendarTemplates,
  toCalendar,
  type WeekSource,
  writeCalendar,
  zoneClock,
} from "halfloaf/sheet";
import type { Manner } from "./Manner.ts";

/** So many days before today and from today on are in a calendar. */
const DAYS = { before: 14, from: 35 };

const MINUTE_MS = 60_000;

/** What a calendar is drawn from: the rows of a kitchen's log as their texts, at a moment. */
export interface CalendarAsk {
  readonly rows: readonly string[];
  readonly manner: Manner;
  readonly nowMs: number;
}

/**
 * The accepted weeks of a kitchen around today, as iCalendar. Each day shows the week that rules it, so that a day planned anew
 * stands there once. Without an accepted week it is an empty calendar. **Source**: RFC 5545.
 */
export function drawCalendar({ rows, manner, nowMs }: CalendarAsk, starter: Tables): string {
  const { events, edits } = readRows(rows);
  const log = new EditLog();
  log.add(edits);
  const read = log.kitchen();
  const speech = toSpeech(manner);
  const edited = read.ok ? read.value.kitchen : undefined;
  const entries =
    edited === undefined ? [] : listEntries({ events, edits }, edited, starter, { manner, nowMs }, speech);
  const stamp = new Date(nowMs).toISOString().replace(/[-:]|\.\d+/g, "");
  return writeCalendar({ name: speech.calendar.name(edited?.name ?? ""), entries, zone: manner.zone, stamp });
}

function listEntries(
  rows: { readonly events: readonly RecordEvent[]; readonly edits: readonly Edit[] },
  edited: EditedKitchen,
  starter: Tables,
  { manner, nowMs }: Pick<CalendarAsk, "manner" | "nowMs">,
  speech: CalendarSpeech,
): CalendarEntry[] {
  const tables = withOwnFoodsAndDishes(starter, edited);
  const { state } = new RecordLedger(tables.foods, rows.events);
  const today = todayIn(manner.zone, nowMs);
  const days = Array.from({ length: DAYS.before + DAYS.from }, (_, at) => addDays(today, at - DAYS.before));
  const ruling = new Map(days.map((day) => [day, menuOn(state, day)]));
  const menus = new Set([...ruling.values()].filter((menu): menu is AcceptedMenu => menu !== undefined));
  return [...kitchensOfMenus([...menus], state.menus, rows, tables)].flatMap(([menu, kitchen]) => {
    const source: WeekSource = { week: menu.week, kitchen, tables, names: toNames(kitchen, tables, manner.language) };
    // What is begun on the evening before belongs to the week even where that evening is in none.
    return toCalendar(source, speech).filter(({ date }) => (ruling.get(date) ?? menu) === menu);
  });
}

function readRows(texts: readonly string[]) {
  const events: RecordEvent[] = [];
  const edits: Edit[] = [];
  for (const text of texts) {
    const row = JSON.parse(text) as { kind?: unknown };
    if (row.kind === "edited") {
      const read = parseEdit(row);
      if (read.ok) edits.push(read.value);
    } else {
      const read = parseEvent(row);
      if (read.ok) events.push(read.value);
    }
  }
  return { events, edits };
}

function todayIn(zone: string, nowMs: number): CivilDate {
  const utc = Math.floor(nowMs / MINUTE_MS);
  const local = zoneClock(zone)?.toLocal(utc) ?? utc;
  return new Date(local * MINUTE_MS).toISOString().slice(0, 10) as CivilDate;
}

function toNames(
  { english, eaters, shops }: WeekSource["kitchen"],
  { foods, dishes }: Tables,
  language: string,
): WeekSource["names"] {
  const titles = new Map(dishes.map(({ id, title }) => [id, title]));
  const named = new Map([...eaters, ...shops].map(({ id, name }) => [id, name]));
  return {
    dish: (id) => titles.get(id) ?? id,
    food: (id) => foodName(foods.get(id), english, language) ?? titles.get(id) ?? id,
    eater: (id) => named.get(id) ?? id,
    shop: (id) => named.get(id) ?? id,
  };
}

/** Figures are written as the language writes them; all words are the asker's own. */
function toSpeech({ language, words }: Manner): CalendarSpeech {
  const number = (options: Intl.NumberFormatOptions) => new Intl.NumberFormat(language, options);
  const grams = number({ style: "unit", unit: "gram", maximumFractionDigits: 0 });
  const minutes = number({ style: "unit", unit: "minute", maximumFractionDigits: 0 });
  const count = number({ maximumFractionDigits: 2 });
  return {
    calendar: fromCalendarTemplates(words),
    figures: {
      money: (minor, currency) => {
        const money = number({ style: "currency", currency });
        const { maximumFractionDigits: digits = 2 } = money.resolvedOptions();
        return money.format(minor / 10 ** digits);
      },
      mass: (massG) => grams.format(massG),
      minutes: (value) => minutes.format(value),
      count: (value) => count.format(value),
    },
  };
}
