/** The next step of 1, 2 or 5 times a power of ten that is no less than what was asked for; above 0. */
export function niceStep(atLeast: number): number {
  if (!(atLeast > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(atLeast));
  const factor = [1, 2, 5, 10].find((each) => each * power >= atLeast * (1 - 1e-9)) as number;
  return factor * power;
}
