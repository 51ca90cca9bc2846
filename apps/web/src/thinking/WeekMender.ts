import { KeptKitchen } from "@halfloaf/keep";
import { openIndexedDbStore } from "@halfloaf/keep/browser";
import {
  type ChangedKitchenWeek,
  changeRestored,
  type Kitchen,
  kitchenChanges,
  type RestoredWeek,
  replanWeek,
  restoreWeek,
  type Tables,
  type WeekChange,
  type WeekPlan,
  withOwnFoodsAndDishes,
  writeWeek,
} from "halfloaf/kitchen";
import { type AcceptedMenu, followWeek, kitchenOfMenu, menuOn } from "halfloaf/kitchen/record";
import type { ReplanOutcome } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Pack } from "halfloaf/price";
import type { CivilDate, Parsed } from "halfloaf/quantity";
import { loadTables } from "../kitchen/loadStarter.ts";
import { compareWeeks, type DishSwap, type WeekCompared } from "./compareWeeks.ts";

/** A week planned again after what came out otherwise. */
export type WeekMended =
  | ({ readonly kind: "planned" } & WeekCompared)
  /** No plan near the old one keeps every limit. */
  | { readonly kind: "none" }
  /** No accepted week has the day in it, or it does not fit the kitchen any more. */
  | { readonly kind: "unfit"; readonly codes: readonly string[] };

/** What was asked about the accepted week of a day. */
export interface MendQuestion {
  /** Database of the kitchen. */
  readonly kitchen: string;
  readonly day: CivilDate;
  readonly asked: readonly WeekChange[];
  /** What the record knows besides (`weekChanges`), as whoever asks has it before the eyes: more than is on disk, it may be. */
  readonly known: readonly WeekChange[];
  /** A pack that the kitchen does not have yet and that may be bought. */
  readonly pack?: Pack;
  /** True where an answer that changes less is worth waiting a little longer for. */
  readonly isPatient?: boolean;
}

/** Moves of the search near the old menu: enough for a week, few enough to wait for at the shelf. */
const MOVES = 12_000;
const FAR_MOVES = 30_000;

interface Ready {
  readonly menu: AcceptedMenu;
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly restored: RestoredWeek;
}

/** Plans an accepted week again. It holds the kitchen's record open for itself, so that no page has to hand it over. */
export class WeekMender {
  #open: { readonly id: string; readonly kept: KeptKitchen } | undefined;
  /** The accepted week restored last, which takes longer than all the rest. */
  #ready: Ready | undefined;

  /** Gets the accepted week of a day ready, so that the next question is answered quickly. */
  async prepare(kitchen: string, day: CivilDate): Promise<void> {
    await this.#restore(kitchen, day);
  }

  /** The kitchen that the accepted week of a day was planned with; undefined where there is none that it fits. */
  async kitchenThen(kitchen: string, day: CivilDate): Promise<Kitchen | undefined> {
    const ready = await this.#restore(kitchen, day);
    return ready.ok ? ready.value.kitchen : undefined;
  }

  async mend({ kitchen: id, day, asked, known, pack, isPatient = false }: MendQuestion): Promise<WeekMended> {
    const ready = await this.#restore(id, day, pack);
    if (!ready.ok) return { kind: "unfit", codes: ready.issues.map(({ code }) => code) };
    const { menu, kitchen, tables, restored } = ready.value;
    const change = (changes: readonly WeekChange[]) => changeRestored(kitchen, tables, restored, changes, day);
    const now = this.#open?.kept.kitchen();
    const limits = now?.ok ? kitchenChanges(kitchen, now.value.kitchen) : [];
    const followed = followWeek(change, asked, [...known, ...limits]);
    if (!followed.ok) return { kind: "unfit", codes: followed.issues.map(({ code }) => code) };
    const options = { judge: checkPlan, farMoves: FAR_MOVES, ...(!isPatient && { moves: MOVES, wideMoves: 0 }) };
    const { changed, outcome } = replanWeek(kitchen, tables, followed.value.changed, options);
    if (outcome.kind === "none") return { kind: "none" };
    const { plan, moves, moneyMinor } = outcome;
    const week = writeWeek(kitchen, tables, changed, plan, { seed: 1, moves, moneyMinor });
    return { kind: "planned", ...tellDifference(menu.week, week, changed, outcome) };
  }

  async #keep(id: string): Promise<KeptKitchen> {
    if (this.#open?.id === id) {
      await this.#open.kept.catchUp();
      return this.#open.kept;
    }
    await this.#open?.kept.close();
    this.#open = undefined;
    const openChannel = (name: string) => new BroadcastChannel(name);
    const opened = await openIndexedDbStore(id, { indexedDB, openChannel }, true);
    if (!opened.ok) throw new Error(opened.detail);
    const tables = await loadTables();
    const kept = await KeptKitchen.open(opened.store, { foods: tables.foods, device: "thinker" });
    if ("ok" in kept) throw new Error(kept.detail);
    this.#open = { id, kept };
    return kept;
  }

  async #restore(id: string, day: CivilDate, pack?: Pack): Promise<Parsed<Ready>> {
    const kept = await this.#keep(id);
    const { state } = kept.events;
    const menu = menuOn(state, day);
    if (menu === undefined) return refuse("no-week");
    if (pack === undefined && this.#ready?.menu.event === menu.event) return { ok: true, value: this.#ready };
    const starter = await loadTables();
    const rows = { events: kept.events.events, edits: kept.edits.all() };
    const then = kitchenOfMenu(menu, state.menus, rows, starter);
    const kitchen = pack === undefined ? then : { ...then, packs: [...then.packs, pack] };
    const tables = withOwnFoodsAndDishes(starter, kitchen);
    const restored = restoreWeek(kitchen, tables, menu.week);
    if (!restored.ok) return restored;
    const ready = { menu, kitchen, tables, restored: restored.value };
    if (pack === undefined) this.#ready = ready;
    return { ok: true, value: ready };
  }
}

function refuse(code: string): Parsed<never> {
  return { ok: false, issues: [{ code, path: [], expected: "an accepted week", received: "none" }] };
}

function tellDifference(
  before: WeekPlan,
  week: WeekPlan,
  { stated, week: { problem } }: ChangedKitchenWeek,
  { changes }: Extract<ReplanOutcome, { kind: "planned" }>,
): WeekCompared {
  const dishes = changes.flatMap(({ sitting, from, to, why }): DishSwap[] => {
    const at = stated.sittings[sitting];
    const [was, is] = [from, to].map((dish) => problem.dishes[dish]?.id);
    if (at === undefined || was === undefined || is === undefined) return [];
    const dearer = why.kind === "dearer" && { byMinor: Math.round(why.byMinor) };
    return [{ date: at.date, sitting: at.kind, from: was, to: is, why: why.kind, ...dearer }];
  });
  return { ...compareWeeks(before, week), kept: dishes.length === 0, dishes };
}
