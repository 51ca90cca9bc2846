import type { UseOption } from "./listOptions.ts";

/** Steps of mass that patterns are told apart by. */
export const MASS_STEPS = 240;

/** How dishes use one food at a point, and what it costs to have it. */
export interface FoodBlock {
  /** Columns that the options raise, and their values at the point. */
  readonly columns: readonly string[];
  readonly target: Float64Array;
  /** For each dish its options, of which a pattern has one or none. */
  readonly dishes: readonly (readonly UseOption[])[];
  /** Least cost of units that hold so many steps of mass or more; Infinity where none do. */
  readonly costs: Float64Array;
  readonly stepG: number;
}

/** One option or none for each dish. */
interface Pattern {
  /** How often it raises each column. */
  readonly raised: Float64Array;
  readonly cost: number;
  /** Cost less the prices of what it raises. */
  readonly rest: number;
}

/** Finds the pattern that helps most at some prices: a knapsack over the mass that all dishes use together. */
export class PatternTable {
  private readonly block: FoodBlock;
  private readonly steps: readonly Int32Array[];
  /** Options of each dish, those of least mass first. */
  private readonly order: readonly Int32Array[];
  private readonly chosen: readonly Int16Array[];
  private readonly before: readonly Int16Array[];
  private worth = new Float64Array(MASS_STEPS + 1);
  private next = new Float64Array(MASS_STEPS + 1);

  constructor(block: FoodBlock) {
    this.block = block;
    this.steps = block.dishes.map((options) => {
      const steps = new Int32Array(options.length);
      for (let o = 0; o < steps.length; o++)
        steps[o] = Math.floor((options[o] as UseOption).massG / block.stepG + 1e-9);
      return steps;
    });
    this.order = this.steps.map(orderOf);
    this.chosen = block.dishes.map(() => new Int16Array(MASS_STEPS + 1));
    this.before = block.dishes.map(() => new Int16Array(MASS_STEPS + 1));
  }

  /** The pattern whose cost less its prices is least. Masses are taken down to whole steps, so that no cost is too high. */
  findBest(prices: Float64Array): Pattern {
    this.worth.fill(Number.NEGATIVE_INFINITY);
    this.worth[0] = 0;
    this.block.dishes.forEach((_, d) => {
      this.addDish(d, prices);
    });
    const { costs } = this.block;
    const restOf = (step: number): number => (costs[step] as number) - (this.worth[step] as number);
    let at = 0;
    for (let step = 1; step <= MASS_STEPS; step++) if (restOf(step) < restOf(at)) at = step;
    return { raised: this.trace(at), cost: costs[at] as number, rest: restOf(at) };
  }

  /** Patterns that use at once what the point has of each dish: the more is used together, the fewer units it takes. */
  listShared(): Pattern[] {
    const { columns, dishes, target, costs } = this.block;
    const shares = dishes.map((options) => {
      let end = 0;
      return options.flatMap(({ marks: [mark, ...more] }, o) => {
        if (mark === undefined || more.length > 0 || !columns[mark]?.startsWith("l")) return [];
        end += target[mark] as number;
        return [{ end, mark, o }];
      });
    });
    const ends = [...new Set(shares.flatMap((list) => list.map(({ end }) => end)))].sort((a, b) => a - b);
    return ends.map((end) => {
      const raised = new Float64Array(columns.length);
      let step = 0;
      shares.forEach((list, d) => {
        const share = list.find((one) => one.end >= end - 1e-9);
        if (share === undefined) return;
        raised[share.mark] = 1;
        step += this.steps[d]?.[share.o] as number;
      });
      return { raised, cost: costs[Math.min(MASS_STEPS, step)] as number, rest: 0 };
    });
  }

  /** Lets each pattern so far also have an option of one more dish; what is beyond the last step counts as that. */
  private addDish(d: number, prices: Float64Array): void {
    const useful = this.listUseful(d, prices);
    if (useful.length === 0) {
      (this.chosen[d] as Int16Array).fill(-1);
      return;
    }
    const { worth, next } = this;
    const chosen = (this.chosen[d] as Int16Array).fill(-1);
    const before = this.before[d] as Int16Array;
    next.set(worth);
    for (const { o, gain, more } of useful) {
      for (let step = 0; step <= MASS_STEPS; step++) {
        const value = (worth[step] as number) + gain;
        const to = Math.min(MASS_STEPS, step + more);
        if (value <= (next[to] as number)) continue;
        next[to] = value;
        chosen[to] = o;
        before[to] = step;
      }
    }
    this.worth = next;
    this.next = worth;
  }

  /** The options of a dish that are worth more than all that take less mass. */
  private listUseful(d: number, prices: Float64Array): { o: number; gain: number; more: number }[] {
    const steps = this.steps[d] as Int32Array;
    const options = this.block.dishes[d] as readonly UseOption[];
    const useful: { o: number; gain: number; more: number }[] = [];
    let top = 0;
    for (const o of this.order[d] as Int32Array) {
      let gain = 0;
      for (const position of (options[o] as UseOption).marks) gain += prices[position] as number;
      if (gain <= top) continue;
      top = gain;
      if (useful.at(-1)?.more === steps[o]) useful.pop();
      useful.push({ o, gain, more: steps[o] as number });
    }
    return useful;
  }

  private trace(at: number): Float64Array {
    const raised = new Float64Array(this.block.columns.length);
    let step = at;
    for (let d = this.block.dishes.length - 1; d >= 0; d--) {
      const o = this.chosen[d]?.[step] as number;
      if (o < 0) continue;
      for (const position of this.block.dishes[d]?.[o]?.marks ?? [])
        raised[position] = (raised[position] as number) + 1;
      step = this.before[d]?.[step] as number;
    }
    return raised;
  }
}

/** Positions of the steps, those of fewest first. */
function orderOf(steps: Int32Array): Int32Array {
  const order = new Int32Array(steps.length);
  for (let o = 0; o < order.length; o++) {
    let at = o;
    for (; at > 0 && (steps[order[at - 1] as number] as number) > (steps[o] as number); at--)
      order[at] = order[at - 1] as number;
    order[at] = o;
  }
  return order;
}
