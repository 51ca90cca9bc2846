import type { DishDraft } from "@halfloaf/reading";
import { type FormEvent, type ReactNode, useId, useState } from "react";
import { Link } from "wouter";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { startThinker } from "../thinking/startThinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { SettleDish } from "./SettleDish.tsx";

/** A dish written by hand: makings and steps line by line, understood by the same reader as pasted text. */
export default function WriteDish(): ReactNode {
  const { further } = useFurther("dishes");
  const { view } = useKitchen();
  const [makingsField, methodField] = [useId(), useId()];
  const [title, setTitle] = useState("");
  const [portions, setPortions] = useState<number | undefined>(view.kitchen.eaters.length);
  const [makings, setMakings] = useState("");
  const [method, setMethod] = useState("");
  const [draft, setDraft] = useState<DishDraft | "busy" | "none">();
  const isWhole =
    [title, makings, method].every((text) => text.trim() !== "") && portions !== undefined && portions > 0;
  const read = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    if (!isWhole) return;
    setDraft("busy");
    const steps = method
      .trim()
      .split(/\n+/)
      .map((step, at) => `${at + 1}. ${step}`);
    const content = [title, `Serves ${portions}`, makings.trim(), steps.join("\n")].join("\n\n");
    const [found] = await startThinker().read(view.kitchen, { form: "text", content });
    setDraft(found ?? "none");
  };
  const { write, reading } = further;
  return (
    <div className="stack">
      <Link href="/dishes" className="way-back">
        {further.dishes.all}
      </Link>
      <h1>{further.dishes.write}</h1>
      {typeof draft === "object" ? (
        <SettleDish draft={draft} onAgain={() => setDraft(undefined)} />
      ) : (
        <form className="stack" onSubmit={(event) => void read(event)}>
          <div className="fields">
            <TextField label={reading.dishTitle} value={title} onChange={setTitle} />
            <NumberField label={reading.portions} value={portions} onChange={setPortions} isWhole />
          </div>
          <label className="field" htmlFor={makingsField}>
            {reading.makings}
            <span className="small soft">{write.makings}</span>
            <textarea id={makingsField} value={makings} onChange={(event) => setMakings(event.target.value)} />
          </label>
          <label className="field" htmlFor={methodField}>
            {reading.method}
            <span className="small soft">{write.method}</span>
            <textarea id={methodField} value={method} onChange={(event) => setMethod(event.target.value)} />
          </label>
          <p role="status">
            {draft === "busy" && further.source.busy}
            {draft === "none" && reading.noDish}
          </p>
          <div>
            <button type="submit" className="button main" disabled={!isWhole || draft === "busy"}>
              {write.next}
            </button>
          </div>
        </form>
      )}
    </div>
  );
}
