import type { PriceHistory } from "halfloaf/kitchen/record";
import { priceHistorySvg } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { PictureButtons } from "./PictureButtons.tsx";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";

interface PriceSheetsProps {
  readonly food: string;
  readonly histories: readonly PriceHistory[];
}

/** How the prices of a food have moved, as a picture. */
export default function PriceSheets({ food, histories }: PriceSheetsProps): ReactNode {
  const { further, formats } = useFurther("sheets");
  const { view } = useKitchen();
  const names = useNames();
  const catalogue = useCatalogue();
  const nameFile = useFileName();
  const { name, currency } = view.edited;
  const tell = ({ label, shop }: PriceHistory): string => `${label}, ${names.shop(shop)}`;
  const draw = (): string | undefined => {
    const told = histories.flatMap((history) => {
      const last = history.points.at(-1);
      return last === undefined
        ? []
        : [`${tell(history)}: ${formats.money(last.priceMinor, currency)}, ${formats.day(last.on)}`];
    });
    if (told.length === 0) return undefined;
    const words = catalogue.prices(name, currency, told, tell);
    return priceHistorySvg(histories, currency, words, catalogue.sheet.figures);
  };
  return <PictureButtons name={further.sheets.pricesPicture} file={nameFile(`prices ${food}`)} draw={draw} />;
}
