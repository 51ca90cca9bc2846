import { type SittingKind, USUAL_MINUTES } from "halfloaf/kitchen";
import type { SittingTimes } from "halfloaf/sheet";
import { type ReactNode, useId } from "react";
import { useFurther } from "../words/useFurther.ts";

interface SittingTimesFieldsProps {
  readonly kinds: readonly SittingKind[];
  readonly times: SittingTimes;
  readonly onTimes: (times: SittingTimes) => void;
}

/** When people sit down, for the calendar. */
export function SittingTimesFields({ kinds, times, onTimes }: SittingTimesFieldsProps): ReactNode {
  const { further, words } = useFurther("sheets");
  const field = useId();
  return (
    <fieldset className="fields">
      <legend>{further.sheets.sittingTimes}</legend>
      {kinds.map((kind) => (
        <label key={kind} className="field" htmlFor={`${field} ${kind}`}>
          {words.sittings[kind]}
          <input
            id={`${field} ${kind}`}
            type="time"
            value={toClock(times[kind] ?? USUAL_MINUTES[kind])}
            onChange={({ target }) => {
              const minutes = fromClock(target.value);
              if (minutes !== undefined) onTimes({ ...times, [kind]: minutes });
            }}
          />
        </label>
      ))}
    </fieldset>
  );
}

function toClock(minutes: number): string {
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, "0")).join(":");
}

function fromClock(text: string): number | undefined {
  const [, hours, minutes] = /^(\d\d):(\d\d)/.exec(text) ?? [];
  return hours === undefined ? undefined : Number(hours) * 60 + Number(minutes);
}
