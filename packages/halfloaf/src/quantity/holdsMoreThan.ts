/** True where more than so many values, at any depth, stand in a value read from JSON; looks no further than that. */
export function holdsMoreThan(input: unknown, most: number): boolean {
  const open = [input];
  let found = 0;
  while (open.length > 0) {
    if (++found > most) return true;
    const value = open.pop();
    if (typeof value !== "object" || value === null) continue;
    const members: readonly unknown[] = Array.isArray(value) ? value : Object.values(value);
    if (found + open.length + members.length > most) return true;
    open.push(...members);
  }
  return false;
}
