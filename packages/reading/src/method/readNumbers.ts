/** Numbers that are written as words. */
const WORDS: ReadonlyMap<string, number> = new Map([
  ["half a", 0.5],
  ["half an", 0.5],
  ["a half", 0.5],
  ["a quarter of an", 0.25],
  ["three quarters of an", 0.75],
  ["one and a half", 1.5],
  ["two and a half", 2.5],
  ["a couple of", 2],
  ["couple of", 2],
  ["a couple", 2],
  ["an", 1],
  ["a", 1],
  ["one", 1],
  ["two", 2],
  ["three", 3],
  ["four", 4],
  ["five", 5],
  ["six", 6],
  ["seven", 7],
  ["eight", 8],
  ["nine", 9],
  ["ten", 10],
  ["eleven", 11],
  ["twelve", 12],
  ["fifteen", 15],
  ["twenty", 20],
  ["twenty-five", 25],
  ["thirty", 30],
  ["forty", 40],
  ["forty-five", 45],
  ["fifty", 50],
  ["sixty", 60],
  ["ninety", 90],
  ["a dozen", 12],
  ["a few", 3],
  ["several", 3],
]);

const FRACTIONS = "¼½¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚";
const FRACTION_VALUES = [
  1 / 4,
  1 / 2,
  3 / 4,
  1 / 3,
  2 / 3,
  1 / 8,
  3 / 8,
  5 / 8,
  7 / 8,
  1 / 5,
  2 / 5,
  3 / 5,
  4 / 5,
  1 / 6,
  5 / 6,
];

const spelled = [...WORDS.keys()].sort((a, b) => b.length - a.length).join("|");

/** Pattern of a number in figures ("1 1/2", "1½", "2.5", "2,5", "½"), for use within a larger pattern. */
export const FIGURES = `(?:\\d{1,4} ?[${FRACTIONS}]|\\d{1,4} \\d{1,2}\\/\\d{1,2}|\\d{1,2}\\/\\d{1,2}|\\d{1,6}(?:[.,]\\d{1,3})?|[${FRACTIONS}])`;

/** Pattern of a number in figures or words. */
export const NUMBER = `(?:${FIGURES}|(?<![\\w-])(?:${spelled})(?![\\w-]))`;

/** The value of what `NUMBER` or `FIGURES` matched; undefined for a fraction of nothing. */
export function toNumber(text: string): number | undefined {
  const word = WORDS.get(text.trim().toLowerCase());
  if (word !== undefined) return word;
  const sign = text.at(-1) as string;
  const place = FRACTIONS.indexOf(sign);
  if (place >= 0) return Number(text.slice(0, -1).trim() || 0) + (FRACTION_VALUES[place] as number);
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text.trim());
  if (fraction === null) return Number(text.replace(",", "."));
  const [, whole = "0", above, below] = fraction;
  return Number(below) > 0 ? Number(whole) + Number(above) / Number(below) : undefined;
}

/** True for a number that only says "some". */
export function isVague(text: string): boolean {
  return /^(?:a few|several|(?:a )?couple(?: of)?)$/i.test(text.trim());
}
