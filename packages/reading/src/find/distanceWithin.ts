/**
 * The least number of letters to insert, drop, change or swap with their neighbour that turns one word into another;
 * undefined where it is more than `most`. **Source**: Damerau 1964, Communications of the ACM 7, 171-176, with each
 * pair swapped at most once (optimal string alignment).
 */
export function distanceWithin(one: string, other: string, most: number): number | undefined {
  if (Math.abs(one.length - other.length) > most) return undefined;
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min((row[j] as number) + 1, (next[j - 1] as number) + 1, (row[j - 1] as number) + same);
      const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      if (swapped) least = Math.min(least, (before[j - 2] as number) + 1);
      next.push(least);
    }
    if (Math.min(...next) > most) return undefined;
    before = row;
    row = next;
  }
  const distance = row[other.length] as number;
  return distance <= most ? distance : undefined;
}
