import { type ReactNode, useId } from "react";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly type?: "text" | "search";
}

/** A line of text with its label. */
export function TextField({ label, value, onChange, type = "text" }: TextFieldProps): ReactNode {
  const field = useId();
  return (
    <label className="field" htmlFor={field}>
      {label}
      <input id={field} type={type} value={value} onChange={(event) => onChange(event.target.value)} />
    </label>
  );
}
