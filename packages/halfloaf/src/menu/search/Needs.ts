/** Mass below which nothing is missing or left (g). */
export const DUST_G = 1e-6;

/** What is needed of one food: grams by period, ascending, with the day of each. */
export class Needs {
  count = 0;
  readonly massG: Float64Array;
  readonly period: Int32Array;
  readonly day: Int32Array;

  constructor(periods: number) {
    this.massG = new Float64Array(periods);
    this.period = new Int32Array(periods);
    this.day = new Int32Array(periods);
  }
}
