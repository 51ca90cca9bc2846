import type { WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Undo } from "../today/Undo.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { BuyingLine } from "./BuyingLine.tsx";
import { linesOf } from "./linesOf.ts";

/** What to buy on each trip, what the till will say, and whether it can be carried. */
export default function BuyingScreen(): ReactNode {
  const { words } = useWords();
  const { view } = useKitchen();
  const week = view.menu?.week;
  return (
    <div className="stack">
      <div className="row spread">
        <h1>{words.screens.buying}</h1>
        <Undo />
      </div>
      {week === undefined ? (
        <p className="sheet">
          {words.today.noMenu} <Link href="/menu">{words.menu.plan}</Link>
        </p>
      ) : (
        <Trips week={week} />
      )}
    </div>
  );
}

function Trips({ week }: { readonly week: WeekPlan }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const next = week.trips.findIndex(({ date }) => date >= view.day);
  const [chosen, setChosen] = useState(Math.max(0, next));
  const trip = week.trips[chosen];
  if (trip === undefined) return <p className="soft">{words.buying.nothing}</p>;
  return (
    <>
      <fieldset className="row choice">
        <legend className="unseen">{words.buying.trip}</legend>
        {week.trips.map(({ date, shop }, at) => (
          <button
            key={`${date} ${shop}`}
            type="button"
            className="button"
            aria-pressed={at === chosen}
            onClick={() => setChosen(at)}
          >
            {formats.day(date)}, {names.shop(shop)}
          </button>
        ))}
      </fieldset>
      <Trip key={chosen} week={week} trip={trip} />
    </>
  );
}

function Trip({ week, trip }: { readonly week: WeekPlan; readonly trip: WeekPlan["trips"][number] }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const { currency } = view.kitchen;
  const lines = linesOf(view.state, week, trip);
  const sections = [...new Set(lines.map(({ line }) => line.section))];
  const paid = lines.reduce((sum, { paidMinor }) => sum + (paidMinor ?? 0), 0);
  const open = lines.reduce((sum, { line, paidMinor }) => sum + (paidMinor === undefined ? line.priceMinor : 0), 0);
  return (
    <div className="stack">
      <div className="till" role="status">
        <span>{words.buying.paid(formats.money(paid, currency))}</span>
        <span>{words.buying.open(formats.money(open, currency))}</span>
        <span>{words.buying.weight(formats.mass(trip.massG))}</span>
      </div>
      {sections.map((section) => (
        <section key={section} className="stack tight">
          <h2>{section}</h2>
          <ul className="lines">
            {lines
              .filter(({ line }) => line.section === section)
              .map((each) => (
                <li key={each.line.pack}>
                  <BuyingLine tick={each} shop={trip.shop} week={week.from} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
