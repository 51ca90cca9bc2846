import { type CivilDate, weekday } from "../../quantity/index.ts";
import { type DatedSitting, datedSittings } from "../datedSittings.ts";
import type { Eater } from "../kitchen.ts";
import type { KitchenNow, WeekChange } from "./WeekChange.ts";

/** Parts of a kitchen that a week under way does not follow, or not whole: they count from the next week that is planned afresh. */
export type LaterPart = "eaters" | "kit" | "sittings";

/**
 * The change that a week planned in one kitchen has to follow in another: none where its limits are the same, its eaters take the
 * same foods, of which it knows the same, all of the kit is there with the same pot, and all who sat down still do, with the same minutes and heat.
 */
export function kitchenChanges(then: KitchenNow, { eaters, foods, kit, limits, sittings }: KitchenNow): WeekChange[] {
  const now = { eaters, foods, kit, limits, sittings };
  const isSame =
    tellLimits(then) === tellLimits(now) &&
    haveSameTaste(then.eaters, eaters) &&
    tellWithin(then) === tellWithin(now) &&
    hasAll(then, now) &&
    areAlike(then, now, ({ minutes, heat }) => `${minutes} ${heat}`);
  return isSame ? [] : [{ kind: "kitchen", now }];
}

/** The kitchen as it is now by the last change that says so; undefined where none does. */
export function nowOf(changes: readonly WeekChange[]): KitchenNow | undefined {
  return changes.flatMap((change) => (change.kind === "kitchen" ? [change.now] : [])).at(-1);
}

/**
 * What was changed of a kitchen that a week planned in it before does not follow: measures, new eaters, new seats, what is taken along, new
 * kit, room for keeping, and how much longer things take with less of the kit.
 */
export function listLater(then: KitchenNow, now: KitchenNow): LaterPart[] {
  const isMeasuredSo = ({ eaters }: KitchenNow, id: string): string =>
    JSON.stringify(
      eaters.map(({ name: _, diet: __, avoids: ___, ...measures }) => measures).find((one) => one.id === id),
    );
  const isGrown = now.eaters.some(({ id }) => isMeasuredSo(then, id) !== isMeasuredSo(now, id));
  const isSeated = areAlike(now, then, ({ packed }) => `${packed}`);
  return [
    ...(isGrown ? ["eaters" as const] : []),
    ...(isKitFollowed(then, now) ? [] : ["kit" as const]),
    ...(isSeated ? [] : ["sittings" as const]),
  ];
}

/** True where the eaters that are in both lists take the same foods in both. */
export function haveSameTaste(then: readonly Eater[], now: readonly Eater[]): boolean {
  return then.every((one) => {
    const other = now.find(({ id }) => id === one.id);
    return other === undefined || tellTaste(one) === tellTaste(other);
  });
}

function tellTaste({ diet, avoids }: Eater): string {
  return JSON.stringify([diet, [...avoids.allergens].sort(), [...avoids.foods].sort()]);
}

const APPLIANCES = ["oven", "microwave", "blender", "kettle"] as const;
const COUNTED = ["rings", "pans", "pots", "boards"] as const;

/** True where nothing is missing that a dish may need, and the pot takes as much. */
function hasAll({ kit: then }: KitchenNow, { kit: now }: KitchenNow): boolean {
  return (
    then.potPortions === now.potPortions &&
    APPLIANCES.every((each) => now[each] || !then[each]) &&
    COUNTED.every((each) => now[each] >= then[each])
  );
}

/** True where the kit differs in the pot alone, and in appliances that are there no more and that nothing else stands in for. */
function isKitFollowed({ kit: then }: KitchenNow, { kit: now }: KitchenNow): boolean {
  const isLost = (each: (typeof APPLIANCES)[number]): boolean => each !== "kettle" && then[each] && !now[each];
  return (
    APPLIANCES.every((each) => then[each] === now[each] || isLost(each)) &&
    [...COUNTED, "fridgeLitres" as const, "freezerLitres" as const].every((each) => then[each] === now[each])
  );
}

/** What may keep an eater from one of the kitchen's own foods. */
function tellWithin({ foods }: KitchenNow): string {
  return JSON.stringify(foods.map(({ id, diet, allergens }) => [id, diet, allergens]).sort());
}

function tellLimits({ limits }: KitchenNow): string {
  return JSON.stringify(Object.entries(limits).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** A day with which a week of every weekday begins. */
const ANY_DAY: CivilDate = "2026-01-05";

/** True where whoever sits down in one kitchen does so in the other, too, on the same weekdays, at sittings that are told alike. */
function areAlike(one: KitchenNow, other: KitchenNow, tell: (sitting: DatedSitting) => string): boolean {
  const seatsOf = (kitchen: KitchenNow): Map<string, string> => {
    const isThere = (id: string): boolean => kitchen.eaters.some((eater) => eater.id === id);
    const seats = datedSittings(kitchen, ANY_DAY, 7).flatMap((sitting) =>
      sitting.eaters.filter(isThere).map((id) => [`${id} ${sitting.day} ${sitting.kind}`, tell(sitting)] as const),
    );
    return new Map(seats);
  };
  const others = seatsOf(other);
  const own = [...seatsOf(one)];
  return own.every(([seat, told]) => others.get(seat) === told);
}

/** True where an eater of the kitchen sits down on that day at that kind of sitting. */
export function sitsDown(
  { eaters, sittings }: KitchenNow,
  id: string,
  { date, kind }: Pick<DatedSitting, "date" | "kind">,
): boolean {
  return (
    eaters.some((eater) => eater.id === id) &&
    sittings.some((each) => each.kind === kind && each.on.includes(weekday(date)) && each.eaters.includes(id))
  );
}
