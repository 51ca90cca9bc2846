import type { Choose } from "../../dish/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { datedSittings, type SittingKind } from "../datedSittings.ts";
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
  /** Fewest minutes at hand of the sittings it is cooked for; absent where the kitchen no longer has them. */
  readonly atHandMinutes?: number;
}

/**
 * The cookings of a week's plan in its order: all that is begun for one kind of sitting of one day is cooked at once,
 * whoever eats it. Batches of dishes that the tables do not have are left out.
 */
export function listCookings(
  week: Pick<WeekPlan, "sittings" | "batches">,
  kitchen: Pick<Kitchen, "sittings">,
  tables: Pick<Tables, "dishes">,
): SittingCooking[] {
  const dishes = new Map(tables.dishes.map((dish) => [dish.id, dish]));
  const groups = new Map<string, number[]>();
  for (const [at, { dish }] of week.batches.entries()) {
    const fresh = freshOf(week, at);
    if (fresh === undefined || !dishes.has(dish)) continue;
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
      dishes: batches.flatMap((at): DishToCook[] => {
        const { dish: id, portions, uses } = week.batches[at] as WeekPlan["batches"][number];
        const dish = dishes.get(id);
        return dish === undefined ? [] : [{ dish, portions, choose: chooseUsed(uses) }];
      }),
      ...(atHand.length > 0 && { atHandMinutes: Math.min(...atHand) }),
    };
  });
}

type Sitting = WeekPlan["sittings"][number];

/** The sitting that a batch is cooked for; undefined where it is eaten at none as it is cooked. */
function freshOf({ sittings }: Pick<WeekPlan, "sittings">, batch: number): Sitting | undefined {
  return sittings.find((sitting) => sitting.batch === batch && !sitting.leftover);
}

function minutesAtHand({ date, kind, eaters }: Sitting, kitchen: Pick<Kitchen, "sittings">): number[] {
  return datedSittings(kitchen, date, 1)
    .filter((each) => each.kind === kind && each.eaters.some((id) => eaters.includes(id)))
    .map(({ minutes }) => minutes);
}

/** Of each making the food that went into the batch. */
function chooseUsed(uses: WeekPlan["batches"][number]["uses"]): Choose {
  const used = new Set(uses.map(({ food }) => food));
  return (making) => [making, ...making.alternatives].find(({ food }) => used.has(food)) ?? making;
}
