/** What the bound gains when a column is pushed up or down by one, learned from the branches made. */
export class Pseudocosts {
  private readonly gains: Float64Array;
  private readonly counts: Int32Array;
  private readonly guess: Float64Array;
  /** Gain over guess, summed over all branches down and up. */
  private readonly ratio = [1, 1];
  private readonly ratios = [1, 1];

  /** `guess` ranks columns before anything is known of them. */
  constructor(guess: Float64Array) {
    this.guess = guess;
    this.gains = new Float64Array(2 * guess.length);
    this.counts = new Int32Array(2 * guess.length);
  }

  learn(column: number, up: boolean, gain: number, distance: number): void {
    const side = up ? 1 : 0;
    const perUnit = Math.max(0, gain) / Math.max(1e-6, distance);
    const at = 2 * column + side;
    this.gains[at] = (this.gains[at] as number) + perUnit;
    this.counts[at] = (this.counts[at] as number) + 1;
    this.ratio[side] = (this.ratio[side] as number) + Math.min(10, perUnit / (this.guess[column] as number));
    this.ratios[side] = (this.ratios[side] as number) + 1;
  }

  /** How often the lesser known side was tried. */
  known(column: number): number {
    return Math.min(this.counts[2 * column] as number, this.counts[2 * column + 1] as number);
  }

  /** High where both sides promise a gain. */
  score(column: number, value: number): number {
    const below = value - Math.floor(value);
    return Math.max(1e-3, this.expect(column, 1) * (1 - below)) * Math.max(1e-3, this.expect(column, 0) * below);
  }

  private expect(column: number, side: 0 | 1): number {
    const at = 2 * column + side;
    const count = this.counts[at] as number;
    if (count > 0) return (this.gains[at] as number) / count;
    return ((this.guess[column] as number) * (this.ratio[side] as number)) / (this.ratios[side] as number);
  }
}
