import { checkDish, Dish, type Making, type Step } from "halfloaf/dish";
import { parseWith } from "halfloaf/quantity";
import { type FormEvent, type ReactNode, useState } from "react";
import { Link, useLocation } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";

const SITTINGS = ["morning", "midday", "between", "evening"] as const;
const HANDS = ["full", "eye", "none"] as const;

/** Changes a dish of this kitchen; one that came with the app becomes a dish of its own and stays as it was. */
export default function ChangeDish({ id }: { readonly id: string }): ReactNode {
  const { further, words } = useFurther("dishes");
  const { session, view } = useKitchen();
  const [, go] = useLocation();
  const { tables, kitchen } = view;
  const before = tables.dishes.find((each) => each.id === id);
  const isOwn = kitchen.dishes.some((each) => each.id === id);
  const [dish, setDish] = useState<Dish | undefined>(before);
  if (before === undefined || dish === undefined)
    return (
      <div className="stack">
        <p>{further.dishes.lost}</p>
        <Link href="/dishes">{further.dishes.all}</Link>
      </div>
    );
  const read = parseWith(Dish, dish);
  const issues = read.ok ? checkDish(read.value, tables.foods) : read.issues;
  const save = (event: FormEvent): void => {
    event.preventDefault();
    if (!read.ok || issues.length > 0 || !session.mayWrite({ kind: "edited" })) return;
    const taken = tables.dishes.map((each) => each.id);
    const saved = isOwn ? read.value : { ...read.value, id: newId(dish.title, taken, "dish") };
    void session.edit((edited) => {
      const others = edited.dishes.filter((each) => each.id !== saved.id);
      return { ...edited, dishes: [...others, saved] };
    });
    go(`/dishes/${saved.id}`);
  };
  const setFits = (kind: (typeof SITTINGS)[number], isTicked: boolean): void => {
    const fits = SITTINGS.filter((each) => (each === kind ? isTicked : dish.fits.includes(each)));
    setDish({ ...dish, fits });
  };
  const { keeps } = dish;
  return (
    <form className="stack" onSubmit={save}>
      <Link href={`/dishes/${id}`} className="way-back">
        {further.cancel}
      </Link>
      <h1>{further.change.title(before.title)}</h1>
      {!isOwn && <p className="soft">{further.change.copy}</p>}
      <div className="fields">
        <TextField
          label={further.reading.dishTitle}
          value={dish.title}
          onChange={(title) => setDish({ ...dish, title })}
        />
        <NumberField
          label={further.reading.portions}
          value={dish.portions}
          isWhole
          onChange={(portions) => setDish({ ...dish, portions: portions ?? Number.NaN })}
        />
        <NumberField
          label={further.change.fridgeDays}
          value={keeps.fridgeDays}
          isWhole
          onChange={(days) => setDish({ ...dish, keeps: { ...keeps, fridgeDays: days ?? Number.NaN } })}
        />
      </div>
      <fieldset className="group">
        <legend>{further.reading.fits}</legend>
        <div className="ticks">
          {SITTINGS.map((kind) => (
            <TickField
              key={kind}
              label={words.sittings[kind]}
              isTicked={dish.fits.includes(kind)}
              onChange={(isTicked) => setFits(kind, isTicked)}
            />
          ))}
        </div>
      </fieldset>
      <Makings makings={dish.makings} onChange={(makings) => setDish({ ...dish, makings })} />
      <Method method={dish.method} onChange={(method) => setDish({ ...dish, method })} />
      {issues.length > 0 && (
        <ul className="issues lines close" role="status">
          {issues.map(({ code, path, expected }) => (
            <li key={`${code} ${path.join(" ")}`}>{further.issues.other(path.join(" "), expected)}</li>
          ))}
        </ul>
      )}
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button type="submit" className="button main" disabled={issues.length > 0}>
            {further.save}
          </button>
        </div>
      </Allowed>
    </form>
  );
}

interface MakingsProps {
  readonly makings: readonly Making[];
  readonly onChange: (makings: Making[]) => void;
}

function Makings({ makings, onChange }: MakingsProps): ReactNode {
  const { further } = useFurther("dishes");
  const names = useNames();
  const set = (at: number, value: number | undefined): void =>
    onChange(
      makings.map((making, place) =>
        place !== at || making.amount === "to-taste" || !("value" in making.amount)
          ? making
          : { ...making, amount: { ...making.amount, value: value ?? Number.NaN } },
      ),
    );
  return (
    <fieldset className="group">
      <legend>{further.reading.makings}</legend>
      <ul className="lines">
        {makings.map(({ food, cut, amount }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a food may stand twice; what is taken out takes its fields along.
          <li key={`${food} ${cut} ${at} ${makings.length}`} className="row end spread">
            {amount === "to-taste" || !("value" in amount) ? (
              <span>{names.food(food)}</span>
            ) : (
              <NumberField
                label={`${names.food(food)} (${amount.unit === "piece" ? further.change.pieces : further.dishes.units[amount.unit]})`}
                value={amount.value}
                onChange={(value) => set(at, value)}
              />
            )}
            <button
              type="button"
              className="button"
              disabled={makings.length === 1}
              onClick={() => onChange(makings.filter((_, place) => place !== at))}
            >
              {further.remove}
              <span className="unseen"> {names.food(food)}</span>
            </button>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

interface MethodProps {
  readonly method: readonly Step[];
  readonly onChange: (method: Step[]) => void;
}

function Method({ method, onChange }: MethodProps): ReactNode {
  const { further } = useFurther("dishes");
  const set = (at: number, change: Partial<Step>): void =>
    onChange(method.map((step, place) => (place === at ? { ...step, ...change } : step)));
  return (
    <fieldset className="group">
      <legend>{further.reading.method}</legend>
      <ol className="step-list">
        {method.map((step, at) => (
          <li key={step.id}>
            <div className="fields">
              <label className="field">
                {further.change.step}
                <textarea
                  className="step-text"
                  value={step.text}
                  onChange={(event) => set(at, { text: event.target.value })}
                />
              </label>
              <NumberField
                label={further.change.minutes}
                value={step.minutes.fixed}
                onChange={(fixed) => set(at, { minutes: { ...step.minutes, fixed: fixed ?? Number.NaN } })}
              />
              <ChoiceField
                label={further.change.hands}
                value={step.hands}
                choices={HANDS.map((each) => [each, further.change.handsKinds[each]] as const)}
                onChange={(hands) => set(at, { hands })}
              />
            </div>
          </li>
        ))}
      </ol>
    </fieldset>
  );
}
