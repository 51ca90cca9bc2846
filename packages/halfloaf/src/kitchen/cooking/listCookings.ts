import type { Choose, ChosenFood } from "../../dish/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { datedSittings, type SittingKind } from "../datedSittings.ts";
import { namedFor } from "../keptWays.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { DishToCook } from "./Cooking.ts";

/** What is cooked at once for one kind of sitting of one day. */
export interface SittingCooking {
  readonly date: CivilDate;
  readonly sitting: SittingKind;
  /** True where the plates are taken along: they are cooked before leaving, apart from what is eaten here. */
  readonly packed: boolean;
  /** Positions in `batches` of the week. */
  readonly batches: readonly number[];
  /** The same dishes with all their portions, those for later sittings among them. */
  readonly dishes: readonly DishToCook[];
  /** Minutes from the first step to the plate; in a file kept before those of all of it were said, those of the longest dish. */
  readonly elapsedMinutes: number;
  /** Fewest minutes at hand of the sittings it is cooked for; absent where the kitchen no longer has them. */
  readonly atHandMinutes?: number;
}

/**
 * The cookings of a week's plan in its order: all that is begun for one kind of sitting of one day is cooked at once,
 * whoever eats it. Batches of dishes that the tables do not have are left out, and so is what was put by and is only warmed.
 */
export function listCookings(
  week: Pick<WeekPlan, "sittings" | "batches">,
  kitchen: Pick<Kitchen, "sittings">,
  tables: Pick<Tables, "dishes">,
): SittingCooking[] {
  const dishes = new Map(tables.dishes.map((dish) => [dish.id, dish]));
  const groups = new Map<string, number[]>();
  for (const [at, { dish, putBy }] of week.batches.entries()) {
    const fresh = freshOf(week, at);
    if (putBy !== undefined || fresh === undefined || !dishes.has(dish)) continue;
    const key = `${fresh.date} ${fresh.kind} ${fresh.packed}`;
    groups.set(key, [...(groups.get(key) ?? []), at]);
  }
  return [...groups.values()].map((batches): SittingCooking => {
    const { date, kind, packed } = freshOf(week, batches[0] as number) as Sitting;
    const atHand = batches.flatMap((at) => minutesAtHand(freshOf(week, at) as Sitting, kitchen));
    return {
      date,
      sitting: kind,
      packed,
      batches,
      elapsedMinutes: Math.max(...batches.map((at) => week.batches[at]?.elapsedMinutes ?? 0)),
      dishes: batches.flatMap((at): DishToCook[] => {
        const batch = week.batches[at] as WeekPlan["batches"][number];
        const dish = dishes.get(batch.dish);
        return dish === undefined ? [] : [{ dish, portions: batch.portions, choose: chooseUsed(batch) }];
      }),
      ...(atHand.length > 0 && { atHandMinutes: Math.min(...atHand) }),
    };
  });
}

type Sitting = WeekPlan["sittings"][number];

/** The sitting that a batch is cooked or warmed for; undefined where it is eaten at none as it is cooked. */
export function freshOf({ sittings }: Pick<WeekPlan, "sittings">, batch: number): Sitting | undefined {
  return sittings.find((sitting) => sitting.batch === batch && !sitting.leftover);
}

function minutesAtHand({ date, kind, eaters }: Sitting, kitchen: Pick<Kitchen, "sittings">): number[] {
  return datedSittings(kitchen, date, 1)
    .filter((each) => each.kind === kind && each.eaters.some((id) => eaters.includes(id)))
    .map(({ minutes }) => minutes);
}

/** Of each making the food that went into the batch. */
export function chooseUsed(batch: Pick<WeekPlan["batches"][number], "uses" | "taken">): Choose {
  const used = new Set(batch.uses.map(({ food }) => food));
  return (making) => {
    const options: readonly ChosenFood[] = [making, ...making.alternatives];
    const named = namedFor(making, batch);
    return options.find(({ food }) => (named === undefined ? used.has(food) : food === named)) ?? making;
  };
}
