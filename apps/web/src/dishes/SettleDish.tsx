import type { DishChoices, DishDraft, MakingChoice } from "@halfloaf/reading";
import type { Dish } from "halfloaf/dish";
import type { Issue, Parsed } from "halfloaf/quantity";
import { type ReactNode, useEffect, useState } from "react";
import { useLocation } from "wouter";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { startThinker } from "../thinking/startThinker.ts";
import { useFurther } from "../words/useFurther.ts";
import { SettleMaking } from "./SettleMaking.tsx";

interface SettleDishProps {
  readonly draft: DishDraft;
  readonly onAgain: () => void;
}

/** A dish as it was read, beside how it was written; what is in doubt is settled here, then it is saved. */
export function SettleDish({ draft, onAgain }: SettleDishProps): ReactNode {
  const { further } = useFurther("dishes");
  const { session, view } = useKitchen();
  const [, go] = useLocation();
  const [title, setTitle] = useState(draft.title?.value ?? "");
  const [portions, setPortions] = useState(draft.portions?.value);
  const [makings, setMakings] = useState<Readonly<Record<number, MakingChoice>>>({});
  const [settled, setSettled] = useState<Parsed<Dish>>();
  const { kitchen, tables } = view;
  useEffect(() => {
    let isWanted = true;
    const choices: DishChoices = {
      id: newId(
        title,
        tables.dishes.map(({ id }) => id),
        "dish",
      ),
      ...(title.trim() !== "" && { title: title.trim() }),
      ...(portions !== undefined && { portions }),
      makings,
    };
    void startThinker()
      .settle(kitchen, draft, choices)
      .then((read) => isWanted && setSettled(read));
    return () => {
      isWanted = false;
    };
  }, [draft, title, portions, makings, kitchen, tables.dishes]);
  const issues = settled === undefined || settled.ok ? [] : settled.issues;
  const save = async (): Promise<void> => {
    if (settled?.ok !== true) return;
    const dish = settled.value;
    const { rows } = await session.edit((edited) => ({ ...edited, dishes: [...edited.dishes, dish] }));
    if (rows.length > 0) go(`/dishes/${dish.id}`);
  };
  const choose = (at: number, choice: MakingChoice | undefined): void => {
    const { [at]: _, ...others } = makings;
    setMakings(choice === undefined ? others : { ...others, [at]: choice });
  };
  return (
    <div className="stack">
      <div className="fields">
        <TextField label={further.reading.dishTitle} value={title} onChange={setTitle} />
        <NumberField label={further.reading.portions} value={portions} onChange={setPortions} isWhole />
      </div>
      {draft.yieldText !== undefined && <p className="small soft">{further.reading.yield(draft.yieldText)}</p>}
      <section className="stack tight">
        <h2>{further.reading.makings}</h2>
        <div className="side-by-side small soft" aria-hidden="true">
          <span>{further.reading.asWritten}</span>
          <span>{further.reading.asRead}</span>
        </div>
        <ul className="lines">
          {draft.makings.map((making, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: makings of a draft stay in their places.
            <li key={at}>
              <SettleMaking
                making={making}
                choice={makings[at]}
                isInDoubt={isAbout(issues, at)}
                onChoice={(choice) => choose(at, choice)}
              />
            </li>
          ))}
        </ul>
      </section>
      <ReadMethod draft={draft} />
      <Unread draft={draft} />
      <div className="stack tight" role="status">
        {settled !== undefined && <p>{settled.ok ? further.reading.settled : further.reading.doubts(issues.length)}</p>}
        {issues.length > 0 && (
          <ul className="issues lines close">
            {issues.map((issue) => (
              <li key={`${issue.code} ${issue.path.join(" ")}`}>{tellDoubt(issue, draft)}</li>
            ))}
          </ul>
        )}
      </div>
      <div className="row">
        <Allowed to="edited" otherwise={<RoleNote />}>
          <button type="button" className="button main" disabled={settled?.ok !== true} onClick={() => void save()}>
            {further.reading.save}
          </button>
        </Allowed>
        <button type="button" className="button" onClick={onAgain}>
          {further.source.again}
        </button>
      </div>
    </div>
  );

  function tellDoubt({ code, path, expected }: Issue, { makings: drafted }: DishDraft): string {
    const { amount, food, dishTitle, portions: portionsName } = further.reading;
    const line = typeof path[1] === "number" ? drafted[path[1]]?.passage.text : undefined;
    if (code === "food-unsure") return `${line}: ${food}`;
    if (code === "amount-unsure") return `${line}: ${amount}`;
    if (code === "title-unsaid") return further.issues.missing(dishTitle);
    if (path[0] === "portions") return further.issues.whole(portionsName);
    return further.issues.other(line ?? path.join(" "), expected);
  }
}

function isAbout(issues: readonly Issue[], at: number): boolean {
  return issues.some(({ path }) => path[0] === "makings" && path[1] === at);
}

function ReadMethod({ draft }: { readonly draft: DishDraft }): ReactNode {
  const { further, formats } = useFurther("dishes");
  const portions = draft.portions?.value ?? 1;
  return (
    <section className="stack tight">
      <h2>{further.reading.method}</h2>
      <ol className="step-list">
        {draft.method.map(({ id, text, minutes, hands, tempC }) => (
          <li key={id}>
            {text}
            <div className="small soft">
              {formats.minutes(minutes.value.fixed + minutes.value.perPortion * portions)}
              {minutes.sure === "guess" && ` (${further.estimate})`}
              {hands.value === "none" && `, ${further.dishes.goesAlone}`}
              {hands.value === "eye" && `, ${further.dishes.keepEye}`}
              {tempC !== undefined && `, ${formats.number(tempC.value, 0)} °C`}
            </div>
          </li>
        ))}
      </ol>
      {draft.keeps.reason === "keeps-unsaid" && <p className="small soft">{further.reading.keepsNote}</p>}
    </section>
  );
}

function Unread({ draft }: { readonly draft: DishDraft }): ReactNode {
  const { further } = useFurther("dishes");
  if (draft.unread.length === 0) return null;
  return (
    <section className="stack tight">
      <h2>{further.source.unread}</h2>
      <ul className="lines close soft">
        {draft.unread.map(({ text, path }) => (
          <li key={path.join(" ")} className="written">
            {text.slice(0, 300)}
          </li>
        ))}
      </ul>
    </section>
  );
}
