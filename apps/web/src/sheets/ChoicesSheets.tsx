import { frontierSvg } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import type { ChoicesShown } from "../menu/ChoicesShown.ts";
import { useFurther } from "../words/useFurther.ts";
import { PictureButtons } from "./PictureButtons.tsx";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";

/** What money is weighed against, as a picture of the choices found. */
export default function ChoicesSheets({ choices, against }: Pick<ChoicesShown, "choices" | "against">): ReactNode {
  const { further } = useFurther("sheets");
  const { view } = useKitchen();
  const catalogue = useCatalogue();
  const nameFile = useFileName();
  const { name, currency } = view.edited;
  const { figures } = catalogue.sheet;
  const draw = (): string => {
    const points = choices.map(({ moneyMinor, minutes, distinct, shortfallMinor }) => {
      const other = { minutes, variety: distinct, intake: shortfallMinor }[against];
      const label = `${figures.money(Math.round(moneyMinor), currency)}, ${catalogue.tellAgainst(against, other)}`;
      return { moneyMinor, other, label };
    });
    const labels = points.map(({ label }) => label);
    return frontierSvg(points, currency, catalogue.frontier(name, against, labels), figures);
  };
  return <PictureButtons name={further.sheets.frontier} file={nameFile("choices")} draw={draw} />;
}
