import { type CivilDate, isCivilDate } from "halfloaf/quantity";
import { type ReactNode, useId } from "react";

interface DayFieldProps {
  readonly label: string;
  /** Undefined shows an empty field. */
  readonly value: CivilDate | undefined;
  /** Given days of the calendar alone. */
  readonly onChange: (day: CivilDate) => void;
  /** Told where the day is taken away; without it one stays. */
  readonly onClear?: () => void;
}

/** A day with its label. */
export function DayField({ label, value, onChange, onClear }: DayFieldProps): ReactNode {
  const field = useId();
  const take = (text: string): void => {
    if (isCivilDate(text)) onChange(text);
    else if (text === "") onClear?.();
  };
  return (
    <label className="field" htmlFor={field}>
      {label}
      <input id={field} type="date" value={value ?? ""} onChange={(event) => take(event.target.value)} />
    </label>
  );
}
