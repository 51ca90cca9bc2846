import type { WeekPlan } from "halfloaf/kitchen";
import type { Pack } from "halfloaf/price";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { useWords } from "../words/WordsContext.tsx";
import "../kitchen/fields/fields.css";
import { Besides } from "./Besides.tsx";
import { BuyingLine } from "./BuyingLine.tsx";
import "./buying.css";
import { linesOf } from "./linesOf.ts";
import { tripsDue } from "./tripsDue.ts";
import { useNotThere } from "./useNotThere.ts";

const Scan = lazily(() => import("./Scan.tsx"));

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
  const [chosen, setChosen] = useState(() => {
    const [due] = tripsDue(view.state, week, view.day);
    return (
      due?.at ??
      Math.max(
        0,
        week.trips.findIndex(({ date }) => date >= view.day),
      )
    );
  });
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
  const { words, further, formats } = useFurther("buying");
  const { view } = useKitchen();
  const { currency, shops } = view.kitchen;
  const [isScanning, setScanning] = useState(false);
  const [scanned, setScanned] = useState<Pack>();
  const lines = useMemo(() => linesOf(view.state, week, trip), [view.state, week, trip]);
  const sections = [...new Set(lines.map(({ line }) => line.section))];
  const bought = lines.filter(({ paidMinor }) => paidMinor !== undefined);
  const paid = bought.reduce((sum, { paidMinor = 0 }) => sum + paidMinor, 0);
  const notThere = useNotThere(trip.shop, trip.date);
  const open = lines
    .filter(({ line, paidMinor }) => paidMinor === undefined && !notThere.packs.has(line.pack))
    .reduce((sum, { line }) => sum + line.priceMinor, 0);
  const bagG = bought.reduce((sum, { line }) => sum + line.massG, 0);
  const carryKg = shops.find(({ id }) => id === trip.shop)?.trip.carryKg;
  const isNoted = view.state.trips.some(({ on, shop }) => on === view.day && shop === trip.shop);
  const fareMinor = isNoted ? 0 : trip.fareMinor;
  const isOnList = lines.some(({ line }) => line.pack === scanned?.id);
  const find = (pack: Pack): void => {
    setScanned(pack);
    document.getElementById(`line-${pack.id}`)?.scrollIntoView({ block: "center" });
  };
  return (
    <div className="stack">
      <div className="till" role="status">
        <span>{words.buying.paid(formats.money(paid, currency))}</span>
        <span>{words.buying.open(formats.money(open, currency))}</span>
        <span>{further.shelf.ticked(bought.length, lines.length)}</span>
        <span>{further.shelf.bag(formats.mass(bagG), formats.mass(trip.massG))}</span>
      </div>
      {carryKg !== undefined && trip.massG > carryKg * 1000 && (
        <p className="caution">{further.shelf.tooHeavy(formats.mass(carryKg * 1000))}</p>
      )}
      {trip.fareMinor > 0 && (
        <p className="small soft">{further.shelf.fare(formats.money(trip.fareMinor, currency))}</p>
      )}
      <div>
        <button type="button" className="button" aria-expanded={isScanning} onClick={() => setScanning(!isScanning)}>
          {further.scan.open}
        </button>
      </div>
      {isScanning && (
        <Awaited>
          <Scan shop={trip.shop} onPack={find} />
        </Awaited>
      )}
      {sections.map((section) => (
        <section key={section} className="stack tight">
          <h2>{further.section(section)}</h2>
          <ul className="lines">
            {lines
              .filter(({ line }) => line.section === section)
              .map((each) => (
                <li key={each.line.pack}>
                  <BuyingLine
                    tick={each}
                    shop={trip.shop}
                    fareMinor={fareMinor}
                    week={week.from}
                    notThere={notThere}
                    isFound={each.line.pack === scanned?.id}
                  />
                </li>
              ))}
          </ul>
        </section>
      ))}
      <Besides key={scanned?.id} shop={trip.shop} fareMinor={fareMinor} scanned={isOnList ? undefined : scanned} />
    </div>
  );
}
