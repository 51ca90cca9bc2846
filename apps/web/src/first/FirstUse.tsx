import { daysBetween, moveDates } from "halfloaf/quantity";
import { type ReactNode, useState } from "react";
import { Link } from "wouter";
import { useDevice, useMakeKitchen } from "../kitchen/KitchenProvider.tsx";
import { loadStarter } from "../kitchen/loadStarter.ts";
import { today } from "../kitchen/today.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { FileDrop } from "../source/FileDrop.tsx";
import { useWords } from "../words/WordsContext.tsx";
import "./first.css";

const RefusedFile = lazily(() => import("../kitchen/RefusedFile.tsx"));
const NewKitchen = lazily(() => import("./NewKitchen.tsx"));

/** What a device without an open kitchen is offered: one of its own, a demo, a backup, or one that is on it already. */
export default function FirstUse(): ReactNode {
  const { words } = useWords();
  const [isNew, setNew] = useState(false);
  if (isNew) return <NewKitchen onLeave={() => setNew(false)} />;
  return (
    <div className="stack">
      <h1>{words.first.title}</h1>
      <p>{words.first.promise}</p>
      <button type="button" className="button main offer" onClick={() => setNew(true)}>
        <span className="offer-title">{words.first.make}</span>
        <span className="small">{words.first.own}</span>
      </button>
      <Link className="button offer" href="/join">
        <span className="offer-title">{words.first.join}</span>
        <span className="small">{words.first.joinNote}</span>
      </Link>
      <OnDevice />
      <Demos />
      <Restore />
    </div>
  );
}

/** The kitchens that are on the device, where none of them is open. */
function OnDevice(): ReactNode {
  const { words } = useWords();
  const { device, change } = useDevice();
  if (device.kitchens.length === 0) return null;
  return (
    <section className="stack tight">
      <h2>{words.first.onDevice}</h2>
      {device.kitchens.map(({ id, title }) => (
        <button key={id} type="button" className="button offer" onClick={() => change({ ...device, open: id })}>
          {title}
        </button>
      ))}
    </section>
  );
}

function Demos(): ReactNode {
  const { words, language } = useWords();
  const make = useMakeKitchen();
  const [isBusy, setBusy] = useState(false);
  const [isFailed, setFailed] = useState(false);
  const openDemo = async (name: string): Promise<void> => {
    setBusy(true);
    const isMade = await makeDemo(name).catch(() => false);
    setFailed(!isMade);
    setBusy(false);
  };
  const makeDemo = async (name: string): Promise<boolean> => {
    const { kitchens } = await loadStarter(language);
    const content = kitchens.find((kitchen) => kitchen.name === name)?.content as { startsOn: string };
    return make(moveDates(content, daysBetween(content.startsOn, today())));
  };
  return (
    <section className="stack tight">
      <h2>{words.first.demo}</h2>
      {Object.entries(words.first.demos).map(([name, about]) => (
        <button key={name} type="button" className="button offer" disabled={isBusy} onClick={() => void openDemo(name)}>
          {about}
        </button>
      ))}
      <p role="status">{isFailed ? words.first.failed : ""}</p>
    </section>
  );
}

function Restore(): ReactNode {
  const { words } = useWords();
  const make = useMakeKitchen();
  const [isFailed, setFailed] = useState(false);
  const [refused, setRefused] = useState<unknown>();
  const restore = async (file: File): Promise<void> => {
    const content = await file
      .text()
      .then((text): unknown => JSON.parse(text))
      .catch(() => undefined);
    const isMade = content !== undefined && (await make(content).catch(() => false));
    setFailed(!isMade);
    setRefused(isMade ? undefined : content);
  };
  return (
    <section className="stack tight">
      <h2>{words.first.restore}</h2>
      <FileDrop
        label={words.first.restoreChoose}
        accept=".json,application/json"
        onFile={(file) => void restore(file)}
      />
      <p role="status">{isFailed ? words.first.restoreFailed : ""}</p>
      {refused !== undefined && (
        <Awaited isQuiet>
          <RefusedFile content={refused} />
        </Awaited>
      )}
    </section>
  );
}
