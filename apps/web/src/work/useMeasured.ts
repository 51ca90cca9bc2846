import { scaleAmount } from "halfloaf/dish";
import type { WorkSheet } from "halfloaf/kitchen";
import { listTakenMakings } from "halfloaf/kitchen/record";
import { useMemo } from "react";
import { tellAmount } from "../dishes/tellAmount.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import type { KitchenView } from "../kitchen/KitchenSession.ts";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { firstTaken, keyOfStep } from "./firstTaken.ts";
import { useScaledSheet } from "./useScaledSheet.ts";
import { wishFor } from "./wishFor.ts";

/** One making of a dish, measured out for the portions that are cooked. */
export interface Measured {
  /** The food that the dish first names, by which its steps call it. */
  readonly making: string;
  readonly amount: string;
  /** The food that goes in. */
  readonly food: string;
  readonly cut?: string | undefined;
}

/** A cooking with its amounts: the sheet with the water of its steps, what goes into each dish, and what each step takes first. */
export interface MeasuredSheet {
  readonly sheet: WorkSheet;
  /** By place of the dish. */
  readonly makings: readonly (readonly Measured[])[];
  readonly takenAt: (line: { readonly dish: number; readonly step: string }) => readonly Measured[];
}

/** Measures a cooking out for its portions, with the foods that the week chose or that the stores have. */
export function useMeasured(sheet: WorkSheet): MeasuredSheet {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const names = useNames();
  const scaled = useScaledSheet(sheet);
  return useMemo(() => {
    const dishes = sheet.dishes.map(({ dish }) => view.tables.dishes.find(({ id }) => id === dish));
    const timesOf = (at: number): number => (sheet.dishes[at]?.portions ?? 1) / (dishes[at]?.portions ?? 1);
    const makings = sheet.dishes.map(({ dish, portions }, at) =>
      listMakings(view, dish, portions).map(
        ({ making, chosen }): Measured => ({
          making: making.food,
          amount: tellAmount(scaleAmount(chosen.amount, timesOf(at)), 1, further, formats),
          food: names.food(chosen.food),
          cut: making.cut,
        }),
      ),
    );
    const foods = firstTaken(sheet, dishes);
    return {
      sheet: scaled,
      makings,
      takenAt: (line) => {
        const first = foods.get(keyOfStep(line)) ?? [];
        return (makings[line.dish] ?? []).filter(({ making }) => first.includes(making));
      },
    };
  }, [sheet, scaled, view, names, further, formats]);
}

function listMakings(view: KitchenView, dish: string, portions: number): ReturnType<typeof listTakenMakings> {
  const wish = wishFor(view, dish, portions);
  return wish === undefined ? [] : listTakenMakings(view.state, view.tables.foods, wish);
}
