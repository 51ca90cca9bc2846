import { type DragEvent, type ReactNode, useId, useState } from "react";
import "./source.css";
import { useWords } from "../words/WordsContext.tsx";

interface FileDropProps {
  readonly label: string;
  /** Endings and types of MIME, as the field of a file takes them. */
  readonly accept: string;
  readonly onFile?: (file: File) => void;
  /** Given all of them, where several may be chosen at once. */
  readonly onFiles?: (files: readonly File[]) => void;
}

/** A file, chosen or dropped. */
export function FileDrop({ label, accept, onFile, onFiles }: FileDropProps): ReactNode {
  const { words } = useWords();
  const field = useId();
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null): void => {
    const file = files?.[0];
    if (file === undefined) return;
    onFile?.(file);
    onFiles?.([...(files ?? [])]);
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping a file is one way more; the field in it is for all.
    <div
      className={isOver ? "drop over" : "drop"}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <label className="field" htmlFor={field}>
        {label}
        <input
          id={field}
          className="file"
          type="file"
          accept={accept}
          multiple={onFiles !== undefined}
          onChange={(event) => {
            take(event.target.files);
            // The same file can be chosen again once it was changed.
            event.target.value = "";
          }}
        />
      </label>
      <p className="small soft">{words.source.drop}</p>
    </div>
  );
}
