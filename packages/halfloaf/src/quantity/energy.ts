/** Kilojoules in one kilocalorie (thermochemical). **Source**: FAO Food and Nutrition Paper 77 (2003), chapter 2. */
export const KJ_PER_KCAL = 4.184;

/** Kilojoules from kilocalories. */
export function toKj(energyKcal: number): number {
  return energyKcal * KJ_PER_KCAL;
}

/** Kilocalories from kilojoules. */
export function toKcal(energyKj: number): number {
  return energyKj / KJ_PER_KCAL;
}
