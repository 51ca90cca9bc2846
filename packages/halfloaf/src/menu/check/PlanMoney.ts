/** What a plan costs and what it is charged with; amounts of money in minor units. */
export interface PlanMoney {
  /** Paid for packs, offers taken as often as they fit. */
  readonly tillMinor: number;
  /** The same where prices come out high; this is what the budget must stand. */
  readonly highTillMinor: number;
  /** Paid for the trips made. */
  readonly tripMinor: number;
  /** Hands-on minutes and minutes of trips. */
  readonly minutes: number;
  /** Minutes of washing up after all cookings. */
  readonly washUpMinutes: number;
  /** What both are worth. */
  readonly minutesMinor: number;
  readonly dislikeMinor: number;
  /** Price of the sittings that do not have the dish they would keep. */
  readonly changesMinor: number;
  /** Price of what misses the soft bounds, over all eaters. */
  readonly shortfallMinor: number;
  /** Price of the wishes that are not met, of those that need not hold. */
  readonly wishesMinor: number;
  /** Worth of the portions put by for later than the plan. */
  readonly putByMinor: number;
  /** Grams of each food that go off within the plan, in the order of the foods of the problem. */
  readonly wasteG: readonly number[];
  /** What the waste is charged with beyond its price. */
  readonly wastePenaltyMinor: number;
  /** Worth of the stock after the last day less its worth at the start; negative where the plan lives off its stock. */
  readonly creditMinor: number;
  /** Till, trips, minutes, dislike, changes, shortfalls, wishes and waste penalty less the credit and what is put by. */
  readonly totalMinor: number;
}
