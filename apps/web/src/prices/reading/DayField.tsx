import { type CivilDate, isCivilDate } from "halfloaf/quantity";
import { type ReactNode, useId } from "react";

interface DayFieldProps {
  readonly label: string;
  readonly value: CivilDate;
  /** Given days of the calendar alone. */
  readonly onChange: (day: CivilDate) => void;
}

/** A day with its label. */
export function DayField({ label, value, onChange }: DayFieldProps): ReactNode {
  const field = useId();
  return (
    <label className="field" htmlFor={field}>
      {label}
      <input
        id={field}
        type="date"
        value={value}
        onChange={(event) => isCivilDate(event.target.value) && onChange(event.target.value)}
      />
    </label>
  );
}
