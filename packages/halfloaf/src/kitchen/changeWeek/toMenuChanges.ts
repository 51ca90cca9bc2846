import type { MenuChange } from "../../menu/index.ts";
import { daysBetween, type Issue, type Parsed } from "../../quantity/index.ts";
import { hindranceAt } from "../hindranceAt.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { nameLot, type RestoredWeek, weekIssue } from "./restoreWeek.ts";
import type { SittingName, WeekChange } from "./WeekChange.ts";

/** What one change of a week is for its problem, with its position in the list. */
export interface AskedChange {
  readonly at: number;
  readonly menu: readonly MenuChange[];
}

interface Context {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly before: RestoredWeek;
}

/** The sittings of a name, in order of time. */
export function findSittings({ sittings }: KitchenProblem, { date, kind, eater }: SittingName): number[] {
  return sittings.flatMap((sitting, k) => {
    const isMeant = !sitting.putBy && sitting.date === date && sitting.kind === kind;
    return isMeant && (eater === undefined || sitting.eaters.includes(eater)) ? [k] : [];
  });
}

/** The changes in the indices of the week as it was kept; every name that leads nowhere is an issue. */
export function toMenuChanges(
  kitchen: Kitchen,
  tables: Tables,
  before: RestoredWeek,
  changes: readonly WeekChange[],
): Parsed<readonly AskedChange[]> {
  const issues: Issue[] = [];
  const asked = changes.flatMap((change, at): AskedChange[] => {
    const menu = translate(change, { kitchen, tables, before });
    if ("code" in menu) issues.push({ ...menu, path: ["changes", at] });
    return "code" in menu ? [] : [{ at, menu }];
  });
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: joinAbsences(changes, asked) };
}

function translate(change: WeekChange, context: Context): readonly MenuChange[] | Issue {
  const { stated, plan } = context.before;
  switch (change.kind) {
    case "refuse": {
      if (!isDish(change.dish, context)) return weekIssue("dish-unknown", [], "a dish of the kitchen", change.dish);
      return allOf(stated.problem.dishes, change.dish).map((dish) => ({ kind: "refuse", dish }));
    }
    case "came":
    case "went":
    case "kitchen":
    case "short":
      // The stated week has the first among its lots already, the last in its cookings, and the others in its limits and dishes.
      return [];
    case "want":
      return wish(change, context);
    case "price":
    case "gone": {
      const packs = stated.packs.flatMap((pack, at) => (pack.id === change.pack ? [at] : []));
      if (packs.length === 0) return weekIssue("pack-unknown", [], "a pack that these days can use", change.pack);
      // Where the price changed before, only the last of them is still for sale.
      const pack = packs.at(-1) as number;
      if (change.kind === "price") return [{ kind: "price", pack, priceMinor: change.priceMinor }];
      return packs.map((each) => ({ kind: "gone", pack: each }));
    }
    case "skip":
      return skip(change, context);
    case "guest": {
      const [sitting, another] = findSittings(stated, change.at);
      if (sitting === undefined) return noSitting(change.at);
      if (another !== undefined)
        return weekIssue("sitting-ambiguous", [], "one of the sittings, by an eater", tell(change.at));
      return [{ kind: "guest", sitting, portions: change.portions }];
    }
    case "bought": {
      const lot = nameLot(change.lot, stated, plan);
      if (lot === undefined || "stock" in lot)
        return weekIssue("lot-unknown", [], "a pack that the week buys", change.lot);
      return [{ kind: "bought", purchase: lot.purchase }];
    }
    case "off": {
      const lot = nameLot(change.lot, stated, plan);
      if (lot === undefined) return weekIssue("lot-unknown", [], "a lot of the week", change.lot);
      const { massG, lastDate } = change;
      const lastDay = lastDate === undefined ? undefined : daysBetween(stated.from, lastDate);
      return [{ kind: "off", lot, ...(massG !== undefined && { massG }), ...(lastDay !== undefined && { lastDay }) }];
    }
  }
}

function allOf(list: readonly { readonly id: string }[], id: string): number[] {
  return list.flatMap((each, at) => (each.id === id ? [at] : []));
}

function isDish(id: string, { tables }: Context): boolean {
  return tables.dishes.some((dish) => dish.id === id);
}

/** Where several sittings bear the name, those that the dish fits have the wish. */
function wish(change: Extract<WeekChange, { kind: "want" }>, context: Context): readonly MenuChange[] | Issue {
  const { problem } = context.before.stated;
  const dish = context.tables.dishes.find(({ id }) => id === change.dish);
  if (dish === undefined) return weekIssue("dish-unknown", [], "a dish of the kitchen", change.dish);
  const sittings = findSittings(context.before.stated, change.at);
  if (sittings.length === 0) return noSitting(change.at);
  const wishes = sittings.flatMap((sitting): MenuChange[] => {
    const way = problem.sittings[sitting]?.dishes.find((each) => problem.dishes[each]?.id === change.dish);
    return way === undefined ? [] : [{ kind: "wish", sitting, dish: way }];
  });
  if (wishes.length > 0) return wishes;
  const { kitchen, tables, before } = context;
  const hindrances = sittings.map((k) => hindranceAt(kitchen, tables, before.stated, k, dish));
  return hindrances.some((hindrance) => hindrance?.reason === "begun-before")
    ? weekIssue("begun-before", [], "a dish that can still be begun in time", change.dish)
    : weekIssue("dish-unfit", [], "a dish that fits the sitting", change.dish);
}

function skip(
  { at }: Extract<WeekChange, { kind: "skip" }>,
  { before, kitchen }: Context,
): readonly MenuChange[] | Issue {
  if (at.eater !== undefined && !kitchen.eaters.some(({ id }) => id === at.eater))
    return weekIssue("eater-unknown", [], "an eater of the kitchen", at.eater);
  const sittings = findSittings(before.stated, at);
  if (sittings.length === 0) return noSitting(at);
  if (at.eater === undefined) return [{ kind: "skip", sittings }];
  const share = before.stated.shares.find(({ eater }) => eater.id === at.eater);
  const index = before.profileOf.get(at.eater);
  const profile = index === undefined ? {} : { profile: { index, eaters: 1 } };
  return [{ kind: "skip", sittings, absent: { portions: share?.portions ?? 1, ...profile } }];
}

function noSitting(at: SittingName): Issue {
  return weekIssue("sitting-unknown", [], "a sitting of the week", tell(at));
}

function tell({ date, kind, eater }: SittingName): string {
  return `${date}:${kind}${eater === undefined ? "" : `:${eater}`}`;
}

/** All absences of one eater become one, as they make one profile of their own. */
function joinAbsences(changes: readonly WeekChange[], asked: readonly AskedChange[]): AskedChange[] {
  const first = new Map<string, number>();
  const sittingsOf = new Map<number, readonly number[]>();
  const joined = asked.filter(({ at, menu: [own] }) => {
    const change = changes[at] as WeekChange;
    const eater = change.kind === "skip" ? change.at.eater : undefined;
    if (eater === undefined || own?.kind !== "skip") return true;
    const owner = first.get(eater) ?? at;
    first.set(eater, owner);
    sittingsOf.set(owner, [...new Set([...(sittingsOf.get(owner) ?? []), ...own.sittings])]);
    return owner === at;
  });
  return joined.map(({ at, menu }) => {
    const sittings = sittingsOf.get(at);
    return { at, menu: menu.map((each) => (each.kind === "skip" && sittings ? { ...each, sittings } : each)) };
  });
}
