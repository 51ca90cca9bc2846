import type { CivilDate } from "halfloaf/quantity";
import { useMemo } from "react";
import { useDevice } from "../kitchen/KitchenProvider.tsx";
import { useOnDevice } from "../kitchen/useOnDevice.ts";

/** A pack that was not at the shelf on a trip of a kitchen. */
interface Missed {
  readonly kitchen: string;
  readonly date: CivilDate;
  readonly shop: string;
  readonly pack: string;
}

/** The oldest go first; a trip has a few of them. */
const MOST = 100;
const NONE: readonly Missed[] = [];

/** What was not there on a trip, and what sets it. */
export interface NotThere {
  /** Ids of packs. */
  readonly packs: ReadonlySet<string>;
  readonly set: (pack: string, isNotThere: boolean) => void;
}

/** The packs that were not there on a trip. The device remembers them by itself until later trips push them out. */
export function useNotThere(shop: string, date: CivilDate): NotThere {
  const { device } = useDevice();
  const kitchen = device.open ?? "";
  const [all, setAll] = useOnDevice("halfloaf-not-there", isMissedList, NONE);
  return useMemo(() => {
    const isHere = (each: Missed): boolean => each.kitchen === kitchen && each.date === date && each.shop === shop;
    return {
      packs: new Set(all.filter(isHere).map(({ pack }) => pack)),
      set(pack, isNotThere) {
        const others = all.filter((each) => !(isHere(each) && each.pack === pack));
        if (isNotThere || others.length < all.length)
          setAll((isNotThere ? [...others, { kitchen, date, shop, pack }] : others).slice(-MOST));
      },
    };
  }, [all, setAll, kitchen, date, shop]);
}

function isMissedList(value: unknown): value is readonly Missed[] {
  const keys = ["kitchen", "date", "shop", "pack"];
  return (
    Array.isArray(value) &&
    value.every((each) => typeof each === "object" && each !== null && keys.every((key) => key in each))
  );
}
