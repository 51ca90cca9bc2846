import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface DaysFieldProps {
  /** What the days are for; absent = days. */
  readonly legend?: string;
  /** ISO 8601 weekdays, Monday = 1. */
  readonly days: readonly number[];
  readonly onChange: (days: number[]) => void;
}

/** Weekdays to choose from. */
export function DaysField({ legend, days, onChange }: DaysFieldProps): ReactNode {
  const { further } = useFurther("kitchen");
  return (
    <fieldset className="choice">
      <legend>{legend ?? further.kitchen.days}</legend>
      <div className="days">
        {further.weekdaysShort.map((name, at) => {
          const isOn = days.includes(at + 1);
          return (
            <button
              key={name}
              type="button"
              className="button"
              aria-pressed={isOn}
              title={further.weekdays[at]}
              onClick={() => onChange(isOn ? days.filter((day) => day !== at + 1) : [...days, at + 1].sort())}
            >
              {name}
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
