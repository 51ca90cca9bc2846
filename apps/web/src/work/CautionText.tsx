import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface CautionTextProps {
  readonly caution: { readonly code: string; readonly text: string; readonly authority: string };
}

/** A caution in the language of the screens, with who says so. */
export function CautionText({ caution }: CautionTextProps): ReactNode {
  const { further } = useFurther("cautions");
  const { code, text, authority } = caution;
  return (
    <>
      {further.tellCaution(code, text)} <span className="soft">({further.tellAuthority(authority)})</span>
    </>
  );
}
