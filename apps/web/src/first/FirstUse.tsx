import { daysBetween } from "halfloaf/quantity";
import { type ReactNode, useState } from "react";
import { useMakeKitchen } from "../kitchen/KitchenProvider.tsx";
import { loadStarter } from "../kitchen/loadStarter.ts";
import { moveDates } from "../kitchen/moveDates.ts";
import { today } from "../kitchen/today.ts";
import { useWords } from "../words/WordsContext.tsx";

/** What a device without a kitchen is offered. */
export default function FirstUse(): ReactNode {
  const { words } = useWords();
  const make = useMakeKitchen();
  const [isBusy, setBusy] = useState(false);
  const openDemo = async (name: string): Promise<void> => {
    setBusy(true);
    const { kitchens } = await loadStarter();
    const content = kitchens.find((kitchen) => kitchen.name === name)?.content as { startsOn: string };
    await make(moveDates(content, daysBetween(content.startsOn, today())));
    setBusy(false);
  };
  return (
    <div className="stack">
      <h1>{words.first.title}</h1>
      <p>{words.first.promise}</p>
      <h2>{words.first.demo}</h2>
      <ul className="lines">
        {Object.entries(words.first.demos).map(([name, about]) => (
          <li key={name}>
            <button type="button" className="button" disabled={isBusy} onClick={() => void openDemo(name)}>
              {about}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
