/**
 * Minutes as an ISO 8601 duration of hours, minutes and seconds ("PT1H30M"), rounded to the second; "PT0S" for none.
 * **Source**: ISO 8601-1:2019, 5.5.2.
 */
export function toDuration(minutes: number): string {
  const seconds = Math.round(minutes * 60);
  const parts = [
    [Math.floor(seconds / 3600), "H"],
    [Math.floor((seconds % 3600) / 60), "M"],
    [seconds % 60, "S"],
  ] as const;
  const text = parts.map(([count, unit]) => (count > 0 ? `${count}${unit}` : "")).join("");
  return `PT${text === "" ? "0S" : text}`;
}
