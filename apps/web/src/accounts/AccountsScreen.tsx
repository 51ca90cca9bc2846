import { accountsBy, type Stretch, startOf, startOfNext } from "halfloaf/kitchen/record";
import { addDays, type CivilDate } from "halfloaf/quantity";
import { type ReactNode, useDeferredValue, useMemo, useState } from "react";
import { Link } from "wouter";
import { lazily } from "../loading/lazily.ts";
import "../kitchen/fields/fields.css";
import "../prices/prices.css";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { useFurther } from "../words/useFurther.ts";
import "./accounts.css";
import { AccountSums } from "./AccountSums.tsx";
import { AccountsPlot } from "./AccountsPlot.tsx";
import { AccountsTable } from "./AccountsTable.tsx";
import { Energy } from "./Energy.tsx";
import { MoneyLeft } from "./MoneyLeft.tsx";
import { Plates } from "./Plates.tsx";
import { Waste } from "./Waste.tsx";

const AccountsSheets = lazily(() => import("../sheets/AccountsSheets.tsx"));

const STRETCHES = ["day", "week", "month"] as const satisfies readonly Stretch[];
/** So many days, weeks or months are shown at once. */
const SHOWN = 6;

/** What was planned, spent, eaten and thrown away. */
export default function AccountsScreen(): ReactNode {
  const { further, words } = useFurther("accounts");
  const { view } = useKitchen();
  const { state, day } = view;
  const isFresh = state.lots.size === 0 && state.menus.length === 0;
  const [stretch, setStretch] = useState<(typeof STRETCHES)[number]>("week");
  const [back, setBack] = useState(0);
  // The touch shows at once; the sums follow as soon as there is time.
  const shown = useDeferredValue(useMemo(() => ({ stretch, back }), [stretch, back]));
  const [from, to] = rangeOf(day, shown.stretch, shown.back);
  const lines = useMemo(() => accountsBy(state, shown.stretch, from, to), [state, shown.stretch, from, to]);
  const [chosen, setChosen] = useState<string>();
  const line = lines.find(({ name }) => name === chosen) ?? lines.at(-1);
  if (isFresh || line === undefined)
    return (
      <div className="stack">
        <h1>{words.screens.accounts}</h1>
        <p className="sheet">
          {further.accounts.none} <Link href="/menu">{words.menu.plan}</Link>
        </p>
      </div>
    );
  return (
    <div className="stack">
      <h1>{words.screens.accounts}</h1>
      <MoneyLeft />
      <div className="row spread">
        <fieldset className="row choice">
          <legend className="unseen">{further.accounts.stretch}</legend>
          {STRETCHES.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={stretch === each}
              onClick={() => {
                setStretch(each);
                setBack(0);
              }}
            >
              {further.accounts[each]}
            </button>
          ))}
        </fieldset>
        <div className="row">
          <button type="button" className="button" onClick={() => setBack(back + 1)}>
            {further.accounts.earlier}
          </button>
          <button type="button" className="button" disabled={back === 0} onClick={() => setBack(back - 1)}>
            {further.accounts.later}
          </button>
        </div>
      </div>
      <AccountsPlot lines={lines} chosen={line.name} stretch={shown.stretch} />
      <AccountsTable lines={lines} chosen={line.name} onChoose={setChosen} />
      <AccountSums line={line} />
      <Plates from={line.from} to={line.to} />
      <Waste from={line.from} to={line.to} />
      <Energy from={line.from} to={line.to} />
      <PrintOrSave>
        <AccountsSheets lines={lines} />
      </PrintOrSave>
    </div>
  );
}

/** First and last day of the stretches that end so many pages back from the one of a day. */
function rangeOf(day: CivilDate, stretch: Stretch, back: number): readonly [CivilDate, CivilDate] {
  let end = startOfNext(day, stretch);
  for (let each = 0; each < back * SHOWN; each++) end = startOf(addDays(end, -1), stretch);
  let from = end;
  for (let each = 0; each < SHOWN; each++) from = startOf(addDays(from, -1), stretch);
  return [from, addDays(end, -1)];
}
