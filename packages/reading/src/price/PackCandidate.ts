import { type Observation, type Offer, Pack, type Seen } from "halfloaf/price";
import { type Parsed, parseWith } from "halfloaf/quantity";

/** What a list or a receipt tells of goods that are no known pack yet; what it does not tell is absent. */
export interface PackCandidate {
  readonly label: string;
  readonly brand?: string;
  /** Id of the shop. */
  readonly shop?: string;
  readonly content?: Pack["content"];
  readonly priceMinor: number;
  readonly offer?: Offer;
  readonly gtin?: string;
  readonly section?: string;
  /** Where and when the price was seen. */
  readonly seen?: Seen;
}

/**
 * Makes a pack of a candidate and of what a person adds, which goes before what the candidate says. What is still missing
 * or does not fit is told; a price whose day or place is not known is an estimate.
 */
export function toPack(candidate: PackCandidate, added: Partial<Pack> & Pick<Pack, "id" | "food">): Parsed<Pack> {
  const estimate = candidate.seen === undefined && added.seen === undefined ? { estimate: true } : {};
  return parseWith(Pack, { ...candidate, ...estimate, ...added });
}

/** The look at a price that a candidate is for a known pack; undefined where its day or place is not known. */
export function toObservation(
  pack: Pick<Pack, "id">,
  { priceMinor, offer, seen }: Pick<PackCandidate, "priceMinor" | "offer" | "seen">,
): Observation | undefined {
  if (seen === undefined) return undefined;
  return { pack: pack.id, priceMinor, ...(offer && { offer }), seen };
}
