import type { LocalSearch } from "../search/LocalSearch.ts";
import type { Change } from "../search/WeekState.ts";

/**
 * Walks from the best menu of a search back to an old one, sitting by sitting and dish by dish, always by the step that
 * costs least, also where that breaks limits on the way: the search takes note of every menu it passes. Once with the
 * trips of the best menu and once with those of the old one.
 */
export function walkBack(search: LocalSearch, dishes: readonly number[], trips: readonly number[]): void {
  const { state } = search;
  const isOld = (trip: number): boolean => trips.includes(trip);
  for (const withOldTrips of [false, true]) {
    search.goToBest();
    const toggled = [...state.tripMade.keys()].filter((trip) => (state.tripMade[trip] === 1) !== isOld(trip));
    if (withOldTrips && toggled.length === 0) break;
    if (withOldTrips) state.toggleTrips(...toggled);
    for (let step = chooseStep(search, dishes); step.length > 0; step = chooseStep(search, dishes)) {
      state.change(step);
      search.note();
    }
  }
  search.goToBest();
}

/** The step towards the old menu that costs least; none where it is reached. */
function chooseStep({ state }: LocalSearch, dishes: readonly number[]): readonly Change[] {
  let least = Number.POSITIVE_INFINITY;
  let chosen: readonly Change[] = [];
  for (const step of listSteps(state.dishOf, dishes, (dish, k) => state.mayServe(dish, k))) {
    state.change(step);
    const cost = state.total();
    state.undo();
    if (cost < least) {
      least = cost;
      chosen = step;
    }
  }
  return chosen;
}

/** Each old dish back at one sitting; everywhere it stood; everywhere that one dish took the place of others. */
function listSteps(
  now: ArrayLike<number>,
  dishes: readonly number[],
  may: (dish: number, sitting: number) => boolean,
): Change[][] {
  const open = dishes.flatMap((dish, sitting): Change[] =>
    dish >= 0 && now[sitting] !== dish && may(dish, sitting) ? [{ sitting, dish }] : [],
  );
  const group = (keyOf: (change: Change) => number): Change[][] => {
    const groups = new Map<number, Change[]>();
    for (const change of open) groups.set(keyOf(change), [...(groups.get(keyOf(change)) ?? []), change]);
    return [...groups.values()].filter(({ length }) => length > 1);
  };
  return [
    ...open.map((change) => [change]),
    ...group(({ dish }) => dish),
    ...group(({ sitting }) => now[sitting] as number),
  ];
}
