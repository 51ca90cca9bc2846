import { type ReactNode, useId, useState } from "react";
import { useWords } from "../../words/WordsContext.tsx";

interface NumberFieldProps {
  readonly label: string;
  /** Undefined shows an empty field. */
  readonly value: number | undefined;
  /** Given undefined for an empty field and NaN for what is no number, so that the schema can say so. */
  readonly onChange: (value: number | undefined) => void;
  readonly isWhole?: boolean;
}

/** A number with its label, written with a point or a comma. */
export function NumberField({ label, value, onChange, isWhole = false }: NumberFieldProps): ReactNode {
  const { formats } = useWords();
  const field = useId();
  const [text, setText] = useState(() =>
    value === undefined || Number.isNaN(value) ? "" : String(value).replace(".", formats.decimalSign),
  );
  const take = (typed: string): void => {
    setText(typed);
    onChange(typed.trim() === "" ? undefined : Number(typed.trim().replace(",", ".")));
  };
  return (
    <label className="field" htmlFor={field}>
      {label}
      <input
        id={field}
        inputMode={isWhole ? "numeric" : "decimal"}
        value={text}
        aria-invalid={text.trim() !== "" && Number.isNaN(Number(text.replace(",", ".")))}
        onChange={(event) => take(event.target.value)}
      />
    </label>
  );
}
