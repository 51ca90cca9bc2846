/** A volume in running text, in the units that makings are poured in: "350 mL", "1.5 L", "2,2 l". */
const VOLUME = /(?<![\d.,])(\d+(?:[.,]\d+)?)(\s?)(m?)([Ll])(?![\p{L}\d])/gu;

/** Up to so many mL a jug is read to so many. */
const JUG_STEPS: readonly (readonly [number, number])[] = [
  [50, 5],
  [1000, 10],
  [Number.POSITIVE_INFINITY, 50],
];

/**
 * The text of a step as it holds for so many times the portions that its dish is written for: the water that it names by volume
 * grows with them, rounded as a jug is read. All other words stay; so does the whole text for the portions as written. Numbers are
 * told by `tellNumber`. `times` is more than 0, else it throws.
 *
 * **Source**: common practice, no source: liquid that is taken up or boiled in goes by the portions.
 */
export function scaleVolumes(text: string, times: number, tellNumber: (value: number) => string = String): string {
  if (!(times > 0)) throw new RangeError(`a dish is not cooked ${times} times`);
  if (Math.abs(times - 1) < 1e-9) return text;
  return text.replace(VOLUME, (_, amount: string, gap: string, milli: string, litre: string) => {
    const volumeMl = Number(amount.replace(",", ".")) * (milli === "" ? 1000 : 1) * times;
    const poured = roundToJug(volumeMl);
    return poured < 1000 ? `${tellNumber(poured)}${gap}m${litre}` : `${tellNumber(poured / 1000)}${gap}${litre}`;
  });
}

function roundToJug(volumeMl: number): number {
  const [, step] = JUG_STEPS.find(([below]) => volumeMl < below) as readonly [number, number];
  return Math.max(step, Math.round(volumeMl / step) * step);
}
