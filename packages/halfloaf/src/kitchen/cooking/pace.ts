import { STEP_KINDS, type Step } from "../../dish/index.ts";

export type StepKind = (typeof STEP_KINDS)[number];

/** Factors by kind of step: 1.2 = this cook takes a fifth longer than dishes say. A kind without one counts as 1. */
export type Pace = Readonly<Partial<Record<StepKind, number>>>;

/** A step as it was done: stated minutes and minutes it took. */
export interface ObservedStep {
  readonly kind: StepKind;
  readonly statedMinutes: number;
  readonly observedMinutes: number;
}

/** What is known of one kind of step: how often it was seen, the plain median, and the factor that is used. */
export interface PaceOfKind {
  readonly kind: StepKind;
  readonly count: number;
  readonly median: number;
  readonly factor: number;
}

/** Steps after which the cook's own figure counts as much as the dish's. Common practice, no source. */
const PRIOR_COUNT = 4;
/** Further off is a mistake in the marking or a telephone call, not a pace. */
const [LEAST_FACTOR, MOST_FACTOR] = [0.5, 2.5];

/** What fire and time do, and no cook can hurry: these are only ever lengthened, so that nothing stays raw or hard. */
const UNHURRIED: ReadonlySet<StepKind> = new Set<StepKind>([
  "soak",
  "rest",
  "chill",
  "heat-water",
  "boil",
  "simmer",
  "steam",
  "fry",
  "bake",
  "grill",
  "microwave",
]);

/**
 * The pace of a cook from finished cookings, one line for each kind that was seen, in the order of the kinds. The factor
 * is the median of observed by stated minutes, drawn towards 1 as if four steps had been done in the stated time, so a
 * single odd cooking moves it little; the order of the steps is of no matter. No steps = no lines: that resets it.
 * Steps of no stated minutes say nothing. Throws where minutes are negative or no number.
 * **Source**: shrinkage of a median towards a prior; common practice, no source for the strength.
 */
export function learnPace(observed: readonly ObservedStep[]): PaceOfKind[] {
  return STEP_KINDS.flatMap((kind): PaceOfKind[] => {
    const ratios = observed.filter((step) => step.kind === kind).flatMap(ratioOf);
    if (ratios.length === 0) return [];
    const count = ratios.length;
    const median = medianOf(ratios);
    const drawn = (count * median + PRIOR_COUNT) / (count + PRIOR_COUNT);
    return [{ kind, count, median, factor: Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, drawn)) }];
  });
}

/** The factors of what was learned, ready for a cooking. */
export function toPace(learned: readonly PaceOfKind[]): Pace {
  return Object.fromEntries(learned.map(({ kind, factor }) => [kind, factor]));
}

/**
 * Whole minutes of a step at so many portions, rounded up: `fixed + perPortion x portions`, times the pace. Where the
 * fire or time itself works, a quick cook gains nothing. Throws where portions are not positive.
 */
export function stepMinutes(
  { minutes, kind }: Pick<Step, "minutes" | "kind">,
  portions: number,
  pace: Pace = {},
): number {
  if (!(portions > 0)) throw new RangeError(`${portions} is no number of portions`);
  // A sum such as 0.1 x 30 comes out a hair above the whole minute it is.
  return Math.ceil((minutes.fixed + minutes.perPortion * portions) * paceFactor(kind, pace) - 1e-9);
}

/** What the stated minutes of a kind of step are multiplied by. */
export function paceFactor(kind: StepKind, pace: Pace): number {
  const factor = pace[kind] ?? 1;
  return UNHURRIED.has(kind) ? Math.max(1, factor) : factor;
}

function ratioOf({ statedMinutes, observedMinutes }: ObservedStep): number[] {
  if (!(statedMinutes >= 0 && observedMinutes >= 0)) throw new RangeError("minutes of a step are 0 or more");
  return statedMinutes > 0 ? [observedMinutes / statedMinutes] : [];
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2;
}
