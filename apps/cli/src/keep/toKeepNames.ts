import type { RecordState } from "halfloaf/kitchen/record";
import { harmless } from "../output/harmless.ts";
import type { KeepNames } from "../words/keepWords.ts";
import type { OpenKeep } from "./openKeep.ts";

/** The names of a kept kitchen: those of packs and lots besides. */
export function toKeepNames({ names, edited, kept }: OpenKeep, state: RecordState = kept.events.state): KeepNames {
  const labels = new Map(edited.packs.map(({ id, label }) => [id, label]));
  return {
    ...names,
    currency: edited.currency,
    pack: (id) => harmless(labels.get(id) ?? id),
    lot: (id) => {
      const lot = state.lots.get(id);
      if (lot?.cooked !== undefined) return names.dish(lot.cooked.dish);
      return lot?.food === undefined ? harmless(id) : names.food(lot.food);
    },
  };
}
