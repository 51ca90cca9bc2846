const TINY = 1e-9;

/**
 * The cheapest mix of patterns that comes to a target: shares of patterns that add up to 1, with their sum at least the target.
 * Patterns are brought one by one; in the beginning there is the one of nothing, and what is missing costs `missing` each
 * until patterns make up for it.
 *
 * A primal simplex method with the inverse of its basis at hand; whoever brings patterns asks `prices` which one would help.
 */
export class PatternMix {
  /** What one more of each target would cost, none below 0 once `settle` was called. */
  readonly prices: Float64Array;
  /** What the shares' sum of 1 costs beside the prices: a pattern helps if its cost is below prices x pattern + `base`. */
  base = 0;
  /** Cost of the mix; no mix of the patterns brought so far costs less. */
  value = 0;
  private readonly size: number;
  private readonly inverse: Float64Array;
  private readonly shares: Float64Array;
  private readonly costs: Float64Array;
  private readonly way: Float64Array;

  constructor(target: ArrayLike<number>, missing: number) {
    const rows = target.length;
    this.size = rows + 1;
    this.prices = new Float64Array(rows);
    this.inverse = new Float64Array(this.size * this.size);
    this.shares = new Float64Array(this.size).fill(1);
    this.costs = new Float64Array(this.size);
    this.way = new Float64Array(this.size);
    for (let row = 0; row < this.size; row++) this.inverse[row * this.size + row] = 1;
    for (let row = 0; row < rows; row++) {
      this.shares[row] = target[row] as number;
      this.costs[row] = missing;
    }
    this.reprice();
  }

  /** Brings a pattern; false where it doesn't help. */
  bring(pattern: ArrayLike<number>, cost: number): boolean {
    let worth = this.base;
    for (let row = 0; row < this.prices.length; row++) worth += (this.prices[row] as number) * (pattern[row] as number);
    return worth > cost + TINY * (1 + Math.abs(cost)) && this.enter((row) => pattern[row] as number, 1, cost);
  }

  /** Lets targets be exceeded until no price is below 0; false where that takes too long. */
  settle(): boolean {
    for (let round = 0; round < 4 * this.size; round++) {
      let worst = -1;
      for (let row = 0; row < this.prices.length; row++)
        if ((this.prices[row] as number) < (worst < 0 ? -TINY : (this.prices[worst] as number))) worst = row;
      if (worst < 0) return true;
      if (!this.enter((row) => (row === worst ? -1 : 0), 0, 0)) return false;
    }
    return false;
  }

  private enter(entry: (row: number) => number, sum: number, cost: number): boolean {
    const { size, inverse, shares, way } = this;
    let leaving = -1;
    for (let row = 0; row < size; row++) {
      let value = (inverse[row * size + size - 1] as number) * sum;
      for (let column = 0; column < size - 1; column++)
        value += (inverse[row * size + column] as number) * entry(column);
      way[row] = value;
      if (value <= 1e-7) continue;
      const ratio = (shares[row] as number) / value;
      if (leaving < 0 || ratio < (shares[leaving] as number) / (way[leaving] as number)) leaving = row;
    }
    if (leaving < 0) return false;
    this.pivot(leaving, cost);
    this.reprice();
    return true;
  }

  private pivot(leaving: number, cost: number): void {
    const { size, inverse, shares, way } = this;
    const step = Math.max(0, shares[leaving] as number) / (way[leaving] as number);
    const scale = 1 / (way[leaving] as number);
    for (let column = 0; column < size; column++)
      inverse[leaving * size + column] = (inverse[leaving * size + column] as number) * scale;
    for (let row = 0; row < size; row++) {
      const value = way[row] as number;
      if (row === leaving || value === 0) continue;
      shares[row] = Math.max(0, (shares[row] as number) - step * value);
      for (let column = 0; column < size; column++)
        inverse[row * size + column] =
          (inverse[row * size + column] as number) - value * (inverse[leaving * size + column] as number);
    }
    shares[leaving] = step;
    this.costs[leaving] = cost;
  }

  private reprice(): void {
    const { size, inverse, costs, shares } = this;
    this.value = 0;
    for (let row = 0; row < size; row++) this.value += (costs[row] as number) * (shares[row] as number);
    for (let column = 0; column < size; column++) {
      let price = 0;
      for (let row = 0; row < size; row++) price += (costs[row] as number) * (inverse[row * size + column] as number);
      if (column < size - 1) this.prices[column] = price;
      else this.base = price;
    }
  }
}
