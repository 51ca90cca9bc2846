import type { CivilDate } from "../../quantity/index.ts";
import { isGuest } from "./isGuest.ts";
import { sitsDown } from "./kitchenChanges.ts";
import type { RestoredWeek } from "./restoreWeek.ts";
import type { KitchenNow, WeekChange } from "./WeekChange.ts";

/**
 * Who does not sit down any more, by the kitchen as it is now, where a kept week has them from today on: a change for each seat,
 * without those that other changes have already and what is cooked or eaten today. Whoever sits at another table of the same kind stays.
 */
export function leaveTable(
  { stated: { sittings } }: RestoredWeek,
  now: KitchenNow,
  changes: readonly WeekChange[],
  today: CivilDate,
): WeekChange[] {
  const isTold = (date: CivilDate, kind: string, eater: string): boolean =>
    changes.some(
      (change) =>
        "at" in change &&
        change.at.date === date &&
        change.at.kind === kind &&
        (change.kind === "skip"
          ? (change.at.eater ?? eater) === eater
          : change.kind === "want" && change.done !== undefined),
    );
  return sittings.flatMap(({ date, kind, eaters, putBy }) =>
    eaters.flatMap((eater): WeekChange[] => {
      const stays = putBy || date < today || isGuest(eater) || sitsDown(now, eater, { date, kind });
      return stays || isTold(date, kind, eater) ? [] : [{ kind: "skip", at: { date, kind, eater } }];
    }),
  );
}
