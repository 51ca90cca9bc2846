import type { MenuProblem } from "../problem.ts";

/** What the trips made come to. */
export class TripTotals {
  count = 0;
  costMinor = 0;
  minutes = 0;
  private readonly problem: MenuProblem;

  constructor(problem: MenuProblem) {
    this.problem = problem;
  }

  reckon(made: Uint8Array): void {
    this.count = 0;
    this.costMinor = 0;
    this.minutes = 0;
    this.problem.trips.forEach((trip, i) => {
      if (!made[i]) return;
      this.count++;
      this.costMinor += trip.costMinor;
      this.minutes += trip.minutes;
    });
  }
}
