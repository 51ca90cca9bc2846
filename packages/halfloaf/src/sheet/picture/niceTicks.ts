/** Sizes of a step that are easy to count in. */
const STEPS = [1, 2, 5, 10];

/** The least money that an axis goes up to, so that its ticks are whole minor units. */
export const LEAST_MINOR = 5;

/** The next step of 1, 2 or 5 times a power of ten that is no less than what was asked for; 1 where that is not above 0. */
export function niceStep(atLeast: number): number {
  if (!(atLeast > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(atLeast));
  const factor = STEPS.find((each) => each * power >= atLeast * (1 - 1e-9)) ?? 10;
  return factor * power;
}

/** Round numbers from at most the least to at least the most of some values, about so many of them; a single value gets room. */
export function niceTicks(least: number, most: number, about = 5): number[] {
  const span = most > least ? most - least : Math.max(1, Math.abs(most));
  const step = niceStep(span / about);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}
