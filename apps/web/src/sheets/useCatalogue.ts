import type { SheetCatalogue } from "@halfloaf/words/SheetCatalogue";
import { use } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { loadSurely } from "../loading/loadSurely.ts";
import { useWords } from "../words/WordsContext.tsx";

type Tongue = "de" | "british" | "american";
const loading = new Map<Tongue, Promise<SheetCatalogue>>();

/** What sheets say in the language in use, in the kitchen's kind of English; whoever asks waits until it is there. */
export function useCatalogue(): SheetCatalogue {
  const { language } = useWords();
  const { view } = useKitchen();
  return use(load(language === "de" ? "de" : view.kitchen.english));
}

function load(tongue: Tongue): Promise<SheetCatalogue> {
  const known = loading.get(tongue);
  if (known !== undefined) return known;
  const fresh = loadSurely(async () =>
    tongue === "de"
      ? (await import("@halfloaf/words/de/sheets")).SHEET_CATALOGUE_DE
      : (await import("@halfloaf/words/en/sheets")).sheetCatalogueEn(tongue),
  );
  loading.set(tongue, fresh);
  return fresh;
}
