import { type Pack, toGtin14 } from "halfloaf/price";
import { type FoldedText, foldText, nearness, toFolded } from "../table/nearness.ts";

/** What is known of goods that are to be matched to a pack. */
export interface Goods {
  readonly text: string;
  readonly brand?: string | undefined;
  /** Id of the shop; absent where it is not known, so that packs of every shop may be meant. */
  readonly shop?: string | undefined;
  readonly gtin?: string | undefined;
}

/** A known pack that may be meant, and how near its label is from 0 to 1. */
export interface NearPack {
  readonly pack: Pack;
  readonly nearness: number;
}

/**
 * Which pack goods are: one that is known for sure by its number, by what was said before or by its own label, or none for
 * sure, with the nearest ones to choose from and, where another shop sells the same number, that pack to copy from.
 */
export type PackMatch =
  | { readonly kind: "known"; readonly pack: Pack; readonly by: "gtin" | "memory" | "label" }
  | { readonly kind: "open"; readonly nearest: readonly NearPack[]; readonly sameGoods?: Pack };

const LEAST_NEARNESS = 0.4;
/** Of one pack; a till writes it in a few ways, and what is older than these is forgotten. */
const MOST_TEXTS = 12;

/** The packs of a kitchen, ready to be found by number, by the texts they were said to go by and by label. */
export class PackIndex {
  private readonly packs: readonly { readonly pack: Pack; readonly label: FoldedText; readonly full: FoldedText }[];
  private readonly byGtin = new Map<string, Pack[]>();
  private readonly byLabel = new Map<string, Pack[]>();
  private readonly byStart = new Map<string, Set<number>>();
  private readonly memory = new Map<string, Pack>();

  /** Where two packs of a shop go by one text, the later one is meant. */
  constructor(packs: readonly Pack[]) {
    this.packs = packs.map((pack) => ({
      pack,
      label: toFolded(pack.label),
      full: toFolded(pack.brand === undefined ? pack.label : `${pack.brand} ${pack.label}`),
    }));
    for (const [at, { pack, label, full }] of this.packs.entries()) {
      const gtin = pack.gtin === undefined ? undefined : toGtin14(pack.gtin);
      if (gtin !== undefined) add(this.byGtin, gtin, pack);
      for (const folded of new Set([label.folded, full.folded])) add(this.byLabel, folded, pack);
      for (const { word } of full.words)
        this.byStart.set(startOf(word), (this.byStart.get(startOf(word)) ?? new Set()).add(at));
      for (const text of pack.knownAs ?? []) this.memory.set(keyOf(pack.shop, text), pack);
    }
  }

  /** Matches goods by number, then by what was said before, then by the label itself; nothing else counts as known. */
  match(goods: Goods): PackMatch {
    const gtin = goods.gtin === undefined ? undefined : toGtin14(goods.gtin);
    const numbered = gtin === undefined ? [] : (this.byGtin.get(gtin) ?? []);
    const byGtin = only(numbered, goods.shop);
    if (byGtin !== undefined) return { kind: "known", pack: byGtin, by: "gtin" };
    const byMemory = this.recall(goods);
    if (byMemory !== undefined && !isOtherNumber(byMemory, gtin))
      return { kind: "known", pack: byMemory, by: "memory" };
    const texts = goods.brand === undefined ? [goods.text] : [goods.text, `${goods.brand} ${goods.text}`];
    const labelled = new Set(texts.flatMap((text) => this.byLabel.get(foldText(text)) ?? []));
    const byLabel = only([...labelled], goods.shop);
    if (byLabel !== undefined && !isOtherNumber(byLabel, gtin)) return { kind: "known", pack: byLabel, by: "label" };
    const same = numbered[0] === undefined ? {} : { sameGoods: numbered[0] };
    return { kind: "open", nearest: this.nearest(goods), ...same };
  }

  /** The packs of the shop with the nearest labels, the nearest first; none that is unlike. */
  nearest({ text, brand, shop }: Goods, most = 3): NearPack[] {
    const folded = toFolded(brand === undefined ? text : `${brand} ${text}`);
    const bare = toFolded(text);
    const places = new Set(folded.words.flatMap(({ word }) => [...(this.byStart.get(startOf(word)) ?? [])]));
    const near = [...places].flatMap((at): NearPack[] => {
      const known = this.packs[at];
      if (known === undefined || (shop !== undefined && known.pack.shop !== shop)) return [];
      const found = Math.max(nearness(folded, known.full), nearness(bare, known.label));
      return found < LEAST_NEARNESS ? [] : [{ pack: known.pack, nearness: found }];
    });
    return near.sort((a, b) => b.nearness - a.nearness || (a.pack.id < b.pack.id ? -1 : 1)).slice(0, most);
  }

  private recall({ text, shop }: Goods): Pack | undefined {
    return shop === undefined ? undefined : this.memory.get(keyOf(shop, text));
  }
}

/** That a text on receipts and in lists of its shop means a pack. */
export interface SaidMatch {
  readonly text: string;
  /** Id of the pack. */
  readonly pack: string;
}

/**
 * The packs with a text put down to the one that it was said to mean; no other pack of the same shop goes by it any longer.
 * Packs that nothing changes for stay the same objects. A pack that is not there changes nothing.
 */
export function rememberMatch(packs: readonly Pack[], { text, pack: id }: SaidMatch): Pack[] {
  const meant = packs.find((pack) => pack.id === id);
  if (meant === undefined) return [...packs];
  const folded = foldText(text);
  return packs.map((pack) => {
    const { knownAs = [], ...rest } = pack;
    const others = knownAs.filter((each) => foldText(each) !== folded);
    if (pack === meant) return { ...pack, knownAs: [...others, text].slice(-MOST_TEXTS) };
    if (pack.shop !== meant.shop || others.length === knownAs.length) return pack;
    return others.length === 0 ? rest : { ...pack, knownAs: others };
  });
}

function keyOf(shop: string, text: string): string {
  return `${shop} ${foldText(text)}`;
}

/** Words are looked up by their first two letters, which abbreviations and most slips leave as they are. */
function startOf(word: string): string {
  return word.slice(0, 2);
}

function add(map: Map<string, Pack[]>, key: string, pack: Pack): void {
  const before = map.get(key);
  if (before === undefined) map.set(key, [pack]);
  else before.push(pack);
}

/** The only pack among these that the shop sells; undefined where there is none or more than one. */
function only(packs: readonly Pack[], shop: string | undefined): Pack | undefined {
  const sold = shop === undefined ? packs : packs.filter((pack) => pack.shop === shop);
  return sold.length === 1 ? sold[0] : undefined;
}

/** True where both have a number and the numbers differ, so that a label alike cannot mean the same goods. */
function isOtherNumber(pack: Pack, gtin: string | undefined): boolean {
  return gtin !== undefined && pack.gtin !== undefined && toGtin14(pack.gtin) !== gtin;
}
