import type { ReferenceIntake } from "./referenceIntake.ts";
import type { ReferenceComponent } from "./referenceTable.ts";

/** What is known of an intake: the sum of its known parts, and how much of the eaten mass they are. */
export interface KnownIntake {
  /** Sum of the known parts over all days, in the unit of the component; undefined where no part is known. */
  readonly amount: number | undefined;
  /** Share of the mass eaten whose amount is known, from 0 to 1; below 1 the true amount may be larger. */
  readonly knownShare: number;
}

/** Intakes by component; an absent component is wholly unknown. */
export type KnownIntakes = Readonly<Partial<Record<ReferenceComponent, KnownIntake>>>;

/**
 * How an intake stands to a reference, as sure as what is known of it:
 * met; short (of an at-least); above (an at-most); or open, where the unknown part decides.
 */
export type Verdict = "met" | "short" | "above" | "open";

/** One reference held against one intake over all the days. */
export interface Assessment {
  readonly reference: ReferenceIntake;
  readonly verdict: Verdict;
  /** The reference over all the days. */
  readonly wanted: number;
  /** The known sum; absent where nothing is known. */
  readonly amount?: number;
  /** Share of the mass eaten whose amount is known, from 0 to 1. */
  readonly knownShare: number;
  /**
   * Distance between amount and wanted, never negative: the surplus or the room left where met, what is missing where
   * short, the excess where above; where open, what is missing or the room left by the known part alone.
   */
  readonly by: number;
  /** How to read `by`: the unknown part can only add to what is eaten. */
  readonly bySureness: "exactly" | "at-least" | "at-most";
}

/** Share of an amount that is taken for rounding of sums in floating point. */
const ROUNDING = 1e-9;

/**
 * Holds intakes against references over a number of days, one assessment a reference in their order.
 *
 * An unknown part can only add. So an at-least that the known part meets is met, and an at-most that the known part
 * passes is passed, however much is unknown; the other way round nothing is claimed while a part is unknown.
 * Throws where days is not above zero.
 */
export function assess(
  intakes: KnownIntakes,
  references: readonly ReferenceIntake[],
  days: number,
): readonly Assessment[] {
  if (!(Number.isFinite(days) && days > 0)) throw new RangeError(`${days} days are no time to assess`);
  return references.map((reference) => assessOne(intakes[reference.component], reference, days));
}

function assessOne(intake: KnownIntake | undefined, reference: ReferenceIntake, days: number): Assessment {
  const known = intake !== undefined && intake.knownShare > 0 ? intake.amount : undefined;
  const knownShare = known === undefined ? 0 : (intake?.knownShare ?? 0);
  const wanted = reference.amountPerDay * days;
  const sum = known ?? 0;
  const isWhole = knownShare >= 1 - ROUNDING;
  const isOver = sum > wanted * (1 + ROUNDING);
  const isUnder = sum < wanted * (1 - ROUNDING);
  return {
    reference,
    wanted,
    ...(known !== undefined && { amount: known }),
    knownShare,
    verdict: judge(reference.kind, isOver, isUnder, isWhole),
    by: isOver || isUnder ? Math.abs(sum - wanted) : 0,
    bySureness: isWhole ? "exactly" : isUnder ? "at-most" : "at-least",
  };
}

function judge(kind: ReferenceIntake["kind"], isOver: boolean, isUnder: boolean, isWhole: boolean): Verdict {
  if (kind === "at-least") return isUnder ? (isWhole ? "short" : "open") : "met";
  return isOver ? "above" : isWhole ? "met" : "open";
}
