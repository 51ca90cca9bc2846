import { InvalidArgumentError } from "commander";
import { SITTING_KINDS } from "halfloaf/dish";
import type { SittingKind, SittingName } from "halfloaf/kitchen";
import { parseDay } from "../input/parseOption.ts";
import { quote } from "../words/valueWords.ts";

/** What one option of `halfloaf mend` says, with the text it was said in; names are not looked up yet. */
export type AskedChange = { readonly text: string } & (
  | { readonly kind: "refuse"; readonly dish: string }
  | { readonly kind: "want"; readonly at: SittingName; readonly dish: string }
  | { readonly kind: "price"; readonly pack: string; readonly price: string }
  | { readonly kind: "gone"; readonly pack: string }
  | { readonly kind: "skip"; readonly at: SittingName }
  | { readonly kind: "guest"; readonly at: SittingName; readonly portions: number }
  | { readonly kind: "off"; readonly lot: string }
);

type Asked<Kind extends AskedChange["kind"]> = Extract<AskedChange, { kind: Kind }>;
type Reader<Kind extends AskedChange["kind"]> = (text: string) => Omit<Asked<Kind>, "text" | "kind">;

const MOST_GUESTS = 50;

/** Readers of the options by kind; each refuses what is not written as it should be. */
export const READERS: { readonly [Kind in AskedChange["kind"]]: Reader<Kind> } = {
  refuse: (dish) => ({ dish }),
  want: (text) => {
    const [at, dish] = splitAt(text, "DATE:KIND=DISH");
    return { at: parseSittingName(at), dish };
  },
  price: (text) => {
    const [pack, price] = splitAt(text, "PACK=PRICE");
    return { pack, price };
  },
  gone: (pack) => ({ pack }),
  skip: (text) => ({ at: parseSittingName(text) }),
  guest: (text) => {
    const [at, count] = splitAt(text, "DATE:KIND=NUMBER");
    const portions = /^\d{1,3}$/.test(count) ? Number(count) : 0;
    if (portions < 1 || portions > MOST_GUESTS)
      throw new InvalidArgumentError(`${quote(count)} is no whole number from 1 to ${MOST_GUESTS}.`);
    return { at: parseSittingName(at), portions };
  },
  off: (lot) => ({ lot }),
};

function splitAt(text: string, form: string): [string, string] {
  const at = text.indexOf("=");
  if (at <= 0 || at === text.length - 1) throw new InvalidArgumentError(`${quote(text)} is not written as ${form}.`);
  return [text.slice(0, at), text.slice(at + 1)];
}

/** "2026-12-01:evening" or "2026-12-01:evening:ada"; anything else is refused. */
function parseSittingName(text: string): SittingName {
  const [date = "", kind = "", eater, ...rest] = text.split(":");
  const isKind = (word: string): word is SittingKind => SITTING_KINDS.some((one) => one === word);
  if (isKind(kind) && rest.length === 0 && eater !== "")
    return { date: parseDay(date), kind, ...(eater !== undefined && { eater }) };
  throw new InvalidArgumentError(
    `${quote(text)} is no sitting. Write it as DATE:KIND or DATE:KIND:EATER with one of ${SITTING_KINDS.join(", ")}.`,
  );
}
