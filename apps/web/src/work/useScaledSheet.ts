import { scaleSheet, type WorkSheet } from "halfloaf/kitchen";
import { useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";

/** A cooking whose steps name the water for the portions that are cooked; undefined where nothing is. */
export function useScaledSheet<Sheet extends WorkSheet | undefined>(
  sheet: Sheet,
): WorkSheet | Extract<Sheet, undefined> {
  const { formats } = useWords();
  const { dishes } = useKitchen().view.tables;
  return useMemo(() => {
    if (sheet === undefined) return undefined as Extract<Sheet, undefined>;
    const cooked = sheet.dishes.map(({ dish }) => dishes.find(({ id }) => id === dish));
    return scaleSheet(sheet, cooked, (value) => formats.number(value, 2));
  }, [sheet, dishes, formats]);
}
