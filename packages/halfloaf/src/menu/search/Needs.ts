/** Mass below which nothing is missing or left (g). */
export const DUST_G = 1e-6;

/** What is needed of one food: grams by period, ascending, with the day of each. */
export class Needs {
  count = 0;
  readonly massG: Float64Array;
  readonly period: Int32Array;
  readonly day: Int32Array;
  /** What is needed from each position on, in all. */
  readonly fromG: Float64Array;

  constructor(periods: number) {
    this.massG = new Float64Array(periods);
    this.period = new Int32Array(periods);
    this.day = new Int32Array(periods);
    this.fromG = new Float64Array(periods + 1);
  }

  add(massG: number, period: number, day: number): void {
    this.massG[this.count] = massG;
    this.period[this.count] = period;
    this.day[this.count++] = day;
  }

  /** Leaves out what is fed already and adds up the rest. */
  close(): void {
    let kept = 0;
    for (let i = 0; i < this.count; i++) {
      if ((this.massG[i] as number) <= DUST_G) continue;
      this.massG[kept] = this.massG[i] as number;
      this.period[kept] = this.period[i] as number;
      this.day[kept++] = this.day[i] as number;
    }
    this.count = kept;
    this.fromG[kept] = 0;
    for (let i = kept - 1; i >= 0; i--) this.fromG[i] = (this.fromG[i + 1] as number) + (this.massG[i] as number);
  }
}
