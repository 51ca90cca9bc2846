import type { ReactNode } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useFurther } from "../words/useFurther.ts";

/** What a date on a pack is: a day not to be passed, or one up to which it is at its best. */
export type DateKind = "useBy" | "bestBefore";

interface DateKindFieldProps {
  readonly value: DateKind;
  readonly onChange: (kind: DateKind) => void;
}

/** Which of the two dates a pack bears. */
export function DateKindField({ value, onChange }: DateKindFieldProps): ReactNode {
  const { foundHere } = useFurther("stores").further;
  return (
    <ChoiceField
      label={foundHere.dateKind}
      value={value}
      choices={[
        ["useBy", foundHere.dateKinds.useBy],
        ["bestBefore", foundHere.dateKinds.bestBefore],
      ]}
      onChange={onChange}
    />
  );
}
