/** A name as an id that is not taken yet: its letters and digits in lower case, joined by hyphens; a number where it is. */
export function newId(name: string, taken: Iterable<string>, otherwise: string): string {
  const words =
    name
      .normalize("NFD")
      .toLowerCase()
      .replace(/['’\p{M}]/gu, "")
      .match(/[a-z0-9]+/g) ?? [];
  const base = words.slice(0, 12).join("-") || otherwise;
  const known = new Set(taken);
  let id = base;
  for (let number = 2; known.has(id); number++) id = `${base}-${number}`;
  return id;
}
