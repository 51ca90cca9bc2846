import type { DishDraft } from "@halfloaf/reading";
import { type ReactNode, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { TextSource } from "../source/TextSource.tsx";
import { startThinker } from "../thinking/startThinker.ts";
import type { DishSource } from "../thinking/Thinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { SettleDish } from "./SettleDish.tsx";

type Reading =
  | { readonly kind: "idle" | "busy" | "none" | "failed" }
  | { readonly kind: "read"; readonly drafts: readonly DishDraft[] };

/** Takes the text or the file of a dish and shows what was understood of it. */
export default function ReadIn({ shared = "" }: { readonly shared?: string }): ReactNode {
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
          <TextSource
            label={further.reading.text}
            hint={further.reading.textHint}
            initial={shared}
            fileLabel={further.reading.file}
            accept=".txt,.html,.htm,.json,text/plain,text/html,application/json"
            isBusy={reading.kind === "busy"}
            onText={({ text, name }) =>
              void read({ form: name === undefined ? formOfText(text) : formOf(name), content: text })
            }
          />
          <p role="status">
            {reading.kind === "busy" && further.source.busy}
            {reading.kind === "none" && further.reading.noDish}
            {reading.kind === "failed" && further.source.failed}
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

function formOf(name: string): DishSource["form"] {
  if (/\.json$/i.test(name)) return "json";
  return /\.html?$/i.test(name) ? "page" : "text";
}

/** Pasted text may be the source of a page, or its data. */
function formOfText(text: string): DishSource["form"] {
  if (/^\s*[[{]/.test(text)) return "json";
  return /<(?:!doctype|html|script|body|div|article)\b/i.test(text) ? "page" : "text";
}
