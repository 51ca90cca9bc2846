import type { MenuProblem } from "../problem.ts";

/**
 * The least that hands-on minutes change by with each serving, washing up included, whichever cookings it falls to: known before
 * servings are joined to cookings.
 */
export class MinuteBounds {
  private readonly perPortion: Float64Array;
  /** Minutes of each dish however little is cooked; the least that one more serving and the most that one less can change by. */
  private readonly first: Float64Array;
  private readonly more: Float64Array;
  private readonly less: Float64Array;

  constructor({ dishes, worth }: MenuProblem) {
    const { leftoverMinutes, vesselMinutes = 0 } = worth;
    this.perPortion = Float64Array.from(dishes, ({ handsOn }) => handsOn.perPortion);
    this.first = Float64Array.from(dishes, ({ handsOn, vessels = 0 }) => handsOn.fixed + vessels * vesselMinutes);
    this.more = this.first.map((minutes) => Math.min(minutes, leftoverMinutes));
    this.less = this.first.map((minutes) => Math.max(minutes, leftoverMinutes));
  }

  /** For one more serving of so many portions; `isFirst` where there was none. */
  ofMore(dish: number, portions: number, isFirst: boolean): number {
    return (this.perPortion[dish] as number) * portions + ((isFirst ? this.first : this.more)[dish] as number);
  }

  /** For one serving less: negative. */
  ofLess(dish: number, portions: number): number {
    return -(this.perPortion[dish] as number) * portions - (this.less[dish] as number);
  }
}
