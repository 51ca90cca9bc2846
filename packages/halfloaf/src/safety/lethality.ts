/** A heating that counts as safe: so many minutes at a temperature, and the z value that carries it over to others. */
export interface LethalReference {
  /** Degrees Celsius. */
  readonly referenceC: number;
  readonly minutes: number;
  /** Degrees Celsius by which ten times less time is enough. */
  readonly zC: number;
}

/** **Source**: UK Food Standards Agency, cooking your food: 2 minutes at 70 C; z fitted to its list of heatings. */
const FSA_REFERENCE: LethalReference = { referenceC: 70, minutes: 2, zC: 7.5 };

/**
 * Minutes in which a temperature in the middle of the food, in degrees Celsius, kills as much as the reference does:
 * minutes x 10^((reference - temperature) / z). The curve says nothing below 60 C, where no guidance lists a time.
 * Throws where z or the minutes are not above zero or a temperature is no number.
 * **Source**: the z-value model of thermal death time; Bigelow 1921, J. Infect. Dis. 29 (from memory).
 */
export function equivalentMinutes(tempC: number, reference: Partial<LethalReference> = {}): number {
  const { referenceC, minutes, zC } = { ...FSA_REFERENCE, ...reference };
  if (!(zC > 0 && minutes > 0 && Number.isFinite(tempC) && Number.isFinite(referenceC))) {
    throw new RangeError(`no lethality of ${tempC} C by ${minutes} min at ${referenceC} C, z ${zC} C`);
  }
  return minutes * 10 ** ((referenceC - tempC) / zC);
}
