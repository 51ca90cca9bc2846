import { SITTING_KINDS } from "halfloaf/dish";
import { type ReactNode, useId } from "react";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useFurther } from "../words/useFurther.ts";
import type { PageProps, SittingAnswer, SittingKind } from "./Answers.ts";

const MINUTES = [10, 15, 20, 30, 45, 60, 90] as const;

/** When there is time: which sittings come from this kitchen, and the minutes for each. */
export function TimePage({ answers, onChange }: PageProps): ReactNode {
  const { further } = useFurther("first");
  const set = (kind: SittingKind, answer: SittingAnswer): void =>
    onChange({ ...answers, sittings: { ...answers.sittings, [kind]: answer } });
  return (
    <>
      <p className="small soft">{further.first.timeNote}</p>
      {SITTING_KINDS.map((kind) => (
        <Sitting key={kind} kind={kind} answer={answers.sittings[kind]} onChange={(answer) => set(kind, answer)} />
      ))}
    </>
  );
}

interface SittingProps {
  readonly kind: SittingKind;
  readonly answer: SittingAnswer;
  readonly onChange: (answer: SittingAnswer) => void;
}

function Sitting({ kind, answer, onChange }: SittingProps): ReactNode {
  const { words, further } = useFurther("first");
  const { first } = further;
  return (
    <div className="sheet">
      <fieldset className="group">
        <legend className="unseen">{words.sittings[kind]}</legend>
        <div className="row spread">
          <h2>{words.sittings[kind]}</h2>
          <TickField
            label={first.eatsHere}
            isTicked={answer.isHere}
            onChange={(isHere) => onChange({ ...answer, isHere })}
          />
        </div>
        {answer.isHere && (
          <>
            <Minutes
              label={first.minutesWeek}
              minutes={answer.weekMinutes}
              onChange={(weekMinutes) => onChange({ ...answer, weekMinutes })}
            />
            <Minutes
              label={first.minutesEnd}
              minutes={answer.endMinutes}
              onChange={(endMinutes) => onChange({ ...answer, endMinutes })}
            />
            {kind === "midday" && (
              <TickField
                label={first.packedWeek}
                isTicked={answer.isPacked}
                onChange={(isPacked) => onChange({ ...answer, isPacked })}
              />
            )}
          </>
        )}
      </fieldset>
    </div>
  );
}

interface MinutesProps {
  readonly label: string;
  readonly minutes: number;
  readonly onChange: (minutes: number) => void;
}

function Minutes({ label, minutes, onChange }: MinutesProps): ReactNode {
  const name = useId();
  return (
    <fieldset className="group">
      <legend className="small">{label}</legend>
      <div className="chips">
        {MINUTES.map((each) => (
          <label key={each} className="chip">
            <input
              type="radio"
              name={name}
              className="unseen"
              checked={each === minutes}
              onChange={() => onChange(each)}
            />
            {each}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
