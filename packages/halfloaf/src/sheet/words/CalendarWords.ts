/** Words of the calendar. */
export interface CalendarWords {
  readonly name: (kitchen: string) => string;
  readonly cook: (dishes: string) => string;
  /** Portions and minutes of each dish. */
  readonly cookDish: (dish: string, portions: string, minutes: string) => string;
  readonly trip: (shop: string) => string;
  readonly tripLine: (count: string, label: string, price: string) => string;
  readonly tripTill: (till: string) => string;
  readonly begin: (kind: "thaw" | "soak" | "ahead", what: string, dish: string) => string;
  readonly useUp: (food: string, mass: string) => string;
  readonly useUpNote: string;
}
