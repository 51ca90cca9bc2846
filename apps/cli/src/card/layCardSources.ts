import { tellComponent } from "@halfloaf/words/en";
import { harmless } from "../output/harmless.ts";
import { wrapBehind } from "../output/layout.ts";
import type { CardData } from "./CardData.ts";
import type { CardPage } from "./CardPage.ts";

const MOST_NAMED = 4;

/** Where the figures of the foods come from; components from elsewhere by name, those beyond a few by their number. */
export function layCardSources({ card, width, paint }: CardPage): string[] {
  if (card.sources.length === 0) return [];
  const lines = card.sources.flatMap(({ name, source, others }) => [
    ...wrapBehind("  ", `${harmless(name)}: ${harmless(source)}`, width),
    ...others.flatMap((other) => wrapBehind("    ", harmless(tellOther(other)), width)),
  ]);
  return [paint.heading("FIGURES FROM"), "", ...lines];
}

function tellOther({ source, components }: CardData["sources"][number]["others"][number]): string {
  const names = [...new Set(components.map(tellComponent))];
  const more = names.length - MOST_NAMED;
  return `${names.slice(0, MOST_NAMED).join(", ")}${more > 0 ? ` and ${more} more` : ""}: ${source}`;
}
