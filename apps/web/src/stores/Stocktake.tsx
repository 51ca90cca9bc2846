import { type Count, stocktake } from "halfloaf/kitchen/record";
import type { LotState } from "halfloaf/stores";
import { type FormEvent, type ReactNode, useState } from "react";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface StocktakeProps {
  readonly lots: readonly LotState[];
  readonly onDone: () => void;
}

/** All lots of a place to be counted in one go: what stays empty is left as it is. */
export function Stocktake({ lots, onDone }: StocktakeProps): ReactNode {
  const { further, formats } = useFurther("stores");
  const { session, view } = useKitchen();
  const names = useNames();
  const [found, setFound] = useState<Readonly<Record<string, number | undefined>>>({});
  const counts = Object.entries(found).flatMap(([lot, massG]): Count[] =>
    massG === undefined ? [] : [{ lot, massG }],
  );
  const isSound = counts.every(({ massG }) => massG >= 0);
  const book = (event: FormEvent): void => {
    event.preventDefault();
    if (!isSound) return;
    if (counts.length > 0) void session.write((pen) => stocktake(view.state, counts, view.day, pen).events);
    onDone();
  };
  return (
    <form className="sheet stack tight" onSubmit={book}>
      <p className="small soft">{further.stocktake.about}</p>
      <div className="fields">
        {lots.map(({ id, food, cooked, leftG }) => (
          <NumberField
            key={id}
            label={further.stocktake.line(
              food === undefined ? names.dish(cooked?.dish ?? id) : names.food(food),
              formats.mass(leftG),
            )}
            value={undefined}
            onChange={(massG) => setFound({ ...found, [id]: massG })}
          />
        ))}
      </div>
      <div className="row">
        <button type="submit" className="button main" disabled={!isSound}>
          {further.stocktake.book(counts.length)}
        </button>
        <button type="button" className="button" onClick={onDone}>
          {further.cancel}
        </button>
      </div>
    </form>
  );
}
