import { pickRule } from "../../safety/index.ts";
import { ovenMinutes, type WorkWait } from "../../work/problem.ts";
import { listTakenOtherwise } from "../keptWays.ts";
import type { Cooking } from "./Cooking.ts";
import { followFood } from "./foodState.ts";
import { listAhead } from "./listAhead.ts";
import { type PlacedCautions, placeCautions } from "./placeCautions.ts";
import { shareHands } from "./shareHands.ts";
import { shareKit } from "./shareKit.ts";
import type { TimedCooking } from "./solveCooking.ts";
import { listRows } from "./timelineRows.ts";
import type {
  BrokenHold,
  DishCaution,
  OvenLine,
  PlacedCaution,
  SheetDish,
  SheetLine,
  StepLine,
  WashLine,
  WorkSheet,
} from "./WorkSheet.ts";

/** A dish that waits so long or longer is told to be kept hot. Common practice, no source. */
const LONG_WAIT_MINUTES = 5;

/**
 * An order of work as a sheet for the cook: lines by time, who does them, with what, with the cautions where the hand
 * needs them; what is done ahead; which dish waits. `serveAtMinutes` is the time of day it is served, in minutes after
 * midnight; absent = no clock times.
 */
export function toWorkSheet(timed: TimedCooking, serveAtMinutes?: number): WorkSheet {
  const { cooking, plan, isProven } = timed;
  const { wish } = cooking;
  const placed = wish.dishes.map((each) => placeCautions(each, wish));
  const dishes = wish.dishes.map((_, at) => toSheetDish(timed, at));
  const lines = listLines(timed, placed);
  const kept = dishes.flatMap((dish, at) => keepHot(cooking, dish, at));
  return {
    cooks: wish.cooks,
    serveMinutes: plan.serveMinutes,
    ...(serveAtMinutes !== undefined && { serveAtMinutes }),
    isProven,
    dishes,
    lines,
    ahead: listAhead(timed, placed),
    brokenHolds: listBroken(timed),
    rows: listRows(timed, lines, dishes),
    before: mergeByDish(placed.map(({ before }) => before)),
    after: [...kept, ...mergeByDish(placed.map(({ after }, at) => dateAfter(after, dishes[at] as SheetDish, cooking)))],
  };
}

function toSheetDish({ cooking, plan }: TimedCooking, at: number): SheetDish {
  const { dish, portions, choose = (making) => making } = cooking.wish.dishes[at] as Cooking["wish"]["dishes"][number];
  const own = cooking.steps.flatMap(({ dish: of, step }, i) => (of === at && step !== undefined ? [i] : []));
  const ends = own.map((i) => (plan.starts[i] as number) + (cooking.problem.steps[i]?.minutes as number));
  const readyMinutes = ends.length === 0 ? plan.serveMinutes : Math.max(...ends);
  const states = followFood(dish, cooking.wish.tables.foods, choose);
  const { potPortions } = cooking.wish.kit;
  const taken = listTakenOtherwise({ dish, choose });
  const usesPot = dish.method.some(({ kit }) => kit.includes("pot"));
  return {
    dish: dish.id,
    title: dish.title,
    portions,
    readyMinutes,
    waitMinutes: plan.serveMinutes - readyMinutes,
    isHot: dish.served.includes("hot") && states.some(({ isHot }) => isHot),
    ...(usesPot && portions > potPortions && { potPortions }),
    ...(taken.length > 0 && { taken }),
  };
}

function listLines(timed: TimedCooking, placed: readonly PlacedCautions[]): SheetLine[] {
  const { cooking, plan } = timed;
  const { problem, steps, parts, wish } = cooking;
  const shares = shareHands(problem, plan);
  const kit = shareKit(timed);
  const lines: SheetLine[] = steps.flatMap(({ dish, step }, i): StepLine[] => {
    if (step === undefined) return [];
    const startMinutes = plan.starts[i] as number;
    const place = wish.dishes[dish]?.dish.method.findIndex(({ id }) => id === step.id) as number;
    return [
      {
        kind: "step",
        startMinutes,
        endMinutes: startMinutes + (problem.steps[i]?.minutes as number),
        dish,
        step: step.id,
        stepKind: step.kind,
        text: step.text,
        hands: step.hands,
        cooks: shares.steps[i] as readonly number[],
        kit: kit[i] as StepLine["kit"],
        ...(step.tempC !== undefined && { tempC: step.tempC }),
        cautions: placed[dish]?.steps.get(place) ?? [],
      },
    ];
  });
  const boards = plan.boardWashes.map((start, k): WashLine => {
    const endMinutes = start + (problem.board?.washMinutes ?? 0);
    return { kind: "board-wash", part: "board", startMinutes: start, endMinutes, cooks: shares.boardWashes[k] ?? [] };
  });
  const vessels = plan.kitWashes.map(({ use, startMinutes }, k): WashLine => {
    const kind = problem.uses[use]?.kind as number;
    const endMinutes = startMinutes + (problem.kit[kind]?.washMinutes ?? 0);
    return {
      kind: "kit-wash",
      part: parts[kind] as WashLine["part"],
      startMinutes,
      endMinutes,
      cooks: shares.kitWashes[k] ?? [],
    };
  });
  return [...lines, ...boards, ...vessels, ...listOven(timed)].sort(
    (a, b) => a.startMinutes - b.startMinutes || a.endMinutes - b.endMinutes,
  );
}

/** The oven is turned to each new temperature as late as will do. */
function listOven({ cooking: { problem }, plan }: TimedCooking): OvenLine[] {
  const { oven } = problem;
  if (oven === undefined) return [];
  const baked = problem.steps
    .flatMap((step, i) => (step.oven ? [{ tempC: step.oven.tempC, start: plan.starts[i] as number }] : []))
    .sort((a, b) => a.start - b.start);
  return baked.flatMap(({ tempC, start }, k): OvenLine[] => {
    const fromC = baked[k - 1]?.tempC ?? oven.roomC;
    if (fromC === tempC) return [];
    return [{ kind: "oven", tempC, startMinutes: start - ovenMinutes(oven, fromC, tempC), endMinutes: start }];
  });
}

function listBroken({ cooking, plan, excesses }: TimedCooking): BrokenHold[] {
  const { problem, steps } = cooking;
  return excesses.flatMap(({ dish, wait, minutes }): BrokenHold[] => {
    const between: WorkWait | undefined = wait === undefined ? undefined : problem.waits[wait];
    const from = between?.from ?? (problem.dishes[dish]?.last as number);
    const step = steps[from]?.step;
    if (step === undefined) return [];
    const end = (plan.starts[from] as number) + (problem.steps[from]?.minutes as number);
    const until = between === undefined ? plan.serveMinutes : (plan.starts[between.to] as number);
    const waitMinutes = until - end;
    return [{ dish, step: step.id, text: step.text, waitMinutes, holdMinutes: waitMinutes - minutes }];
  });
}

/** What is kept goes into the cold within so long of the end of the cooking; the minute is told. */
function dateAfter(after: readonly PlacedCaution[], { readyMinutes }: SheetDish, { wish }: Cooking): PlacedCaution[] {
  const { keepingRules } = wish.tables.safety;
  return after.map((caution) => {
    if (caution.code !== "chill-within") return caution;
    const rule = caution.foods.length > 0 ? "chill-rice-within-minutes" : "chill-within-minutes";
    return { ...caution, byMinutes: readyMinutes + pickRule(keepingRules, rule, wish.authority).value };
  });
}

function keepHot({ wish }: Cooking, { isHot, waitMinutes }: SheetDish, at: number): DishCaution[] {
  if (!isHot || waitMinutes < LONG_WAIT_MINUTES) return [];
  const { value, authority } = pickRule(wish.tables.safety.keepingRules, "hot-holding-c", wish.authority);
  const text = `Waits ${waitMinutes} min for the plate: kept covered at ${value} °C or hotter.`;
  return [{ code: "hot-holding", text, authority, foods: [], dishes: [at] }];
}

/** A caution that several dishes share is said once. */
function mergeByDish(lists: readonly (readonly PlacedCaution[])[]): DishCaution[] {
  const said = new Map<string, { caution: PlacedCaution; dishes: number[] }>();
  for (const [dish, cautions] of lists.entries()) {
    for (const caution of cautions) {
      const key = `${caution.code} ${caution.text} ${caution.byMinutes}`;
      const known = said.get(key);
      if (known) known.dishes.push(dish);
      else said.set(key, { caution, dishes: [dish] });
    }
  }
  return [...said.values()].map(({ caution, dishes }) => ({ ...caution, dishes }));
}
