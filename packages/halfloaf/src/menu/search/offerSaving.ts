import type { MenuPack } from "../problem.ts";
import type { CoverItem, CoverTable } from "./CoverTable.ts";
import type { OpeningPath } from "./Opening.ts";
import type { Source } from "./Sources.ts";

/**
 * What the offers take off for packs that come together on one trip, whenever they are opened (minor units); at the high
 * prices or at those expected. An offer is taken where it is to advantage at the price expected.
 */
export function offerSaving(packs: readonly MenuPack[], path: OpeningPath, high: boolean): number {
  let saving = 0;
  for (let k = 0; k < path.length; k++) {
    const source = path.source[k] as Source;
    if (source.slackMinor && !comesBefore(path, k)) saving += savingOnTrip(packs, path, k, high);
  }
  return saving;
}

/** True where an earlier opening is of the same source and trip. */
function comesBefore({ source, trip }: OpeningPath, k: number): boolean {
  for (let other = 0; other < k; other++) if (source[other] === source[k] && trip[other] === trip[k]) return true;
  return false;
}

function savingOnTrip(packs: readonly MenuPack[], path: OpeningPath, from: number, high: boolean): number {
  const { items } = (path.source[from] as Source).table;
  let saving = 0;
  for (let i = 0; i < items.length; i++) {
    const pack = packs[(items[i] as CoverItem).pack] as MenuPack;
    const each = pack.offer === undefined ? 0 : savingOf(pack, pack.offer, high);
    if (pack.offer === undefined || each === 0) continue;
    let count = 0;
    for (let k = from; k < path.length; k++) {
      const same = path.source[k] === path.source[from] && path.trip[k] === path.trip[from];
      const { counts } = path.table[k] as CoverTable;
      if (same) count += counts[(path.row[k] as number) * items.length + i] as number;
    }
    saving += Math.floor(count / pack.offer.count) * each;
  }
  return saving;
}

function savingOf(pack: MenuPack, offer: NonNullable<MenuPack["offer"]>, high: boolean): number {
  const expected = offer.count * pack.priceMinor - offer.priceMinor;
  if (expected <= 0 || !high) return Math.max(0, expected);
  return offer.count * (pack.highMinor ?? pack.priceMinor) - (offer.highMinor ?? offer.priceMinor);
}
