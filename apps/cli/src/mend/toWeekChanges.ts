import type { Kitchen, SittingName, Tables, WeekChange, WeekPlan } from "halfloaf/kitchen";
import type { Issue } from "halfloaf/quantity";
import { findDish } from "../card/findDish.ts";
import { findPrice } from "../input/findPrice.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellUnknown } from "../words/unknownWords.ts";
import { quote, tellPath } from "../words/valueWords.ts";
import type { AskedChange } from "./parseMendOptions.ts";

interface Context {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly week: WeekPlan;
}

/** The changes that the options say, with every name looked up; all that lead nowhere come back at once. */
export function toWeekChanges(asked: readonly AskedChange[], context: Context): Found<WeekChange[]> {
  const found = asked.map((change) => toWeekChange(change, context));
  const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, value: found.flatMap((one) => (one.ok ? [one.value] : [])) };
}

function toWeekChange(change: AskedChange, context: Context): Found<WeekChange> {
  const { kitchen, tables, week } = context;
  switch (change.kind) {
    case "refuse":
    case "want": {
      const dish = findDish(change.dish, tables.dishes);
      if (!dish.ok) return dish;
      const { id } = dish.value;
      if (change.kind === "refuse") return { ok: true, value: { kind: "refuse", dish: id } };
      return checkEater(change.at, kitchen) ?? { ok: true, value: { kind: "want", at: change.at, dish: id } };
    }
    case "price": {
      const price = findPrice(change.price, kitchen.currency, change.text);
      if (!price.ok) return price;
      return findPack(change.pack, kitchen, { kind: "price", pack: change.pack, priceMinor: price.value });
    }
    case "gone":
      return findPack(change.pack, kitchen, { kind: "gone", pack: change.pack });
    case "skip":
      return checkEater(change.at, kitchen) ?? { ok: true, value: { kind: "skip", at: change.at } };
    case "guest":
      return (
        checkEater(change.at, kitchen) ?? {
          ok: true,
          value: { kind: "guest", at: change.at, portions: change.portions },
        }
      );
    case "off": {
      const lots = week.lots.map(({ id }) => id);
      if (lots.includes(change.lot)) return { ok: true, value: { kind: "off", lot: change.lot } };
      return refuse(tellUnknown("lot", change.lot, lots, "of this week"));
    }
  }
}

function checkEater({ eater }: SittingName, { eaters }: Kitchen): Found<never> | undefined {
  const ids = eaters.map(({ id }) => id);
  if (eater === undefined || ids.includes(eater)) return undefined;
  return refuse(tellUnknown("eater", eater, ids, "of this kitchen"));
}

function findPack(id: string, { packs }: Kitchen, change: WeekChange): Found<WeekChange> {
  const ids = packs.map((pack) => pack.id);
  return ids.includes(id) ? { ok: true, value: change } : refuse(tellUnknown("pack", id, ids, "of this kitchen"));
}

/** Issues of a week that can't be changed, in words: what of the file does not fit, or which change can't be made. */
export function tellChangeIssue(issue: Issue, asked: readonly AskedChange[]): Fault {
  const { code, path, expected, received } = issue;
  const change = path[0] === "changes" ? asked[Number(path[1])] : undefined;
  if (change !== undefined) {
    const { sentence, remedy } = CHANGE_WORDS[code] ?? {
      sentence: `is ${received}, wanted is ${expected}.`,
      remedy: "Change or leave out this option.",
    };
    return { code, path: [], value: quote(change.text), sentence: `${quote(change.text)} ${sentence}`, remedy };
  }
  const where = path.length === 0 ? "The week" : quote(tellPath(path));
  return {
    code,
    path: [...path],
    value: quote(received),
    sentence: `${where} is ${quote(received)}, wanted is ${expected}.`,
    remedy:
      path[0] === "today"
        ? "Name a day of the week with --today."
        : "The kitchen has changed since the week was planned: name the kitchen as it was, or plan the week anew.",
  };
}

const CHANGE_WORDS: Readonly<Record<string, { readonly sentence: string; readonly remedy: string }>> = {
  "change-cooked-already": {
    sentence: "comes too late: what is eaten there is cooked already.",
    remedy: "Name another sitting, or an earlier day with --today.",
  },
  "change-not-bought-yet": {
    sentence: "names a lot that is not at hand yet.",
    remedy: "Say with --today what day it is, or use --gone for a pack that can't be had.",
  },
  "change-at-odds": {
    sentence: "is at odds with another option for the same sitting.",
    remedy: "Give one wish for a sitting, and none where nobody eats.",
  },
  "change-dish-unfit": {
    sentence: "names a dish that is refused or does not fit the sitting and those who eat there.",
    remedy: "Want a dish that is meant for this kind of sitting and that all who eat there take.",
  },
  "dish-unfit": {
    sentence: "names a dish that does not fit the sitting and those who eat there.",
    remedy: "Want a dish that is meant for this kind of sitting, that all who eat there take and the kit allows.",
  },
  "begun-before": {
    sentence: "names a dish that would have to be begun before today.",
    remedy: "Want it at a later sitting, or say with --today what day it is.",
  },
  "sitting-unknown": {
    sentence: "names no sitting of this week.",
    remedy: "Look up day, kind and eaters in the menu of the week.",
  },
  "sitting-ambiguous": {
    sentence: "means more than one sitting.",
    remedy: "Name an eater who sits there: DATE:KIND:EATER=NUMBER.",
  },
  "pack-unknown": {
    sentence: "names a pack that no dish of these days can use.",
    remedy: "Leave it out; it changes nothing.",
  },
};
