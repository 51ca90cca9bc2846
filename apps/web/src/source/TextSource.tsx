import { type ReactNode, useId, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { FileDrop } from "./FileDrop.tsx";
import { readTextFile } from "./readTextFile.ts";

/** A text that was pasted, or that stood in a file of that name. */
export interface SourceText {
  readonly text: string;
  readonly name?: string;
}

interface TextSourceProps {
  readonly label: string;
  readonly hint: string;
  /** Text that stands there already. */
  readonly initial?: string;
  readonly fileLabel: string;
  readonly accept: string;
  readonly isBusy?: boolean;
  readonly onText: (source: SourceText) => void;
}

/** What is to be read in: pasted, dropped or chosen as a file. */
export function TextSource(props: TextSourceProps): ReactNode {
  const { label, hint, initial = "", fileLabel, accept, isBusy = false, onText } = props;
  const { further } = useFurther();
  const field = useId();
  const [text, setText] = useState(initial);
  const [refused, setRefused] = useState<"large" | "failed">();
  const take = async (file: File): Promise<void> => {
    const read = await readTextFile(file);
    setRefused(read.ok ? undefined : read.reason);
    if (read.ok) onText({ text: read.text, name: file.name });
  };
  return (
    <div className="stack">
      <label className="field" htmlFor={field}>
        {label}
        <span className="small soft">{hint}</span>
        <textarea id={field} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div>
        <button
          type="button"
          className="button main"
          disabled={isBusy || text.trim() === ""}
          onClick={() => onText({ text })}
        >
          {further.source.read}
        </button>
      </div>
      <FileDrop label={fileLabel} accept={accept} onFile={(file) => void take(file)} />
      <p role="status">{refused === undefined ? "" : further.source[refused]}</p>
    </div>
  );
}
