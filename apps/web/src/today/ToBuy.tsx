import type { ReactNode } from "react";
import { Link } from "wouter";
import type { TripDue } from "../buying/tripsDue.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useWords } from "../words/WordsContext.tsx";

/** A trip that is to be made today, or was to be on a day before: where, what is still to be paid, and the way to its list. */
export function ToBuy({ due: { trip, open } }: { readonly due: TripDue }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const isLate = trip.date < view.day;
  const toPayMinor = open.reduce((sum, { priceMinor }) => sum + priceMinor, 0);
  const packs = open.reduce((sum, { count }) => sum + count, 0);
  return (
    <div className="stack tight">
      {isLate && <p className="soft small">{words.today.plannedFor(formats.day(trip.date))}</p>}
      <h3>{words.today.shop(names.shop(trip.shop))}</h3>
      <p className="small">{words.today.toBuy(packs, formats.money(toPayMinor, view.kitchen.currency))}</p>
      <div className="row">
        <Link className="button main way" href="/buying">
          {words.screens.buying}
        </Link>
      </div>
    </div>
  );
}
