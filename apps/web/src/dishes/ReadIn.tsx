import type { DishDraft } from "@halfloaf/reading";
import { type DragEvent, type ReactNode, useId, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { startThinker } from "../thinking/startThinker.ts";
import type { DishSource } from "../thinking/Thinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { SettleDish } from "./SettleDish.tsx";

type Reading =
  | { readonly kind: "idle" | "busy" | "none" | "failed" }
  | { readonly kind: "read"; readonly drafts: readonly DishDraft[] };

/** Takes the text or the file of a dish and shows what was understood of it. */
export function ReadIn({ shared = "" }: { readonly shared?: string }): ReactNode {
  const { further } = useFurther("dishes");
  const { view } = useKitchen();
  const [reading, setReading] = useState<Reading>({ kind: "idle" });
  const [chosen, setChosen] = useState(0);
  const read = async (source: DishSource): Promise<void> => {
    setReading({ kind: "busy" });
    try {
      const drafts = await startThinker().read(view.kitchen, source);
      setChosen(0);
      setReading(drafts.length === 0 ? { kind: "none" } : { kind: "read", drafts });
    } catch {
      setReading({ kind: "failed" });
    }
  };
  const draft = reading.kind === "read" ? reading.drafts[chosen] : undefined;
  return (
    <div className="stack">
      <Link href="/dishes" className="way-back">
        {further.dishes.all}
      </Link>
      <h1>{further.reading.title}</h1>
      {draft === undefined && (
        <>
          <p className="soft">{further.reading.about}</p>
          <Sources
            shared={shared}
            onSource={read}
            isBusy={reading.kind === "busy"}
            onFailed={() => setReading({ kind: "failed" })}
          />
          <p role="status">
            {reading.kind === "busy" && further.reading.busy}
            {reading.kind === "none" && further.reading.noDish}
            {reading.kind === "failed" && further.reading.failed}
          </p>
        </>
      )}
      {reading.kind === "read" && reading.drafts.length > 1 && (
        <fieldset className="row choice">
          <legend>{further.reading.which}</legend>
          {reading.drafts.map(({ title, id }, at) => (
            <button
              key={`${id.value} ${title?.value}`}
              type="button"
              className="button"
              aria-pressed={at === chosen}
              onClick={() => setChosen(at)}
            >
              {title?.value ?? further.reading.untitled}
            </button>
          ))}
        </fieldset>
      )}
      {draft !== undefined && <SettleDish key={chosen} draft={draft} onAgain={() => setReading({ kind: "idle" })} />}
    </div>
  );
}

interface SourcesProps {
  /** Text that another app shared. */
  readonly shared: string;
  readonly isBusy: boolean;
  readonly onSource: (source: DishSource) => Promise<void>;
  readonly onFailed: () => void;
}

function Sources({ shared, isBusy, onSource, onFailed }: SourcesProps): ReactNode {
  const { further } = useFurther("dishes");
  const [field, chooser] = [useId(), useId()];
  const [text, setText] = useState(shared);
  const [isOver, setOver] = useState(false);
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    try {
      await onSource({ form: formOf(file.name), content: await file.text() });
    } catch {
      onFailed();
    }
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    void take(event.dataTransfer.files[0]);
  };
  return (
    <div className="stack">
      <label className="field" htmlFor={field}>
        {further.reading.text}
        <span className="small soft">{further.reading.textHint}</span>
        <textarea id={field} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div>
        <button
          type="button"
          className="button main"
          disabled={isBusy || text.trim() === ""}
          onClick={() => void onSource({ form: formOfText(text), content: text })}
        >
          {further.reading.read}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping a file is one way more; the field in it is for all. */}
      <div
        className={isOver ? "drop over" : "drop"}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <label className="field" htmlFor={chooser}>
          {further.reading.file}
          <input
            id={chooser}
            className="file"
            type="file"
            accept=".txt,.html,.htm,.json,text/plain,text/html,application/json"
            onChange={(event) => void take(event.target.files?.[0])}
          />
        </label>
        <p className="small soft">{further.reading.drop}</p>
      </div>
    </div>
  );
}

function formOf(name: string): DishSource["form"] {
  if (/\.json$/i.test(name)) return "json";
  return /\.html?$/i.test(name) ? "page" : "text";
}

/** Pasted text may be the source of a page, or its data. */
function formOfText(text: string): DishSource["form"] {
  if (/^\s*[[{]/.test(text)) return "json";
  return /<(?:!doctype|html|script|body|div|article)\b/i.test(text) ? "page" : "text";
}
