import type { MenuProblem, MenuSitting } from "../problem.ts";

const ITERATIONS = 240;

/** Sittings that draw from the same dishes for the same number of portions. */
interface SittingGroup {
  readonly first: number;
  readonly sittings: readonly number[];
  readonly portions: number;
  /** What serving each dish puts by is worth, where nobody eats there. */
  readonly worthMinor: (dish: number) => number;
  readonly dishes: readonly number[];
}

/**
 * What serving a dish at a sitting costs beyond the least, once its energy and components are paid for:
 * in minor units, about zero for the dishes a cheap and nourishing week is made of.
 *
 * The week is relaxed to counts of servings. Bounds on components and energy are moved into the objective with
 * multipliers found by subgradient steps; packs enter at `estimates`, money per standard portion at the lowest
 * price a gram. The values steer the search and prove nothing.
 *
 * **Source**: Held, Wolfe and Crowder, Validation of subgradient optimization, Mathematical Programming 6 (1974).
 */
export function reckonReducedCosts(
  problem: MenuProblem,
  candidates: readonly (readonly number[])[],
  estimates: Float64Array,
): (dish: number, sitting: number) => number {
  const groups = groupSittings(problem, candidates);
  const prices = new ComponentPrices(problem);
  const average = prices.copy();
  for (let iteration = 0; iteration < ITERATIONS; iteration++) {
    const reached = prices.zero();
    for (const group of groups) serveCheapest(problem, group, estimates, prices, reached);
    prices.step(reached, 2 / (4 + iteration));
    if (iteration >= ITERATIONS / 2) average.add(prices, 2 / ITERATIONS);
    else if (iteration === ITERATIONS / 2 - 1) average.clear();
  }
  const least = new Map<number, number>();
  const groupOf = new Map<number, SittingGroup>();
  for (const group of groups) {
    for (const sitting of group.sittings) groupOf.set(sitting, group);
    const costs = group.dishes.map((dish) => costOf(group, dish, estimates, average));
    const used = Math.max(0, Math.ceil(group.sittings.length / 2) - 1);
    least.set(group.first, costs.sort((a, b) => a - b)[Math.min(used, costs.length - 1)] ?? 0);
  }
  return (dish, sitting) => {
    const group = groupOf.get(sitting) as SittingGroup;
    return Math.max(0, costOf(group, dish, estimates, average) - (least.get(group.first) as number));
  };
}

function groupSittings(problem: MenuProblem, candidates: readonly (readonly number[])[]): SittingGroup[] {
  const groups = new Map<string, SittingGroup & { sittings: number[] }>();
  problem.sittings.forEach((sitting: MenuSitting, k) => {
    const attending = problem.profiles.map((profile) => (profile.sittings.includes(k) ? 1 : 0)).join("");
    const { portions, putBy } = sitting;
    const worthMinor = (dish: number): number =>
      putBy ? portions * (problem.dishes[dish]?.putBy?.creditMinor ?? 0) : 0;
    const key = `${attending} ${portions} ${putBy} ${candidates[k]?.join(",")}`;
    const known = groups.get(key);
    if (known) known.sittings.push(k);
    else groups.set(key, { first: k, sittings: [k], portions, worthMinor, dishes: candidates[k] ?? [] });
  });
  return [...groups.values()];
}

function costOf(group: SittingGroup, dish: number, estimates: Float64Array, prices: ComponentPrices): number {
  return (estimates[dish] as number) * group.portions - group.worthMinor(dish) - prices.worthOf(dish, group.first);
}

/** Fills the sittings of a group with its cheapest dishes, each as often as it may be used. */
function serveCheapest(
  problem: MenuProblem,
  group: SittingGroup,
  estimates: Float64Array,
  prices: ComponentPrices,
  reached: Float64Array,
): void {
  const costs = group.dishes.map((dish) => costOf(group, dish, estimates, prices));
  const order = group.dishes.map((_, i) => i).sort((a, b) => (costs[a] as number) - (costs[b] as number));
  let left = group.sittings.length;
  for (const i of order) {
    if (left <= 0) return;
    const dish = group.dishes[i] as number;
    const times = Math.min(left, problem.dishes[dish]?.maxUses ?? 1);
    prices.count(reached, dish, group.first, times);
    left -= times;
  }
}

/** Multipliers of the bounds and of the week's energy, for each profile. */
class ComponentPrices {
  private readonly problem: MenuProblem;
  /** Minor units per whole `amount` of each bound, then of the week's energy; profile after profile. */
  private readonly price: Float64Array;
  private readonly most: Float64Array;
  private readonly rows: { profile: number; component: number; sign: number; amount: number }[] = [];
  private readonly rowsAt: readonly (readonly number[])[];

  constructor(problem: MenuProblem) {
    this.problem = problem;
    const most: number[] = [];
    problem.profiles.forEach((profile, p) => {
      for (const bound of profile.bounds) {
        this.rows.push({
          profile: p,
          component: bound.component,
          sign: bound.kind === "at-least" ? 1 : -1,
          amount: bound.amount,
        });
        most.push(problem.worth.shortfallRestMinor * profile.eaters * (bound.hard ? 10 : 1));
      }
      const energy = profile.energyKj.reduce((sum, kj) => sum + kj, 0);
      this.rows.push(
        { profile: p, component: -1, sign: 1, amount: energy },
        { profile: p, component: -1, sign: -1, amount: energy },
      );
      most.push(1e5 * profile.eaters, 1e5 * profile.eaters);
    });
    this.most = Float64Array.from(most);
    this.price = new Float64Array(most.length);
    this.rowsAt = problem.sittings.map((_, k) =>
      this.rows.flatMap((row, i) => (problem.profiles[row.profile]?.sittings.includes(k) && row.amount > 0 ? [i] : [])),
    );
  }

  copy(): ComponentPrices {
    const twin = new ComponentPrices(this.problem);
    twin.price.set(this.price);
    return twin;
  }

  clear(): void {
    this.price.fill(0);
  }

  add(other: ComponentPrices, weight: number): void {
    for (let i = 0; i < this.price.length; i++)
      this.price[i] = (this.price[i] as number) + weight * (other.price[i] as number);
  }

  zero(): Float64Array {
    return new Float64Array(this.rows.length);
  }

  private amountOf(dish: number, row: { component: number; amount: number }): number {
    const facts = this.problem.dishes[dish];
    if (!facts) return 0;
    return (row.component < 0 ? facts.energyKj : (facts.components[row.component] as number)) / row.amount;
  }

  /** What the dish's energy and components are worth at the present prices, for one serving. */
  worthOf(dish: number, sitting: number): number {
    let worth = 0;
    for (const i of this.rowsAt[sitting] as readonly number[]) {
      const price = this.price[i] as number;
      if (price === 0) continue;
      const row = this.rows[i] as { component: number; amount: number; sign: number };
      worth += row.sign * price * this.amountOf(dish, row);
    }
    return worth;
  }

  count(reached: Float64Array, dish: number, sitting: number, times: number): void {
    for (const i of this.rowsAt[sitting] as readonly number[]) {
      reached[i] =
        (reached[i] as number) + times * this.amountOf(dish, this.rows[i] as { component: number; amount: number });
    }
  }

  /** Raises the price of what is missing and lowers that of what is plenty, as shares of each bound. */
  step(reached: Float64Array, size: number): void {
    this.rows.forEach((row, i) => {
      const slack = row.component < 0 ? 0.98 : 1;
      const missing = row.sign > 0 ? slack - (reached[i] as number) : (reached[i] as number) - 2 + slack;
      const scale = Math.min(this.most[i] as number, 3000);
      this.price[i] = Math.min(this.most[i] as number, Math.max(0, (this.price[i] as number) + size * scale * missing));
    });
  }
}
