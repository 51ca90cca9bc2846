import {
  changeRestored,
  type Kitchen,
  type KitchenProblem,
  restoreWeek,
  stateTogether,
  type Tables,
  toWeekPlan,
  type WeekChange,
  withOwnFoodsAndDishes,
} from "halfloaf/kitchen";
import { followWeek } from "halfloaf/kitchen/record";
import {
  type Choice,
  explainImpossible,
  frontier,
  type MenuLimit,
  type MenuPlan,
  type PackOption,
  restLimitCosts,
  type WithoutDish,
  whyDish,
  whyPack,
} from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Pack } from "halfloaf/price";
import { addDays, type CivilDate } from "halfloaf/quantity";
import { loadTables } from "../../kitchen/loadStarter.ts";
import { type DaysAsked, stateAsked } from "../../thinking/stateAsked.ts";
import { REASON_MOVES, SEED } from "./effort.ts";
import { findEarlier } from "./findEarlier.ts";
import { indexOf, type Stage } from "./Stage.ts";
import { type Serving, serve } from "./serve.ts";
import type {
  AbsenceTold,
  Against,
  ChoiceTold,
  DishReason,
  ImpossibleTold,
  Instead,
  LimitPrice,
  MoveTold,
  PackReason,
  PackWay,
  WeekAsked,
} from "./Told.ts";
import { tellGaps, toWays } from "./tellImpossible.ts";
import { tellInstead } from "./tellInstead.ts";
import { toWayOut } from "./toKnobs.ts";
import { whyAbsent } from "./whyAbsent.ts";
import { type NoneAsked, whyNone } from "./whyNone.ts";

/** Told while the answer is still looked for. */
type Tell<Answer> = (answer: Answer) => Promise<void>;

/** Moves of each step along the choices. */
const CHOICE_MOVES = 12_000;

/** Reasons for a week, and other weeks there could be. Runs in a worker of its own, which is ended to stop it. */
export class Reasoner {
  #stage: (Stage & { readonly key: string }) | undefined;

  /** Why the dish of a sitting stands there; undefined where the kitchen has become another than the week was planned for. */
  async whyDish(asked: WeekAsked, sitting: number): Promise<DishReason | undefined> {
    const { week } = asked;
    const stage = await this.#enter(asked);
    const k = stage && indexOf(stage.before.stated, week, sitting);
    if (stage === undefined || k === undefined) return undefined;
    const { stated, plan } = stage.before;
    const why = whyDish(stated.problem, plan, k, { seed: SEED, moves: REASON_MOVES });
    if (why === undefined) return undefined;
    const dishOf = (batch: number): string => stated.problem.dishes[plan.batches[batch]?.dish ?? -1]?.id ?? "";
    const instead = ({ extraMinor, found }: WithoutDish): Instead | undefined =>
      extraMinor === undefined || found === undefined ? undefined : tellInstead(stage, week, found, extraMinor);
    const [withoutHere, withoutAnywhere] = [instead(why.withoutHere), instead(why.withoutAnywhere)];
    return {
      sitting,
      shares: why.lots.map(({ food, withBatches, lot: _, ...share }) => ({
        ...share,
        food: stated.foods[food]?.id ?? "",
        withDishes: [...new Set(withBatches.map(dishOf))],
      })),
      ...(withoutHere && { withoutHere }),
      ...(withoutAnywhere && { withoutAnywhere }),
    };
  }

  /** Why a food is bought in its packs; undefined where it is not bought, or the kitchen has become another. */
  async whyPack(asked: WeekAsked, food: string): Promise<PackReason | undefined> {
    const { week } = asked;
    const stage = await this.#enter(asked);
    if (stage === undefined) return undefined;
    const { stated, plan } = stage.before;
    const at = stated.foods.findIndex(({ id }) => id === food);
    const why = whyPack(stated.problem, plan, at, { seed: SEED });
    if (why === undefined) return undefined;
    const packOf = (pack: number): string => stated.packs[pack]?.id ?? "";
    const way = ({ packs, tillMinor, leftG, wasteG, extraShops }: PackOption): PackWay => ({
      packs: packs.map(({ pack, count }) => ({ pack: packOf(pack), count })),
      tillMinor,
      leftG,
      wasteG,
      extraShops: extraShops.map((shop) => stage.kitchen.shops[shop]?.id ?? ""),
    });
    return {
      food,
      chosen: way(why.chosen),
      others: why.others.map((option) => ({
        ...way(option),
        ...tellInstead(stage, week, option.found, option.extraMinor),
      })),
      impossible: why.impossible.map(({ pack, hindrance }) => ({ pack: packOf(pack), hindrance })),
    };
  }

  /**
   * What each limit of the kitchen as it is now costs that what is left of the week comes up to, dearest first; undefined where the
   * kitchen has become another, "behind" where the week does not keep those limits yet.
   */
  async limits(asked: WeekAsked, day: CivilDate): Promise<readonly LimitPrice[] | "behind" | undefined> {
    const stage = await this.#enter(asked);
    if (stage === undefined) return undefined;
    const { kitchen, tables, before } = stage;
    const today = day > asked.week.from ? day : asked.week.from;
    const change = (changes: readonly WeekChange[]) => changeRestored(kitchen, tables, before, changes, today);
    const followed = followWeek(change, [], asked.known);
    if (!followed.ok) return undefined;
    const { stated, week } = followed.value.changed;
    const limits = restLimitCosts(week, { seed: SEED, moves: REASON_MOVES });
    return (
      limits?.map(({ reading: { limit }, step, savesMinor }) => ({
        kind: limit.kind,
        step,
        savesMinor,
        ...placeOf(limit, stated),
      })) ?? "behind"
    );
  }

  /**
   * The week with the dish of one sitting eaten at another, as near to the old one as it can be. A first answer is told
   * meanwhile; without `tell` it is all that is looked for.
   */
  async move(asked: WeekAsked, from: number, to: number, day: CivilDate, tell?: Tell<MoveTold>): Promise<MoveTold> {
    const stage = await this.#enter(asked);
    const dish = asked.week.sittings[from]?.dish;
    if (stage === undefined || dish === undefined) return { kind: "breaks" };
    return serveAtLength(stage, asked, { dish, to, from }, day, tell);
  }

  /**
   * The week with any dish of the kitchen at a sitting in place of the one there, as near to the old one as it can be; a first
   * answer is told meanwhile. Undefined where the kitchen has become another than the week was planned for.
   */
  async want(
    asked: WeekAsked,
    { dish, to }: Serving,
    day: CivilDate,
    tell: Tell<MoveTold>,
  ): Promise<MoveTold | undefined> {
    const stage = await this.#enter(asked);
    return stage && serveAtLength(stage, asked, { dish, to }, day, tell);
  }

  /**
   * Why a dish is on no plate of the week, told sitting by sitting; undefined where the kitchen has become another than the week
   * was planned for.
   */
  async whyNotThere(asked: WeekAsked, dish: string, tell: Tell<AbsenceTold>): Promise<AbsenceTold | undefined> {
    const stage = await this.#enter(asked);
    if (stage === undefined) return undefined;
    let told: AbsenceTold | undefined;
    for (told of whyAbsent(stage, asked.week, dish)) await tell(told);
    return told;
  }

  /** Why no plan was found for these days, and how little would have to give way. */
  async explain(kitchen: Kitchen, asked: DaysAsked): Promise<ImpossibleTold> {
    const tables = await tablesOf(kitchen);
    const stated = stateAsked(kitchen, tables, asked);
    const why = explainImpossible(stated.problem, { seed: SEED });
    if (why.kind === "gaps") {
      const earlier = findEarlier(why.gaps, { kitchen, tables, asked }, stated);
      return { ...tellGaps(why.gaps, kitchen, stated), ...(earlier && { earlier }) };
    }
    if (why.kind === "possible") {
      const { plan, moneyMinor } = why.found;
      const search = { seed: SEED, moves: why.moves, moneyMinor };
      return { kind: "possible", week: toWeekPlan(kitchen, tables, stated, plan, search) };
    }
    const { collisions, onlyWholePacks } = why;
    const ways = toWays(why, ({ excesses, found }) => ({
      ...toWayOut(excesses, kitchen, stated),
      week: toWeekPlan(kitchen, tables, stated, found.plan, {
        seed: SEED,
        moves: why.moves,
        moneyMinor: found.moneyMinor,
      }),
    }));
    return { kind: "collision", collisions, onlyWholePacks, ways };
  }

  /**
   * Why the week could not be planned again after these changes, and how little would have to give way; with `pack` one that the
   * kitchen does not have yet may be bought. Undefined where the kitchen has become another than the week was planned for.
   */
  async explainRest(asked: WeekAsked, none: NoneAsked, pack?: Pack): Promise<ImpossibleTold | undefined> {
    const kitchens = asked.kitchens.map((kitchen) =>
      pack === undefined ? kitchen : { ...kitchen, packs: [...kitchen.packs, pack] },
    );
    const stage = await this.#enter({ ...asked, kitchens });
    return stage && whyNone(stage, asked, none);
  }

  /** Weeks between which only money and one other thing decide; told after every step. */
  async choose(
    kitchen: Kitchen,
    asked: DaysAsked,
    against: Against,
    tell: (choices: readonly ChoiceTold[], share: number) => Promise<void>,
  ): Promise<void> {
    const tables = await tablesOf(kitchen);
    const stated = stateAsked(kitchen, tables, asked);
    const told = new Map<MenuPlan, ChoiceTold | undefined>();
    for (const { choices, done, steps } of frontier(stated.problem, against, {
      judge: checkPlan,
      seed: SEED,
      moves: CHOICE_MOVES,
    })) {
      for (const choice of choices) {
        if (told.has(choice.plan)) continue;
        // The search knows of what is cooked at once its loads alone.
        const exact = stateTogether(stated, choice.plan, kitchen, tables);
        const isInTime = checkPlan(exact.problem, choice.plan).faults.length === 0;
        told.set(choice.plan, isInTime ? tellChoice(kitchen, tables, exact, choice) : undefined);
      }
      await tell(
        choices.flatMap(({ plan }) => told.get(plan) ?? []),
        done / steps,
      );
    }
  }

  /** The week as a problem in the first kitchen that it fits; the last one is kept, since most questions are about it again. */
  async #enter({ week, kitchens }: WeekAsked): Promise<Stage | undefined> {
    const key = JSON.stringify([kitchens, week]);
    if (this.#stage?.key === key) return this.#stage;
    this.#stage = undefined;
    for (const kitchen of kitchens) {
      const tables = await tablesOf(kitchen);
      const restored = restoreWeek(kitchen, tables, week);
      if (!restored.ok) continue;
      this.#stage = { key, kitchen, tables, before: restored.value };
      break;
    }
    return this.#stage;
  }
}

/** What is near the old menu is told first; what stands further off and is cheaper takes its place. */
async function serveAtLength(
  stage: Stage,
  asked: WeekAsked,
  serving: Serving,
  day: CivilDate,
  tell?: Tell<MoveTold>,
): Promise<MoveTold> {
  const near = serve(stage, asked, serving, { day, isNear: true });
  if (near.kind === "unfit" || tell === undefined) return near;
  if (near.kind === "fits") await tell(near);
  const far = serve(stage, asked, serving, { day, isNear: false });
  return near.kind === "fits" && !(far.kind === "fits" && far.extraMinor < near.extraMinor) ? near : far;
}

/** The day, the sitting or the trip at which a limit binds. */
function placeOf(limit: MenuLimit, stated: KitchenProblem): Pick<LimitPrice, "date" | "sitting" | "shop"> {
  if (limit.kind === "hands-on") return { date: addDays(stated.from, limit.day) };
  if (limit.kind === "elapsed") {
    const { date, kind } = stated.sittings[limit.sitting] ?? {};
    return { ...(date && { date }), ...(kind && { sitting: kind }) };
  }
  const trip = limit.kind === "carry" ? stated.trips[limit.trip] : undefined;
  return trip === undefined ? {} : { date: trip.date, shop: trip.shop };
}

function tellChoice(kitchen: Kitchen, tables: Tables, stated: KitchenProblem, choice: Choice): ChoiceTold {
  const { plan, ...figures } = choice;
  const search = { seed: SEED, moves: CHOICE_MOVES, moneyMinor: choice.moneyMinor };
  return { ...figures, week: toWeekPlan(kitchen, tables, stated, plan, search) };
}

async function tablesOf(kitchen: Kitchen): Promise<Tables> {
  return withOwnFoodsAndDishes(await loadTables(), kitchen);
}
