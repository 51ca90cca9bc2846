import { type ReactNode, useId } from "react";

interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  /** Values with what they are called, in the order shown. */
  readonly choices: readonly (readonly [Value, string])[];
  readonly onChange: (value: Value) => void;
}

/** One of a few, with its label. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>): ReactNode {
  const { label, value, choices, onChange } = props;
  const field = useId();
  return (
    <label className="field" htmlFor={field}>
      {label}
      <select id={field} value={value} onChange={(event) => onChange(event.target.value as Value)}>
        {choices.map(([each, name]) => (
          <option key={each} value={each}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
