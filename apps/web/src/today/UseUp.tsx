import { throwAway, type UseUpLine } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LongList } from "../kitchen/LongList.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { useWords } from "../words/WordsContext.tsx";

const LotActs = lazily(() => import("../stores/LotActs.tsx"));

/** What must be used up soon, the first to go first, and what has gone off already; a touch opens what can be told of it. */
export function UseUp({ lines }: { readonly lines: readonly UseUpLine[] }): ReactNode {
  const { words } = useWords();
  const { session, view } = useKitchen();
  const isOff = lines.some(({ daysLeft = 0 }) => daysLeft < 0);
  const throwOff = (): void => {
    void session.write((pen) => throwAway(view.state, view.day, pen));
  };
  if (lines.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="use-up">
      <h2 id="use-up">{words.today.useUp}</h2>
      <LongList className="lines">
        {lines.map((line) => (
          <li key={line.lot}>
            <Line line={line} />
          </li>
        ))}
      </LongList>
      {isOff && (
        <Allowed to="wasted">
          <div>
            <button type="button" className="button" onClick={throwOff}>
              {words.today.throwOff}
            </button>
          </div>
        </Allowed>
      )}
    </section>
  );
}

function Line({ line: { lot, food, dish, leftG, leftMinor, daysLeft = 0 } }: { readonly line: UseUpLine }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const state = view.state.lots.get(lot);
  return (
    <Unfolding
      className="lot"
      summaryClassName="row spread"
      summary={
        <>
          <span>
            {food === undefined ? names.dish(dish ?? lot) : names.food(food)}, {formats.mass(leftG)}
          </span>
          <span className={daysLeft < 0 ? "figure gone-off" : "figure"}>{words.today.daysLeft(daysLeft)}</span>
          <span className="figure soft small">{formats.money(leftMinor, view.kitchen.currency)}</span>
        </>
      }
    >
      {state !== undefined && (
        <div className="telling">
          <LotActs lot={state} />
        </div>
      )}
    </Unfolding>
  );
}
