import { proxy } from "comlink";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useRef, useState } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import type { DaysAsked } from "../thinking/stateAsked.ts";
import { useFurther } from "../words/useFurther.ts";
import { ChoicesPlot } from "./ChoicesPlot.tsx";
import type { ChoicesShown } from "./ChoicesShown.ts";
import { AGAINST, type Against, type ChoiceTold } from "./reasoning/Told.ts";
import { useReasoner } from "./reasoning/useReasoner.ts";

const ChoicesSheets = lazily(() => import("../sheets/ChoicesSheets.tsx"));

interface ChoicesProps {
  readonly kitchen: Kitchen;
  /** The days to plan as they can be planned at that moment. */
  readonly askNow: () => DaysAsked;
  /** The week that is shown. */
  readonly shown: WeekPlan | undefined;
  readonly onOffer: (week: WeekPlan) => void;
}

/** Menus between which only money and one other thing decide, found one after the other, to pick from. */
export default function Choices({ kitchen, askNow, shown, onOffer }: ChoicesProps): ReactNode {
  const { words, further } = useFurther("menu");
  const { choices: said } = further;
  const [against, setAgainst] = useState<Against>("minutes");
  const { finding, find, stop, reset } = useFinding(kitchen, askNow);
  const { choices, share, fault } = finding;
  const isBusy = share !== undefined && share < 1 && fault === undefined;
  return (
    <>
      <p className="small soft">{said.note}</p>
      <div className="row">
        {AGAINST.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === against}
            onClick={() => {
              reset();
              setAgainst(each);
            }}
          >
            {said.against[each]}
          </button>
        ))}
      </div>
      <div className="row" role="status">
        {isBusy ? (
          <>
            <progress max={1} value={share} aria-label={said.finding} />
            <span>{said.finding}</span>
            <button type="button" className="button" onClick={stop}>
              {further.week.stop}
            </button>
          </>
        ) : (
          <button type="button" className="button main" onClick={() => find(against)}>
            {said.find}
          </button>
        )}
        {fault !== undefined && <span>{words.menu.failed(fault)}</span>}
        {share === 1 && choices.length === 0 && <span>{said.none}</span>}
      </div>
      {choices.length > 0 && (
        <>
          <ChoicesPlot choices={choices} against={against} shown={shown} currency={kitchen.currency} onPick={onOffer} />
          <List choices={choices} against={against} shown={shown} currency={kitchen.currency} onPick={onOffer} />
          <Awaited isQuiet>
            <ChoicesSheets choices={choices} against={against} />
          </Awaited>
        </>
      )}
    </>
  );
}

function List({ choices, against, shown, currency, onPick }: ChoicesShown): ReactNode {
  const { further, formats } = useFurther("menu");
  const { choices: said } = further;
  const tell = ({ minutes, distinct, shortfallMinor }: ChoiceTold): string => {
    if (against === "minutes") return said.other.minutes(formats.minutes(minutes));
    if (against === "variety") return said.other.variety(formats.number(distinct));
    return said.other.intake(formats.money(Math.round(shortfallMinor), currency));
  };
  return (
    <ul className="lines">
      {choices.map((choice) => (
        <li key={choice.moneyMinor} className="line-with-ways">
          <span>{said.point(formats.money(Math.round(choice.moneyMinor), currency), tell(choice))}</span>
          {choice.week === shown ? (
            <span className="soft">{said.shown}</span>
          ) : (
            <button type="button" className="button" onClick={() => onPick(choice.week)}>
              {further.week.showIt}
              <span className="unseen"> {formats.money(Math.round(choice.moneyMinor), currency)}</span>
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

interface Finding {
  readonly choices: readonly ChoiceTold[];
  /** From 0 to 1; undefined where nothing is being found. */
  readonly share?: number;
  readonly fault?: string;
}

const NOTHING: Finding = { choices: [] };

function useFinding(
  kitchen: Kitchen,
  askNow: () => DaysAsked,
): { finding: Finding; find: (against: Against) => void; stop: () => void; reset: () => void } {
  const reasoner = useReasoner();
  const [finding, setFinding] = useState<Finding>(NOTHING);
  const latest = useRef(0);
  const stop = (): void => {
    latest.current++;
    reasoner.stop();
    setFinding(({ choices }) => ({ choices }));
  };
  const find = (against: Against): void => {
    const own = ++latest.current;
    const set = (next: (before: Finding) => Finding): void => {
      if (own === latest.current) setFinding(next);
    };
    setFinding({ choices: [], share: 0 });
    const tell = async (choices: readonly ChoiceTold[], share: number): Promise<void> =>
      set((before) => ({ choices: keepKnown(before.choices, choices), share }));
    reasoner
      .ask()
      .choose(kitchen, askNow(), against, proxy(tell))
      .then(
        () => set(({ choices }) => ({ choices, share: 1 })),
        (error: unknown) => set(({ choices }) => ({ choices, fault: String(error) })),
      );
  };
  const reset = (): void => {
    stop();
    setFinding(NOTHING);
  };
  return { finding, find, stop, reset };
}

/** Those that were told before stay the same objects, so that the one that is shown is known again. */
function keepKnown(before: readonly ChoiceTold[], now: readonly ChoiceTold[]): ChoiceTold[] {
  return now.map(
    (choice) =>
      before.find(
        ({ moneyMinor, minutes, distinct }) =>
          moneyMinor === choice.moneyMinor && minutes === choice.minutes && distinct === choice.distinct,
      ) ?? choice,
  );
}
