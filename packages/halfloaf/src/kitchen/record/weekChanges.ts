import { addDays, type CivilDate } from "../../quantity/index.ts";
import { MASS_TOLERANCE_G } from "../../stores/index.ts";
import { isGuest } from "../changeWeek/isGuest.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { besidesWeek, lossesIn } from "./besidesWeek.ts";
import { boughtEarly } from "./boughtEarly.ts";
import { portionsAtHand } from "./portionsAtHand.ts";
import { keyOfPlanned, keyOfSitting, type RecordState } from "./recordState.ts";
import { tripsBesides } from "./tripsBesides.ts";

/**
 * What came out otherwise than an accepted week took it to be, for `changeWeek`: sittings at which somebody does not eat
 * here or guests do, packs at other prices or not at the shelf, lots that went off, are missing, never came home or
 * have an earlier day on their label, cooked portions that are not there, lots that came besides or before their trip, trips made besides. What was
 * bought or cooked today stays as it is. Lots have their names of the week. `today` is the first day that is not over; sittings
 * before it are past and not changed. Some of it the week may take account of already: `weekNews` are the rest.
 */
export function weekChanges(state: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  // What is told of these is told of the lots that they became.
  const early = boughtEarly(state, week, today);
  const later = { ...week, lots: week.lots.filter(({ id }) => !early.has(id)) };
  return [
    ...sittingChanges(state, week, today),
    ...doneToday(state, week, today),
    ...priceChanges(state, week, today),
    ...besidesWeek(state, week, today),
    ...missingChanges(state, week, today),
    ...lossChanges(state, later),
    ...labelChanges(state, later),
    ...shortChanges(state, week, today),
    ...tripsBesides(state, week, today).map((visit) => ({ kind: "went" as const, ...visit })),
  ];
}

type Done = Partial<Pick<RecordState["plates"][number], "on" | "sitting" | "dish">>;

function isAmong(list: readonly Done[], dish: string, on: CivilDate, kind: string): boolean {
  return list.some((each) => each.on === on && each.sitting === kind && each.dish === dish);
}

/** Dishes of today that are cooked or eaten, and the packs of today that came home as planned, all of a kind. */
function doneToday(
  { cookings, plates, planned, sittings }: RecordState,
  week: WeekPlan,
  today: CivilDate,
): WeekChange[] {
  const dishes = week.sittings.flatMap(({ date, kind, dish }): WeekChange[] => {
    const isEaten = isAmong(plates, dish, today, kind);
    const isLeft = !isEaten && !isAmong([...cookings.values()], dish, today, kind);
    if (date !== today || sittings.get(keyOfSitting(date, kind))?.allAway === true || isLeft) return [];
    return [{ kind: "want", at: { date, kind }, dish, done: isEaten ? "eaten" : "cooked" }];
  });
  const trips = week.trips.filter(({ date }) => date === today);
  const packs = trips.flatMap(({ lines }) =>
    lines.flatMap((line): WeekChange[] => {
      const lots = lotsOfLine(week, today, line);
      const isHome = lots.every((lot) => planned.has(keyOfPlanned(week.from, lot)));
      return isHome ? [{ kind: "bought", lot: lots[0] as string }] : [];
    }),
  );
  return [...unique(dishes), ...packs];
}

/** Where several sittings bear one name, they have one wish. */
function unique(wishes: readonly WeekChange[]): WeekChange[] {
  const known = new Set<string>();
  return wishes.filter((wish) => {
    const key = JSON.stringify(wish);
    const isNew = !known.has(key);
    known.add(key);
    return isNew;
  });
}

function sittingChanges({ sittings }: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  return [...sittings.values()].flatMap(({ on, sitting, allAway, away, guestPortions }): WeekChange[] => {
    const planned = week.sittings.filter(({ date, kind }) => date === on && kind === sitting);
    if (on < today || planned.length === 0) return [];
    const at = { date: on, kind: sitting };
    const gone = away.filter((eater) => planned.some(({ eaters }) => eaters.includes(eater)));
    const skips = allAway
      ? [{ kind: "skip" as const, at }]
      : gone.map((eater) => ({ kind: "skip" as const, at: { ...at, eater } }));
    const sitsHere = planned.flatMap(({ eaters }) => eaters).filter((eater) => !isGuest(eater));
    const seated = planned.flatMap(({ eaters }) => eaters).length - sitsHere.length;
    const more = guestPortions - seated;
    return more > 0 ? [...skips, { kind: "guest", at, portions: more }] : skips;
  });
}

/** The latest price of each pack on a list of the week, where it is another than the week took it to be. */
function priceChanges({ prices }: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  const expected = new Map(
    week.trips
      .filter(({ date }) => date >= today)
      .flatMap(({ lines }) =>
        lines.map(({ pack, priceMinor, savedMinor, count }) => [pack, (priceMinor + savedMinor) / count] as const),
      ),
  );
  const latest = new Map(prices.map(({ pack, priceMinor }) => [pack, priceMinor]));
  return [...expected].flatMap(([pack, shelfMinor]): WeekChange[] => {
    const priceMinor = latest.get(pack);
    return priceMinor === undefined || priceMinor === shelfMinor ? [] : [{ kind: "price", pack, priceMinor }];
  });
}

/**
 * What was not there on the trips of these days: a pack of a trip that is not over is not to be had, and the lots that it was to
 * become on one that is are not there.
 */
function missingChanges({ missing, planned }: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  const last = addDays(week.from, week.days - 1);
  const told = [...missing.values()].filter(({ trip }) => trip >= week.from && trip <= last);
  const gone = new Set(told.flatMap(({ trip, pack }) => (trip >= today ? [pack] : [])));
  const over = told.filter(({ trip }) => trip < today);
  const lots = week.trips.flatMap(({ date, shop, lines }) =>
    lines
      .filter((line) => over.some(({ trip, pack, ...at }) => trip === date && at.shop === shop && pack === line.pack))
      .flatMap((line) => lotsOfLine(week, date, line)),
  );
  return [
    ...[...gone].map((pack) => ({ kind: "gone" as const, pack })),
    ...lots.flatMap((lot): WeekChange[] => (planned.has(keyOfPlanned(week.from, lot)) ? [] : [{ kind: "off", lot }])),
  ];
}

/**
 * What was thrown away or found missing of the week's lots before their time, beyond what the week says of that: what it
 * wastes of a lot that keeps to its end is a loss told before, the rest is what goes off by itself.
 */
function lossChanges(state: RecordState, week: WeekPlan): WeekChange[] {
  const lastDay = addDays(week.from, week.days - 1);
  return week.lots.flatMap(({ id, wastedG, keepsUntil = lastDay }): WeekChange[] => {
    const lot = state.lots.get(state.planned.get(keyOfPlanned(week.from, id)) ?? id);
    const toldG = keepsUntil >= lastDay ? wastedG : 0;
    const massG = (lot === undefined ? 0 : lossesIn(lot, week, keepsUntil).massG) - toldG;
    return massG <= MASS_TOLERANCE_G ? [] : [{ kind: "off", lot: id, massG }];
  });
}

/**
 * Sittings that were to eat of what was cooked before today, and of whose portions too little is there: less was cooked, or it was
 * eaten or thrown away. In order of time each takes what those before it left; a tenth less is not missed.
 */
function shortChanges(state: RecordState, week: WeekPlan, today: CivilDate): WeekChange[] {
  const { cookings, plates, sittings } = state;
  const left = new Map<string, number>();
  const take = (dish: string, portions: number): number => {
    const there = left.get(dish) ?? 0;
    left.set(dish, there - portions);
    return there;
  };
  for (const { dish, portions } of portionsAtHand(state, today)) take(dish, -portions);
  const toCome = week.sittings.filter(({ date, kind, dish, batch }) => {
    const of = week.batches[batch];
    if (of === undefined || date < today || of.date >= today) return false;
    const isCooked = isAmong([...cookings.values()], dish, of.date, of.kind);
    return isCooked && !isAmong(plates, dish, date, kind) && !sittings.get(keyOfSitting(date, kind))?.allAway;
  });
  return toCome.flatMap(({ date, kind, dish, portions, eaters }): WeekChange[] => {
    return take(dish, portions) >= 0.9 * portions
      ? []
      : [{ kind: "short", at: { date, kind, eater: eaters[0] as string }, dish }];
  });
}

/** Lots whose label ends them earlier than the week took them to keep. */
function labelChanges({ lots, planned }: RecordState, week: WeekPlan): WeekChange[] {
  const lastDay = addDays(week.from, week.days - 1);
  return week.lots.flatMap(({ id, keepsUntil = lastDay }): WeekChange[] => {
    const keeps = lots.get(planned.get(keyOfPlanned(week.from, id)) ?? id)?.keeps;
    if (!keeps?.ok || (keeps.because !== "use-by" && keeps.because !== "best-before")) return [];
    const isEarly = keeps.on < keepsUntil && keeps.on < lastDay;
    return isEarly ? [{ kind: "off", lot: id, lastDate: keeps.on }] : [];
  });
}
