import type { LedgerRow } from "@halfloaf/keep";
import { counted, tellCount, tellDayShort, tellMass, tellMoney, tellNumber, tellPortions } from "@halfloaf/words/en";
import type { LaterPart, PlateAgainst } from "halfloaf/kitchen";
import type { EventOf, RecordEvent } from "halfloaf/kitchen/record";
import type { KeepingLimit, WasteReason } from "halfloaf/stores";
import { harmless } from "../output/harmless.ts";
import type { Names } from "./Names.ts";

/** What the words about a kept kitchen need: names of all that may be spoken of. */
export interface KeepNames extends Names {
  readonly currency: string;
  /** What stands on a pack. */
  readonly pack: (id: string) => string;
  /** What is in a lot. */
  readonly lot: (id: string) => string;
}

const PLACES = { "dry-store": "dry store", fridge: "fridge", freezer: "freezer" } as const;

/** A place of the stores. */
export function tellPlace(place: keyof typeof PLACES): string {
  return PLACES[place];
}

/** What ended the time of something that has gone off. */
const ENDED: Readonly<Record<string, string>> = {
  spoilt: "went bad",
  "too-much": "too much of it",
  "not-liked": "nobody liked it",
  mishap: "it fell, burnt or got wet",
  "unopened-life": "kept past its time",
  "opened-life": "open past its time",
  "use-by": "past the use-by day on its label",
  "best-before": "past the best-before day on its label",
  thawed: "thawed past its time",
} satisfies Record<KeepingLimit | WasteReason, string>;

/** The reason of a waste: as it was said, what ended its time, or that nobody said. */
export function tellWhyWasted(why: string | undefined): string {
  if (why === undefined) return "nobody said why";
  return why === "missing" ? "found missing" : (ENDED[why] ?? harmless(why));
}

type Told = { readonly [Kind in RecordEvent["kind"]]: (event: EventOf<Kind>, names: KeepNames) => string };

const money = (minor: number, { currency }: KeepNames): string => tellMoney(minor, currency);

const TOLD: Told = {
  stocked: ({ stock }, names) => {
    const what =
      "dish" in stock
        ? `${tellPortions(stock.portions)} of ${names.dish(stock.dish)}`
        : `${tellMass(stock.massG)} of ${names.food(stock.food)}`;
    const isUnknown = "costUnknown" in stock && stock.costUnknown === true;
    const worth = isUnknown ? "what it cost is not known" : `worth ${money(stock.costMinor, names)}`;
    return `Put in the ${tellPlace(stock.place)}: ${what}, ${worth}.`;
  },
  bought: ({ food, massG, costMinor, shop, pack }, names) => {
    const what = pack === undefined ? `${names.food(food)}, ${tellMass(massG)}` : names.pack(pack);
    return `Bought ${what} for ${money(costMinor, names)}${shop === undefined ? "" : ` at ${names.shop(shop)}`}.`;
  },
  moved: ({ lot, to, part }, names) =>
    `Moved ${part === undefined ? "all of a lot" : tellMass(part.massG)} of ${names.lot(lot)} to the ${tellPlace(to)}.`,
  opened: ({ lot }, names) => `Opened ${names.lot(lot)}.`,
  used: ({ lot, massG }, names) => `Used ${tellMass(massG)} of ${names.lot(lot)}.`,
  labelled: ({ lot, useBy, bestBefore }, names) => {
    const dates = [
      ...(useBy ? [`use by ${tellDayShort(useBy)}`] : []),
      ...(bestBefore ? [`best before ${tellDayShort(bestBefore)}`] : []),
    ];
    return `The label of ${names.lot(lot)} says ${dates.length === 0 ? "no date" : dates.join(", ")}.`;
  },
  wasted: ({ lot, massG, why }, names) =>
    `Threw away ${tellMass(massG)} of ${names.lot(lot)}${why === undefined ? "" : ` (${ENDED[why] ?? harmless(why)})`}.`,
  counted: ({ lot, massG, as }, names) =>
    `Counted ${massG === 0 ? "nothing" : tellMass(massG)} of ${names.lot(lot)}${as === undefined ? "" : `; what is missing was ${as === "used" ? "used" : "thrown away"}`}.`,
  cooked: ({ dish, portions, uses, unbooked = [] }, names) => {
    const lacks = unbooked.filter(({ massG }) => massG !== undefined);
    const rest =
      lacks.length === 0
        ? ""
        : ` Not in the stores, so not in its cost: ${lacks.map(({ food, massG = 0 }) => `${tellMass(massG)} of ${names.food(food)}`).join(", ")}.`;
    return `Cooked ${tellPortions(portions)} of ${names.dish(dish)} from ${tellCount(uses.length, "lot")}.${rest}`;
  },
  begun: ({ dish, servedOn, sitting, step }, names) =>
    `${step === undefined ? "Put to thaw" : `Begun ahead (${harmless(step)})`}: ${names.dish(dish)}, for ${tellDayShort(servedOn)}, ${sitting}.`,
  eaten: ({ sitting, plates }, names) => {
    const told = plates.map(
      ({ eater, lot, massG }) =>
        `${eater === undefined ? "a guest" : names.eater(eater)} ${tellMass(massG)} of ${names.lot(lot)}`,
    );
    return `Eaten, ${sitting}: ${told.join("; ")}.`;
  },
  skipped: ({ sitting, eater }, names) =>
    `${eater === undefined ? "Nobody" : `${names.eater(eater)} did not`} ${eater === undefined ? "ate" : "eat"} here, ${sitting}.`,
  guest: ({ sitting, portions }) => `Guests, ${sitting}: ${tellPortions(portions)} more.`,
  "ate-out": ({ sitting, eater, costMinor }, names) =>
    `${eater === undefined ? "All" : names.eater(eater)} ate elsewhere, ${sitting}${costMinor === undefined ? "" : `, for ${money(costMinor, names)}`}.`,
  trip: ({ shop, fareMinor }, names) => `The way to ${names.shop(shop)} cost ${money(fareMinor, names)}.`,
  "price-seen": ({ pack, priceMinor, massG, at, offer }, names) => {
    const several = offer === undefined ? "" : `, ${offer.count} for ${money(offer.priceMinor, names)}`;
    const holds = massG === undefined ? "" : `, holding ${tellMass(massG)}`;
    return `Price seen: ${names.pack(pack)} ${money(priceMinor, names)}${several}${holds} (${harmless(at)}).`;
  },
  "at-shelf": ({ pack, shop, isThere }, names) =>
    `${names.pack(pack)} ${isThere ? "is there after all" : "was not there"}, at ${names.shop(shop)}.`,
  rated: ({ dish, points }, names) => `Rated ${names.dish(dish)} ${tellNumber(points)} of 10.`,
  "menu-accepted": ({ week }) => `Accepted the plan of ${tellCount(week.days, "day")} from ${tellDayShort(week.from)}.`,
  withdrawn: ({ events }) => `Took back ${tellCount(events.length, "entry", "entries")}.`,
};

/** One row of the record as a sentence. */
export function tellRow(row: LedgerRow, names: KeepNames): string {
  if (row.kind === "edited")
    return `${row.value === undefined ? "Took away" : "Set"} ${harmless(row.thing.replace("/", " "))}.`;
  const tell = TOLD[row.kind] as (event: RecordEvent, names: KeepNames) => string;
  return tell(row, names);
}

/** Sentences with those that come several times told once. */
export function gather(sentences: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const sentence of sentences) counts.set(sentence, (counts.get(sentence) ?? 0) + 1);
  return [...counts].map(([sentence, count]) => (count === 1 ? sentence : `${count} times: ${sentence}`));
}

const DOUBTS: Readonly<Record<string, string>> = {
  "lot-unknown": "the record knows no such lot",
  "lot-twice": "there is such a lot already",
  "gone-off": "it had gone off by then",
  "too-much": "not so much was there; count it",
  "opened-twice": "it was open already",
  "never-opened": "it is never opened as a whole",
  "same-place": "it was there already",
  refrozen: "what was thawed is not frozen again",
  "bought-twice": "this pack of the plan was bought before; undo one of the two where it was one pack",
};

/** What of an event cannot have happened as told. */
export function tellDoubt(
  { code, expected, received }: { code: string; expected: string; received: string },
  what: string,
): string {
  const why = DOUBTS[code] ?? `it should be ${harmless(expected)}, and is ${harmless(received)}`;
  return `In doubt: ${what} But ${why}.`;
}

/** Something was put where nobody knows how long it keeps. */
export function tellNotKeptThere(what: string, place: keyof typeof PLACES): string {
  return `Nobody here knows how long ${what} keeps in the ${tellPlace(place)}: no plan takes it from there. The label comes first.`;
}

/** Before what an undo took back. */
export const TAKEN_BACK = "Taken back:";

/** Before what a redo did again. */
export const DONE_AGAIN = "Done again:";

/** A lot whose record is known to be wrong. */
export function tellToCount(lot: string, shortG: number): string {
  return `Count ${lot}: ${tellMass(shortG)} more was told to have left it than was there.`;
}

/** What a count found otherwise. */
export function tellDifference(
  { lot, recordedG, countedG, costMinor }: { lot: string; recordedG: number; countedG: number; costMinor: number },
  as: "used" | "wasted" | undefined,
  names: KeepNames,
): string {
  const more = countedG > recordedG;
  const became = as === undefined ? "waste, since nobody said that it was used" : as;
  const cost = more ? "" : `, ${money(costMinor, names)} at most, booked as ${became}`;
  return `${names.lot(lot)}: ${tellMass(recordedG)} by the record, ${tellMass(countedG)} counted; ${tellMass(Math.abs(countedG - recordedG))} ${more ? "found" : "missing"}${cost}.`;
}

/** How many days are left until the last one. */
export function tellDaysLeft(daysLeft: number | undefined): string {
  if (daysLeft === undefined) return "nobody knows how long";
  if (daysLeft < 0) return "has gone off";
  if (daysLeft === 0) return "today is its last day";
  return daysLeft === 1 ? "until tomorrow" : `${daysLeft} days left`;
}

/** What came out otherwise than an accepted week takes account of, and the way to plan it again. */
export function tellNewsOfWeek(count: number, folder: string): string {
  const things = counted(count, { one: "One thing is", other: `${count} things are` });
  return `${things} otherwise than the accepted week has it: "halfloaf mend ${harmless(folder)} --accept" plans it again.`;
}

/** A day that no accepted week holds, and how to plan one; `from` where the week would not begin by itself on that day. */
export function tellNoWeekYet(folder: string, from?: string): string {
  const option = from === undefined ? "" : ` --from ${from}`;
  return `No accepted week holds this day: "halfloaf week ${harmless(folder)}${option} --accept" plans one.`;
}

/** Guests whose plates nobody told, so that what they ate still lies in the stores. */
export function tellGuestsPlates(sitting: string): string {
  return `What guests ate is not booked yet: "halfloaf sitting ${sitting} --ate guest:DISH=PORTIONS" tells it.`;
}

/** A kitchen that was changed under an accepted week, and how to let what is left of it follow. */
export function tellBehind(folder: string): string {
  return `The accepted week was planned before that: "halfloaf mend ${harmless(folder)} --accept" plans what is left of it by the kitchen as it is now.`;
}

/** A plate of the accepted week that is not for one of those who are to eat it. */
export function tellAgainst({ date, kind, dish, eater, foods }: PlateAgainst, names: Names): string {
  const within = foods.map((food) => names.food(food)).join(", ");
  return `${tellDayShort(date)}, ${kind}: ${names.dish(dish)} is not for ${names.eater(eater)}, as it has: ${within}.`;
}

/** Said with plates that are not for those who are to eat them. */
export const AGAINST_CAUTION =
  'This became known after the week was planned; "halfloaf mend" plans what is left of it by that. The label on the pack and a doctor come first.';

const LATER_NAMES: Readonly<Record<LaterPart, string>> = {
  eaters: "how much each eats and who is new",
  kit: "new kit, room for keeping and how much longer it takes with less",
  sittings: "who comes to more sittings and what is taken along",
};

/** What was changed under an accepted week that it does not follow. */
export function tellLater(parts: readonly LaterPart[]): string {
  return `The accepted week stays as it was planned for ${parts.map((part) => LATER_NAMES[part]).join(", ")}: what was set counts from the next week that is planned.`;
}

/** A file that says what is so already. */
export const NOTHING_SET = "The kitchen is as the file has it already; nothing was written.";

/** A count that agrees with the record. */
export const NOTHING_DIFFERS = "All that was counted is as the record has it.";

/** A kitchen that was settled in a folder, and what to do with it. */
export function tellSettled(
  folder: string,
  { name, startsOn, stores }: { name: string; startsOn: string; stores: readonly unknown[] },
): string[] {
  const where = harmless(folder);
  return [
    `${harmless(name)} is kept in ${where} from ${tellDayShort(startsOn)} on, with ${tellCount(stores.length, "lot")} in the stores.`,
    `Name it with --kitchen ${where} from now on, or set HALFLOAF_KITCHEN to it.`,
  ];
}

/** What was to be eaten and is not in the stores. */
export function tellShort(
  plate: { readonly dish: string; readonly portions: number } | { readonly food: string; readonly massG: number },
  names: Names,
): string {
  const what =
    "dish" in plate
      ? `${tellPortions(plate.portions)} of ${names.dish(plate.dish)}`
      : `${tellMass(plate.massG)} of ${names.food(plate.food)}`;
  return `Not in the stores, so not booked: ${what}.`;
}

/** What is spent and left of a week's money. */
export function tellBudget(
  budget: {
    readonly from: string;
    readonly to: string;
    readonly spentMinor: number;
    readonly ateOutMinor: number;
    readonly budgetMinor?: number | undefined;
    readonly leftMinor?: number | undefined;
  },
  currency: string,
): string {
  const { from, to, spentMinor, ateOutMinor, budgetMinor, leftMinor } = budget;
  const text = (minor: number): string => tellMoney(minor, currency);
  const rest =
    budgetMinor === undefined || leftMinor === undefined
      ? ""
      : ` of ${text(budgetMinor)}: ${text(Math.abs(leftMinor))} ${leftMinor < 0 ? "too much" : "left"}`;
  const out = ateOutMinor > 0 ? ` Eating elsewhere cost ${text(ateOutMinor)} besides.` : "";
  return `Paid from ${tellDayShort(from)} to ${tellDayShort(to)}: ${text(spentMinor)} ${currency}${rest}.${out}`;
}

/** Where the first acts of a kitchen come from. */
export const FROM_FILE = "From the kitchen's file";

/** No pack is known of what was asked for. */
export const NO_PACKS = "The kitchen's shops sell no pack of it.";

/** How sure a price is. */
export function tellAge(sureness: "seen" | "aged" | "estimate", ageDays: number | undefined): string {
  if (sureness === "estimate" || ageDays === undefined) return "estimate";
  const days = ageDays === 0 ? "today" : `${tellCount(ageDays, "day")} ago`;
  return sureness === "aged" ? `${days}, aged` : days;
}

/** A backup that was written. */
export function tellBackedUp(file: string, rows: number): string {
  return `Everything is in ${harmless(file)}: ${tellCount(rows, "row")}. "halfloaf restore" brings it back, here or anywhere.`;
}

/** What a file brought into a kitchen. */
export function tellRestored(file: string, folder: string, added: number, rows: number): string {
  const what = added === 0 ? "nothing that was not there already" : `${tellCount(added, "row")} of ${rows}`;
  return `${harmless(file)} brought ${what} into ${harmless(folder)}.`;
}

/** What cooking drew and cost. */
export function tellEnergyCost({ kwh, costMinor }: { kwh: number; costMinor: number }, currency: string): string {
  return `Cooking drew about ${tellNumber(kwh)} kWh, ${tellMoney(costMinor, currency)} ${currency}; an estimate, apart from the sums.`;
}

/** What would have saved a loss. */
export function tellSaving(
  saving: {
    kind: string;
    pack?: string | undefined;
    count?: number | undefined;
    savesMinor?: number | undefined;
    by?: string | undefined;
  },
  names: KeepNames,
): string {
  if (saving.kind === "smaller-pack")
    return `${saving.count ?? 1} x ${names.pack(saving.pack ?? "")} would have been enough, for ${money(saving.savesMinor ?? 0, names)} less.`;
  const by = saving.by === undefined ? "in time" : `by ${tellDayShort(saving.by)}`;
  return saving.kind === "freeze" ? `Frozen ${by} it would have kept.` : `It could have been eaten ${by}.`;
}
