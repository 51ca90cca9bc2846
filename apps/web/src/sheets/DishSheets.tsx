import { type Dish, minutesOf, nutrientsOfDish, withoutOptional } from "halfloaf/dish";
import { retellSheet } from "halfloaf/kitchen";
import {
  type CardSource,
  cardHtml,
  costDriversSvg,
  dishLesson,
  dishToJsonLd,
  lessonHtml,
  type Paper,
  timelineSvg,
  toCardSheet,
  toJsonLdText,
} from "halfloaf/sheet";
import { type ReactNode, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { startThinker } from "../thinking/startThinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { PaperField } from "./PaperField.tsx";
import { type Made, SheetPanel } from "./SheetPanel.tsx";
import { saveFile } from "./saveFile.ts";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";

interface DishSheetsProps {
  readonly dish: Dish;
  readonly portions: number;
}

/** A dish on paper, as pictures and for publishing. */
export default function DishSheets({ dish, portions }: DishSheetsProps): ReactNode {
  const { further } = useFurther("sheets");
  const { view } = useKitchen();
  const names = useNames();
  const catalogue = useCatalogue();
  const nameFile = useFileName();
  const [paper, setPaper] = useState<Paper>("a4");
  const { kitchen, tables, day } = view;
  const source: CardSource = { kitchen, tables, names, dish, portions, on: day };
  const { sheets } = further;
  const fileOf = (what: string): string => nameFile(`${what} ${dish.id}`);
  const drawTimeline = async (): Promise<string | undefined> => {
    const told = await startThinker().order(kitchen, [{ dish: dish.id, portions }], 1);
    if (told.kind !== "sheet") return undefined;
    const sheet = retellSheet(told.sheet, tables.dishes);
    return timelineSvg(sheet, catalogue.timeline(sheet));
  };
  const makeCard = async (): Promise<Made> => {
    const timeline = await drawTimeline();
    const html = cardHtml(toCardSheet(source), catalogue.sheet, {
      paper,
      ...(timeline !== undefined && { timeline }),
    });
    return { title: `${sheets.card}: ${dish.title}`, html, file: fileOf("card") };
  };
  const makeLesson = (): Made => {
    const html = lessonHtml(dishLesson(source, catalogue.sheet.language), catalogue.sheet);
    return { title: `${sheets.lesson}: ${dish.title}`, html, file: fileOf("lesson") };
  };
  const saveData = (): undefined => {
    const { elapsed, ahead } = minutesOf(dish, dish.portions, { rings: Math.max(1, kitchen.kit.rings), cooks: 1 });
    const jsonLd = dishToJsonLd(dish, {
      foods: tables.foods,
      english: kitchen.english,
      language: catalogue.sheet.language,
      minutes: { total: elapsed + ahead },
      nutrients: nutrientsOfDish(dish, tables.foods, tables.retain, withoutOptional),
      cost: catalogue.publishedCost(toCardSheet({ ...source, portions: dish.portions })),
    });
    saveFile(`${fileOf("dish")}.jsonld`, `${toJsonLdText(jsonLd)}\n`, "application/ld+json");
  };
  return (
    <SheetPanel
      currency={kitchen.currency}
      ways={[
        { name: sheets.card, make: makeCard },
        { name: sheets.lesson, make: makeLesson },
        { name: sheets.dishData, make: saveData },
      ]}
      pictures={[
        { name: sheets.timeline, file: fileOf("timeline"), draw: drawTimeline },
        {
          name: sheets.drivers,
          file: fileOf("drivers"),
          draw: () => costDriversSvg(toCardSheet(source), catalogue.sheet),
        },
      ]}
    >
      <PaperField paper={paper} onPaper={setPaper} />
    </SheetPanel>
  );
}
