/**
 * The i-th term (from 1) of 1, 1, 2, 1, 1, 2, 4, 1, ...: how many units of work to do before starting afresh.
 * **Source**: Luby, Sinclair, Zuckerman 1993, "Optimal speedup of Las Vegas algorithms", Information Processing Letters 47.
 */
export function luby(i: number): number {
  let length = 1;
  while (length < i) length = 2 * length + 1;
  let rest = i;
  while (rest !== length) {
    length = (length - 1) / 2;
    if (rest > length) rest -= length;
  }
  return (length + 1) / 2;
}
