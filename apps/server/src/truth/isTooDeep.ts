/** Tells whether a text of JSON nests lists and objects deeper than so many times; what stands in strings does not count. */
export function isTooDeep(text: string, most: number): boolean {
  let depth = 0;
  let isInString = false;
  for (let at = 0; at < text.length; at++) {
    const letter = text[at];
    if (isInString) {
      if (letter === "\\") at++;
      else if (letter === '"') isInString = false;
    } else if (letter === '"') isInString = true;
    else if (letter === "[" || letter === "{") {
      if (++depth > most) return true;
    } else if (letter === "]" || letter === "}") depth--;
  }
  return false;
}
