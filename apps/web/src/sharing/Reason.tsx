import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

/** Why something about sharing is not done, and what helps. */
export function Reason({ reason }: { readonly reason: string }): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  return (
    <p className="caution" role="alert">
      {sharing.reasons[reason] ?? sharing.otherReason(reason)}
    </p>
  );
}
