import type { SittingKind, WeekPlan } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";

/** Another dish at a sitting than the week had. */
export interface DishSwap {
  readonly date: CivilDate;
  readonly sitting: SittingKind;
  readonly from: string;
  readonly to: string;
  /** It can't be made any more, it would break a limit, or keeping it would cost so much more, in minor units; absent = not told. */
  readonly why?: "not-offered" | "breaks" | "dearer";
  readonly byMinor?: number;
}

/** How many packs of a kind the week buys, before and after. */
interface BuyingSwap {
  readonly pack: string;
  readonly shop: string;
  readonly label: string;
  readonly before: number;
  readonly after: number;
}

/** A week and what is otherwise in it than in the one before. */
export interface WeekCompared {
  /** True where every dish stays where it was. */
  readonly kept: boolean;
  readonly week: WeekPlan;
  readonly dishes: readonly DishSwap[];
  readonly buying: readonly BuyingSwap[];
  /** All tills of the week, before and after, in minor units. */
  readonly tillBeforeMinor: number;
  readonly tillAfterMinor: number;
}

/** What is otherwise in a week than in one of the same sittings. */
export function compareWeeks(before: WeekPlan, week: WeekPlan): WeekCompared {
  const nameOf = ({ date, kind, eaters }: WeekPlan["sittings"][number]): string => [date, kind, ...eaters].join();
  const had = new Map(before.sittings.map((sitting) => [nameOf(sitting), sitting.dish]));
  const dishes = week.sittings.flatMap((sitting): DishSwap[] => {
    const from = had.get(nameOf(sitting));
    const { date, kind, dish: to } = sitting;
    return from === undefined || from === to ? [] : [{ date, sitting: kind, from, to }];
  });
  return {
    kept: dishes.length === 0,
    week,
    dishes,
    buying: compareBuying(before, week),
    tillBeforeMinor: before.accounts.tillMinor,
    tillAfterMinor: week.accounts.tillMinor,
  };
}

/** Packs of which the two weeks buy different numbers. */
function compareBuying(before: WeekPlan, after: WeekPlan): BuyingSwap[] {
  const lines = [before, after].map((week) =>
    week.trips.flatMap((trip) => trip.lines.map((line) => ({ ...line, shop: trip.shop }))),
  );
  const kinds = new Map(lines.flat().map(({ pack, label, shop }) => [pack, { pack, label, shop }]));
  const countIn = (at: number, pack: string): number =>
    (lines[at] ?? []).reduce((sum, line) => (line.pack === pack ? sum + line.count : sum), 0);
  return [...kinds.values()]
    .map((kind) => ({ ...kind, before: countIn(0, kind.pack), after: countIn(1, kind.pack) }))
    .filter((swap) => swap.before !== swap.after);
}
