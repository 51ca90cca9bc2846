import type { ReactNode } from "react";
import { TickField } from "./TickField.tsx";

interface TicksFieldProps<Value extends string> {
  readonly legend: string;
  /** True where the names are short, so that several fit beside each other. */
  readonly isShort?: boolean;
  /** Values with what they are called, in the order shown. */
  readonly choices: readonly (readonly [Value, string])[];
  readonly ticked: readonly Value[];
  readonly onChange: (ticked: Value[]) => void;
}

/** Any of a few. */
export function TicksField<Value extends string>(props: TicksFieldProps<Value>): ReactNode {
  const { legend, isShort = false, choices, ticked, onChange } = props;
  const tick = (value: Value, isTicked: boolean): void =>
    onChange(choices.flatMap(([each]) => ((each === value ? isTicked : ticked.includes(each)) ? [each] : [])));
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      <div className={isShort ? "ticks short" : "ticks"}>
        {choices.map(([value, label]) => (
          <TickField
            key={value}
            label={label}
            isTicked={ticked.includes(value)}
            onChange={(isTicked) => tick(value, isTicked)}
          />
        ))}
      </div>
    </fieldset>
  );
}
