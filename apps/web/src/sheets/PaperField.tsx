import { PAPERS, type Paper } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useFurther } from "../words/useFurther.ts";

interface PaperFieldProps {
  readonly paper: Paper;
  readonly onPaper: (paper: Paper) => void;
}

/** The paper a page is made for. */
export function PaperField({ paper, onPaper }: PaperFieldProps): ReactNode {
  const { further } = useFurther("sheets");
  const choices = (Object.keys(PAPERS) as Paper[]).map((each) => [each, further.sheets.papers[each]] as const);
  return <ChoiceField label={further.sheets.paper} value={paper} choices={choices} onChange={onPaper} />;
}
