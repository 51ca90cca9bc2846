import { keyOfMissing } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";

/** What was not there on a trip, and what sets it. */
export interface NotThere {
  /** Ids of packs. */
  readonly packs: ReadonlySet<string>;
  readonly set: (pack: string, isNotThere: boolean) => void;
}

/** The packs that were not there on a trip, by whoever said so; one that is bought, or whose price is seen, was. */
export function useNotThere(shop: string, trip: CivilDate): NotThere {
  const { session, view } = useKitchen();
  const { missing } = view.state;
  const { day } = view;
  return useMemo(() => {
    const here = [...missing.values()].filter((each) => each.trip === trip && each.shop === shop);
    return {
      packs: new Set(here.map(({ pack }) => pack)),
      set(pack, isNotThere) {
        if (isNotThere === missing.has(keyOfMissing({ trip, shop, pack }))) return;
        void session.write((pen) => [pen.write({ kind: "at-shelf", on: day, trip, shop, pack, isThere: !isNotThere })]);
      },
    };
  }, [session, missing, day, shop, trip]);
}
