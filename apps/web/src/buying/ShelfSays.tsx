import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import type { ShelfAnswer } from "./shelfAnswer.ts";

/** What can be said at once: how much dearer, and which other pack would do. */
export function ShelfSays({ answer }: { readonly answer: ShelfAnswer }): ReactNode {
  const { further, formats } = useFurther("buying");
  const { view } = useKitchen();
  const { shelf } = further;
  const { found, dearerMinor, other, isWorthIt, neededG } = answer;
  const money = (minor: number): string => formats.money(minor, view.kitchen.currency);
  const tellDearer = (minor: number): string =>
    minor === 0 ? shelf.asDear : minor > 0 ? shelf.dearer(money(minor)) : shelf.cheaper(money(-minor));
  return (
    <>
      {found !== undefined && dearerMinor !== undefined && (
        <p>
          {shelf.together(found.count, money(found.costMinor))} {tellDearer(dearerMinor)}
        </p>
      )}
      {other === undefined ? (
        found === undefined && <p>{shelf.noOther}</p>
      ) : (
        <p>
          {isWorthIt ? shelf.otherDearer : shelf.otherCheaper}{" "}
          <b>{shelf.other(other.count, other.pack.label, money(other.costMinor))}</b>
        </p>
      )}
      <p className="small soft">{shelf.needed(formats.mass(neededG))}</p>
    </>
  );
}
