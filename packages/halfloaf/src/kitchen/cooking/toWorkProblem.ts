import { asWritten, type Dish, type KitPart, markAhead, orderSteps, type Step } from "../../dish/index.ts";
import type { WorkDish, WorkKit, WorkProblem, WorkStep, WorkUse, WorkWait } from "../../work/problem.ts";
import { fitDish } from "../fitDish.ts";
import type { AheadStep, Cooking, CookingStep, CookingWish, DishToCook, StatedCooking } from "./Cooking.ts";
import { type FoodState, followFood } from "./foodState.ts";
import { listUses } from "./listUses.ts";
import { listWaits } from "./listWaits.ts";
import { stepMinutes } from "./pace.ts";

const HANDS = { full: 2, eye: 1, none: 0 } as const satisfies Record<Step["hands"], number>;

/** Minutes to wash a vessel for its next use. Common practice, no source. */
const WASH_MINUTES: Readonly<Partial<Record<KitPart, number>>> = { pan: 3, pot: 3, blender: 2 };
/** A wash of board, knife and hands, and how much is given to do without it. Common practice, no source. */
const [BOARD_WASH_MINUTES, BOARD_WASH_WEIGHT] = [3, 6];
/** A small oven at home. Common practice, no source. */
const OVEN = { shelves: 2, roomC: 20, warmCPerMinute: 15, coolCPerMinute: 5 };
/** Where a dish gives no temperature for its oven. Common practice, no source. */
const USUAL_OVEN_C = 190;
/** Water in a pot on a ring takes about so many times as long as in a kettle. Common practice, no source. */
const POT_FOR_KETTLE = 2;

/**
 * States one cooking of one or more dishes as a problem for `work/`, or says which dish lacks what of the kit. Minutes
 * are whole, rounded up, at the cook's pace; what is done ahead is set apart. The dishes must pass `checkDish`. Throws
 * where there is no dish or portions are not positive.
 */
export function toWorkProblem(wish: CookingWish): StatedCooking {
  if (wish.dishes.length === 0) throw new RangeError("no dish is to be cooked");
  for (const [dish, { dish: facts }] of wish.dishes.entries()) {
    const fitted = fitDish(facts, wish.tables.foods, wish.kit, [], () => true);
    if ("reason" in fitted && fitted.reason === "kit-missing") return { ok: false, dish, kit: fitted.kit };
  }
  return { ok: true, cooking: new CookingDraft(wish).finish() };
}

class CookingDraft {
  private readonly wish: CookingWish;
  private readonly work: WorkStep[] = [];
  private readonly steps: CookingStep[] = [];
  private readonly dishes: WorkDish[] = [];
  private readonly waits: WorkWait[] = [];
  private readonly uses: WorkUse[] = [];
  private readonly kit: WorkKit[] = [];
  private readonly parts: KitPart[] = [];
  private readonly ahead: AheadStep[] = [];

  constructor(wish: CookingWish) {
    this.wish = wish;
    for (const [at, each] of wish.dishes.entries()) this.addDish(at, each);
  }

  finish(): Cooking {
    const { wish, steps, parts, ahead } = this;
    const { cooks, kit } = wish;
    const problem: WorkProblem = {
      cooks,
      steps: this.work,
      dishes: this.dishes,
      waits: this.waits,
      kit: this.kit,
      uses: this.uses,
      ...(this.work.some(({ oven }) => oven) && { oven: OVEN }),
      ...(this.work.some(({ board }) => board) && {
        board: { count: kit.boards, washMinutes: BOARD_WASH_MINUTES, washWeight: BOARD_WASH_WEIGHT },
      }),
    };
    return { wish, problem, steps, parts, ahead };
  }

  private addDish(at: number, { dish: written, portions, choose = asWritten }: DishToCook): void {
    const dish = this.wish.kit.kettle ? written : withoutKettle(written);
    const { method } = dish;
    const isAhead = markAhead(method, orderSteps(method));
    const states = followFood(dish, this.wish.tables.foods, choose);
    const indices = new Map<number, number>();
    for (const [place, step] of method.entries()) {
      if (isAhead[place]) continue;
      indices.set(place, this.work.length);
      this.work.push(toWorkStep(step, at, stepMinutes(step, portions, this.wish.pace), states[place] as FoodState));
      this.steps.push({ dish: at, step });
    }
    this.addEnd(at, dish, indices, states);
    for (const { part, from, to } of listUses(method, isAhead)) {
      this.uses.push({ kind: this.kindOf(part), from: indices.get(from) as number, to: indices.get(to) as number });
    }
    this.addAhead(at, dish, portions, isAhead, indices);
  }

  private addEnd(at: number, dish: Dish, indices: Map<number, number>, states: readonly FoodState[]): void {
    // A dish that is all done ahead is only put on the table.
    if (indices.size === 0) {
      this.dishes.push({ id: `${at} ${dish.id}`, last: this.work.length, holdWeight: 0 });
      this.work.push({ id: `${at} ${dish.id} table`, dish: at, minutes: 0, hands: 0 });
      this.steps.push({ dish: at });
      return;
    }
    const { keepingRules } = this.wish.tables.safety;
    const of = { dish, at, indices, states, free: this.work.length };
    const { waits, dish: end, table } = listWaits(of, keepingRules, this.wish.authority);
    this.waits.push(...waits);
    this.dishes.push(end);
    if (table === undefined) return;
    this.work.push(table);
    this.steps.push({ dish: at });
  }

  private kindOf(part: KitPart): number {
    const known = this.parts.indexOf(part);
    if (known >= 0) return known;
    const { rings, pans, pots } = this.wish.kit;
    const count = { ring: rings, pan: pans, pot: pots }[part as string] ?? 1;
    const washMinutes = WASH_MINUTES[part];
    this.kit.push({ id: part, count, ...(washMinutes !== undefined && { washMinutes }) });
    return this.parts.push(part) - 1;
  }

  private addAhead(
    dish: number,
    { method }: Dish,
    portions: number,
    isAhead: readonly boolean[],
    indices: ReadonlyMap<number, number>,
  ): void {
    const places = [...method.keys()].filter((place) => isAhead[place]);
    const first = this.ahead.length;
    for (const place of places) {
      const step = method[place] as Step;
      const followers = [...method.keys()].filter((other) => (method[other] as Step).after.includes(step.id));
      this.ahead.push({
        dish,
        step,
        minutes: stepMinutes(step, portions, this.wish.pace),
        leadsToAhead: followers.filter((other) => isAhead[other]).map((other) => first + places.indexOf(other)),
        leadsToSteps: followers.flatMap((other) => indices.get(other) ?? []),
      });
    }
  }
}

function toWorkStep(step: Step, dish: number, minutes: number, state: FoodState): WorkStep {
  const { kit, tempC = USUAL_OVEN_C } = step;
  const trays = kit.filter((part) => part === "tray").length;
  const shelves = Math.min(OVEN.shelves, Math.max(1, trays));
  return {
    id: `${dish} ${step.id}`,
    dish,
    minutes,
    hands: HANDS[step.hands],
    ...(kit.includes("board") && { board: state.raw.length > 0 ? "raw" : "ready" }),
    ...(kit.includes("oven") && { oven: { tempC, shelves } }),
  };
}

/** The dish with a pot on a ring for what the kettle does. */
function withoutKettle(dish: Dish): Dish {
  const method = dish.method.map((step): Step => {
    if (!step.kit.includes("kettle")) return step;
    const { fixed, perPortion } = step.minutes;
    return {
      ...step,
      minutes: { fixed: POT_FOR_KETTLE * fixed, perPortion: POT_FOR_KETTLE * perPortion },
      kit: step.kit.flatMap((part): KitPart[] => (part === "kettle" ? ["ring", "pot"] : [part])),
    };
  });
  return { ...dish, method };
}
