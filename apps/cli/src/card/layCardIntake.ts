import { tellAmountOf, tellComponent, tellEnergy, tellPercent } from "@halfloaf/words/en";
import { layTable, wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import type { CardData } from "./CardData.ts";

/** Components shown beside the energy; all others are in the data. */
const SHOWN = [
  "proteinG",
  "fatG",
  "saturatesG",
  "carbohydrateAvailableG",
  "sugarsG",
  "freeSugarsG",
  "fibreG",
  "sodiumMg",
  "potassiumMg",
  "calciumMg",
  "ironMg",
  "zincMg",
  "vitaminARaeUg",
  "vitaminCMg",
  "folateDfeUg",
  "vitaminB12Ug",
  "vegetablesFruitG",
] as const satisfies readonly CardData["intake"][number]["component"][];

/** What one portion holds: the energy and the main components, each with how much of it is known. */
export function layCardIntake({ card, width, paint }: Page & { readonly card: CardData }): string[] {
  const find = (component: string) => card.intake.find((line) => line.component === component);
  const energy = find("energyKj");
  const cells = SHOWN.flatMap((component): [string, string, string][] => {
    const line = find(component);
    if (line === undefined) return [];
    const amount = line.amount === undefined ? "unknown" : tellAmountOf(component, line.amount);
    return [
      [tellComponent(component), amount, line.knownShare >= 1 - 1e-9 ? "" : `${tellPercent(line.knownShare)} known`],
    ];
  });
  const told = energy?.amount === undefined ? "Energy unknown" : `Energy ${tellEnergy(energy.amount)}`;
  const share =
    energy === undefined || energy.knownShare >= 1 - 1e-9
      ? ""
      : `, ${tellPercent(energy.knownShare)} of the mass known`;
  const columns = [{ title: "", wraps: true }, { title: "", right: true }, { title: "" }];
  const raw = card.retained
    ? "Losses of cooking are taken off"
    : "Figures of the raw makings, losses of cooking not taken off";
  return [
    paint.heading("IN ONE PORTION"),
    "",
    ...wrapBehind("  ", `${told}${share}.`, width),
    ...layTable(columns, cells, width, 2),
    ...wrapBehind("  ", `${raw}; without what is to taste, optional or unknown.`, width),
  ];
}
