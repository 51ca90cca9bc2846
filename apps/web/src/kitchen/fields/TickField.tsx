import type { ReactNode } from "react";

interface TickFieldProps {
  readonly label: string;
  readonly isTicked: boolean;
  readonly onChange: (isTicked: boolean) => void;
}

/** Yes or no, as large as a thumb. */
export function TickField({ label, isTicked, onChange }: TickFieldProps): ReactNode {
  return (
    <label className="tick">
      <input type="checkbox" checked={isTicked} onChange={(event) => onChange(event.target.checked)} />
      <span>{label}</span>
    </label>
  );
}
