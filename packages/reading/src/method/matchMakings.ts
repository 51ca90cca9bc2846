/** What a making may be called in a method: its name in the list of makings, the names of its food. */
export interface NamedMaking {
  readonly names: readonly string[];
  /** The heading that it stands under in the list of makings. */
  readonly heading?: string;
}

const ALL = /\b(?:all|everything|(?:the|your) ingredients|both)\b/i;
const REST = /\b(?:(?:remaining|rest of the|other) (?:ingredients|makings|things)|everything else)\b/i;
const INGREDIENTS = /\bingredients\b|\beverything\b/i;

/** Words that many foods share and that name none of them. */
const SHARED = new Set(
  "baking cooking frying roasting to up made as per your any not from one half other fresh dried dry frozen tinned canned can tin jar large small medium big ground whole plain ripe hot cold warm raw cooked light low fat free extra virgin red green white brown black yellow sweet mixed good quality chopped sliced diced grated finely roughly peeled of and or the a in with for into smoked salted unsalted powder leaf leaves seed seeds sauce paste water oil juice piece cut new baby wholemeal skimmed semi hard soft quick rolled boneless skinless lean reduced".split(
    " ",
  ),
);

/**
 * Positions of the makings that a text handles, by their names. The longest names are found first, so that "spring onion" is no
 * onion; then single words that name one making only. "All ingredients" are all of them, "the remaining" those not in `used`.
 */
export function matchMakings(
  text: string,
  makings: readonly NamedMaking[],
  used: ReadonlySet<number> = new Set(),
): number[] {
  const group = INGREDIENTS.test(text) ? matchGroup(text, makings, used) : undefined;
  if (group !== undefined) return group;
  const words = toWords(text);
  const taken = new Set<number>();
  const found = new Set<number>();
  for (const { at, name } of namesByLength(makings)) {
    for (const place of placesOf(name, words)) {
      const span = name.map((_, offset) => place + offset);
      if (span.some((word) => taken.has(word)) && !found.has(at)) continue;
      for (const word of span) taken.add(word);
      found.add(at);
    }
  }
  const left = new Set(words.filter((_, place) => !taken.has(place)));
  for (const at of matchSingleWords(left, makings, found)) found.add(at);
  return [...found].sort((a, b) => a - b);
}

function matchGroup(text: string, makings: readonly NamedMaking[], used: ReadonlySet<number>): number[] | undefined {
  const every = [...makings.keys()];
  if (REST.test(text)) return every.filter((at) => !used.has(at));
  const words = new Set(toWords(text));
  const headed = every.filter((at) => {
    const heading = toWords(makings[at]?.heading ?? "").filter((word) => !SHARED.has(word));
    return heading.length > 0 && heading.every((word) => words.has(word));
  });
  if (headed.length > 0) return headed;
  return ALL.test(text) ? every : undefined;
}

function namesByLength(makings: readonly NamedMaking[]): { readonly at: number; readonly name: readonly string[] }[] {
  return makings
    .flatMap(({ names }, at) => names.map((name) => ({ at, name: toWords(name) })))
    .filter(
      ({ name }) => name.length > 0 && !(name.length === 1 && SHARED.has(name[0] as string) && name[0] !== "water"),
    )
    .sort((a, b) => b.name.length - a.name.length);
}

/** Words that stand for one making only, or that several end with ("beans" for two kinds of beans). */
function matchSingleWords(
  left: ReadonlySet<string>,
  makings: readonly NamedMaking[],
  found: ReadonlySet<number>,
): number[] {
  const wordsOf = makings.map(({ names }) => new Set(names.flatMap(toWords)));
  const lastOf = makings.map(({ names }) => new Set(names.flatMap((name) => toWords(name).at(-1) ?? [])));
  return [...makings.keys()].filter((at) => {
    if (found.has(at)) return false;
    const isOwn = (word: string) =>
      !SHARED.has(word) && wordsOf.every((words, other) => other === at || !words.has(word));
    if ([...(wordsOf[at] as Set<string>)].some((word) => left.has(word) && isOwn(word))) return true;
    return [...(lastOf[at] as Set<string>)].some((word) => left.has(word));
  });
}

function placesOf(name: readonly string[], words: readonly string[]): number[] {
  return [...words.keys()].filter((place) => name.every((word, offset) => words[place + offset] === word));
}

/** The words of a text in lower case and the singular, as far as English endings tell. */
function toWords(text: string): string[] {
  return (text.toLowerCase().match(/\p{L}+/gu) ?? []).map(toSingular);
}

function toSingular(word: string): string {
  if (word.length <= 3 || /(?:ss|us|is)$/.test(word)) return word;
  if (/ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:oes|ches|shes|sses|xes)$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}
