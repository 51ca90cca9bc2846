import type { MenuProblem } from "../problem.ts";

/** How far each wish is from being met, kept up to date serving by serving. All whole numbers, so that undoing is exact. */
export class WishCounts {
  /** Servings too few or too many, over all wishes that must hold. */
  missed = 0;
  private readonly counts: Int32Array;
  private readonly least: Float64Array;
  private readonly most: Float64Array;
  /** Which price a miss has: a position in `prices`, -1 where the wish must hold. */
  private readonly priceAt: Int32Array;
  private readonly prices: readonly number[];
  private readonly missedAtPrice: Int32Array;
  /** Wishes that a serving of a dish at a sitting counts for: from `starts[dish * sittings + sitting]` on. */
  private readonly starts: Int32Array;
  private readonly wishes: Int32Array;
  private readonly K: number;

  constructor({ wishes = [], dishes, sittings }: MenuProblem) {
    this.K = sittings.length;
    this.counts = new Int32Array(wishes.length);
    this.least = Float64Array.from(wishes, ({ least }) => least ?? 0);
    this.most = Float64Array.from(wishes, ({ most }) => most ?? Infinity);
    this.prices = [...new Set(wishes.flatMap(({ missMinor }) => missMinor ?? []))];
    this.priceAt = Int32Array.from(wishes, ({ missMinor }) =>
      missMinor === undefined ? -1 : this.prices.indexOf(missMinor),
    );
    this.missedAtPrice = new Int32Array(this.prices.length);
    const served: number[][] = Array.from({ length: dishes.length * this.K }, () => []);
    wishes.forEach((wish, w) => {
      for (const dish of wish.dishes) for (const k of wish.sittings) served[dish * this.K + k]?.push(w);
      this.note(w, this.missOf(w));
    });
    this.wishes = Int32Array.from(served.flat());
    this.starts = new Int32Array(served.length + 1);
    served.forEach((list, at) => {
      this.starts[at + 1] = (this.starts[at] as number) + list.length;
    });
  }

  /** Counts a serving of a dish at a sitting (`sign` 1), or takes it away (-1). */
  count(dish: number, sitting: number, sign: number): void {
    const at = dish * this.K + sitting;
    const end = this.starts[at + 1] as number;
    for (let i = this.starts[at] as number; i < end; i++) {
      const w = this.wishes[i] as number;
      const before = this.missOf(w);
      this.counts[w] = (this.counts[w] as number) + sign;
      this.note(w, this.missOf(w) - before);
    }
  }

  private missOf(w: number): number {
    const count = this.counts[w] as number;
    return Math.max(0, (this.least[w] as number) - count, count - (this.most[w] as number));
  }

  private note(w: number, misses: number): void {
    const price = this.priceAt[w] as number;
    if (price < 0) this.missed += misses;
    else this.missedAtPrice[price] = (this.missedAtPrice[price] as number) + misses;
  }

  /** What the wishes that have a price cost as they are met now, in minor units. */
  priceMinor(): number {
    let minor = 0;
    for (let i = 0; i < this.prices.length; i++)
      minor += (this.prices[i] as number) * (this.missedAtPrice[i] as number);
    return minor;
  }
}
