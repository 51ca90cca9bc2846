import { parseMoney, toDecimalText } from "halfloaf/quantity";
import { type ReactNode, useId, useState } from "react";
import { useWords } from "../../words/WordsContext.tsx";

interface MoneyFieldProps {
  readonly label: string;
  /** Minor units; undefined shows an empty field. */
  readonly value: number | undefined;
  readonly currency: string;
  /** Given undefined for an empty field and NaN for what is no money. */
  readonly onChange: (minor: number | undefined) => void;
}

/** An amount of money with its label. */
export function MoneyField({ label, value, currency, onChange }: MoneyFieldProps): ReactNode {
  const { formats } = useWords();
  const field = useId();
  const [text, setText] = useState(() =>
    value === undefined || !Number.isSafeInteger(value)
      ? ""
      : toDecimalText({ minor: value, currency }).replace(".", formats.decimalSign),
  );
  const [isFaulty, setFaulty] = useState(false);
  const take = (typed: string): void => {
    setText(typed);
    const read = parseMoney(typed, currency);
    const isEmpty = typed.trim() === "";
    setFaulty(!isEmpty && !(read.ok && read.value.minor >= 0));
    onChange(isEmpty ? undefined : read.ok && read.value.minor >= 0 ? read.value.minor : Number.NaN);
  };
  return (
    <label className="field" htmlFor={field}>
      {label} ({currency})
      <input
        id={field}
        inputMode="decimal"
        value={text}
        aria-invalid={isFaulty}
        onChange={(event) => take(event.target.value)}
      />
    </label>
  );
}
