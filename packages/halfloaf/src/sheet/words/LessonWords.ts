/** Words of the page for teaching. */
export interface LessonWords {
  readonly title: (dish: string) => string;
  readonly dayTitle: (kitchen: string, day: string) => string;
  readonly intro: (portions: number, minutes: string) => string;
  readonly makings: string;
  readonly method: string;
  readonly step: (minutes: string, isHandsFree: boolean) => string;
  readonly ahead: string;
  readonly sums: string;
  /** The cost of a cooking, and the same as a sum of its plates. */
  readonly batchSum: (cost: string, plates: string) => string;
  readonly plate: (name: string, cost: string) => string;
  /** A portion that nobody eats yet, by its number. */
  readonly portion: (number: number) => string;
  /** What waits for later weeks. */
  readonly later: string;
  readonly packSum: string;
  readonly pack: string;
  readonly price: string;
  readonly taken: string;
  readonly cost: string;
  readonly together: string;
  readonly ofPack: (mass: string, cost: string) => string;
}
