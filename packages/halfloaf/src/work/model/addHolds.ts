import { MOST_VALUE } from "../solver/literal.ts";
import { addRunningSum } from "./addRunningSum.ts";
import type { RuleId, WorkModel } from "./WorkModel.ts";

/** A hold that may be gone beyond, and the variable of the minutes beyond it. */
export interface SoftHold {
  readonly dish: number;
  readonly wait?: number;
  readonly excess: number;
}

/** The holds that may be gone beyond and the variable of the total; none where it has no say or is beyond counting. */
export interface SoftHolds {
  readonly holds: readonly SoftHold[];
  readonly total?: number;
}

/**
 * Waits between steps and from the last step of each dish to serving.
 *
 *     start(to) - start(from) - minutes(from) - x <= most,   sum of x <= total,
 *
 * with x = 0 where a hold is firm or no excess is allowed; then the hold is an edge backwards.
 */
export function addHolds(model: WorkModel, mostExcess: number, ignored: ReadonlySet<RuleId>): SoftHolds {
  const { problem, constraints } = model;
  const holds: SoftHold[] = [];
  const hold = (from: number, to: number, most: number, isFirm: boolean, name: { dish: number; wait?: number }) => {
    const minutes = model.minutesOf(from);
    if (isFirm || mostExcess === 0) {
      model.addLag(to, from, -(minutes + most));
      return;
    }
    const excess = constraints.addVariable(0, Math.min(mostExcess, model.horizon));
    constraints.addLimit(
      [
        { variable: model.startOf(to), weight: 1 },
        { variable: model.startOf(from), weight: -1 },
        { variable: excess, weight: -1 },
      ],
      minutes + most,
    );
    holds.push({ ...name, excess });
  };
  for (const [w, { from, to, leastMinutes, mostMinutes, isFirm }] of problem.waits.entries()) {
    model.addLag(from, to, model.minutesOf(from) + leastMinutes);
    if (mostMinutes === undefined || ignored.has(`wait ${w}`)) continue;
    hold(from, to, mostMinutes, isFirm === true, { dish: problem.steps[from]?.dish as number, wait: w });
  }
  for (const [dish, { last, holdMinutes, isFirm }] of problem.dishes.entries()) {
    if (holdMinutes === undefined || ignored.has(`dish ${dish}`)) continue;
    hold(last, model.serving, holdMinutes, isFirm === true, { dish });
  }
  const sum = holds.map(({ excess }) => ({ variable: excess, weight: 1 }));
  if (sum.length === 0) return { holds };
  if (mostExcess > MOST_VALUE) {
    constraints.addLimit(sum, mostExcess);
    return { holds };
  }
  const rank = (dish: number) => problem.dishes[dish]?.holdMinutes ?? Number.MAX_SAFE_INTEGER;
  const dishes = [...new Set(holds.map(({ dish }) => dish))].sort((a, b) => rank(a) - rank(b) || a - b);
  const ofDish = dishes.map((dish) => {
    const own = holds.filter((each) => each.dish === dish);
    return addRunningSum(
      model,
      own.map(({ excess }) => excess),
      mostExcess,
    );
  });
  return { holds, total: addRunningSum(model, ofDish, mostExcess) };
}
