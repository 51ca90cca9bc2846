import { type Food, isFound, namesOf, type Place, toSearchText } from "halfloaf/food";
import { foodLife, placesOf } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { type FormEvent, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { DayField } from "../kitchen/fields/DayField.tsx";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNamedFoods } from "../kitchen/useNamedFoods.ts";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { type DateKind, DateKindField } from "./DateKindField.tsx";
import { placesFor } from "./placesFor.ts";

/** So many foods are offered at once. */
const OFFERED = 6;

/** Something that is at hand and was never written down: what, how much, where, since when; what it cost, if that is known. */
export default function Found({ onDone }: { readonly onDone: () => void }): ReactNode {
  const { further } = useFurther("stores");
  const [food, setFood] = useState<Food>();
  const form = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: with another food other fields are there, and the first of them is next.
  useEffect(() => form.current?.querySelector("input")?.focus(), [food]);
  return (
    <section ref={form} className="sheet stack tight" aria-labelledby="found">
      <h2 id="found">{further.foundHere.title}</h2>
      <p className="small soft">{further.foundHere.about}</p>
      {food === undefined ? (
        <FindFood onFood={setFood} onDone={onDone} />
      ) : (
        <PutThere key={food.id} food={food} onOther={() => setFood(undefined)} onDone={onDone} />
      )}
    </section>
  );
}

interface FindFoodProps {
  readonly onFood: (food: Food) => void;
  readonly onDone: () => void;
}

function FindFood({ onFood, onDone }: FindFoodProps): ReactNode {
  const { further, formats } = useFurther("stores");
  const foods = useNamedFoods();
  const names = useNames();
  const [text, setText] = useState("");
  const all = useMemo(
    () =>
      [...foods.values()]
        .map((food) => ({ food, name: names.food(food.id), words: toSearchText(namesOf(food).join(" ")) }))
        .sort((a, b) => a.name.length - b.name.length || formats.compare(a.name, b.name)),
    [foods, names, formats],
  );
  const asked = text.trim();
  const found = all.filter(({ words }) => isFound(words, asked));
  const offered = asked.length > 1 ? found.slice(0, OFFERED) : [];
  return (
    <>
      <TextField label={further.foundHere.find} type="search" value={text} onChange={setText} />
      <div className="row" role="status">
        {offered.map(({ food, name }) => (
          <button key={food.id} type="button" className="button" onClick={() => onFood(food)}>
            {name}
          </button>
        ))}
        {asked.length > 1 && offered.length === 0 && <p>{further.foundHere.noneFound}</p>}
      </div>
      <div>
        <button type="button" className="button" onClick={onDone}>
          {further.cancel}
        </button>
      </div>
    </>
  );
}

/** What is told of it, as far as it is told. */
interface Finding {
  readonly massG?: number | undefined;
  readonly place: Place;
  readonly boughtOn: CivilDate;
  /** Absent = unopened. */
  readonly openedOn?: CivilDate | undefined;
  readonly date?: CivilDate | undefined;
  readonly dateKind: DateKind;
  /** Absent = nobody knows. */
  readonly costMinor?: number | undefined;
}

interface PutThereProps {
  readonly food: Food;
  readonly onOther: () => void;
  readonly onDone: () => void;
}

function PutThere({ food, onOther, onDone }: PutThereProps): ReactNode {
  const { words, further } = useFurther("stores");
  const { session, view } = useKitchen();
  const names = useNames();
  const { day, kitchen } = view;
  const { kit, currency } = kitchen;
  const [told, setTold] = useState<Finding>(() => {
    const { place } = foodLife(food, placesOf(kit));
    return { place, boughtOn: day, dateKind: place === "dry-store" ? "bestBefore" : "useBy" };
  });
  const tell = (more: Partial<Finding>): void => setTold({ ...told, ...more });
  const { massG, place, boughtOn, openedOn, date, dateKind, costMinor } = told;
  const isSound =
    massG !== undefined &&
    massG > 0 &&
    boughtOn <= day &&
    (openedOn === undefined || (openedOn >= boughtOn && openedOn <= day)) &&
    (costMinor === undefined || Number.isSafeInteger(costMinor));
  const put = (event: FormEvent): void => {
    event.preventDefault();
    if (!isSound) return;
    const cost = costMinor === undefined ? ({ costMinor: 0, costUnknown: true } as const) : { costMinor };
    void session.write((pen) => {
      const id = pen.nameLot(food.id);
      const life = { boughtOn, ...(openedOn && { openedOn }), ...(date && { [dateKind]: date }) };
      const stock = { id, food: food.id, place, massG, ...life, ...cost };
      return [pen.write({ kind: "stocked", on: day, stock })];
    });
    onDone();
  };
  const { foundHere } = further;
  return (
    <form className="stack tight" onSubmit={put}>
      <div className="row spread">
        <b>{names.food(food.id)}</b>
        <button type="button" className="button" onClick={onOther}>
          {foundHere.other}
        </button>
      </div>
      <div className="fields">
        <NumberField label={foundHere.grams} value={undefined} onChange={(mass) => tell({ massG: mass })} />
        <ChoiceField
          label={foundHere.place}
          value={place}
          choices={placesFor(kit).map((each) => [each, words.stores.places[each]] as const)}
          onChange={(where) => tell({ place: where })}
        />
        <DayField label={foundHere.since} value={boughtOn} onChange={(on) => tell({ boughtOn: on })} />
      </div>
      <p className="small soft">{foundHere.sinceNote}</p>
      <TickField
        label={foundHere.isOpen}
        isTicked={openedOn !== undefined}
        onChange={(isOpen) => tell({ openedOn: isOpen ? day : undefined })}
      />
      <div className="fields">
        {openedOn !== undefined && (
          <DayField label={foundHere.openedOn} value={openedOn} onChange={(on) => tell({ openedOn: on })} />
        )}
        <DayField
          label={foundHere.date}
          value={date}
          onChange={(on) => tell({ date: on })}
          onClear={() => tell({ date: undefined })}
        />
        {date !== undefined && <DateKindField value={dateKind} onChange={(kind) => tell({ dateKind: kind })} />}
        <MoneyField
          label={foundHere.cost}
          value={undefined}
          currency={currency}
          onChange={(minor) => tell({ costMinor: minor })}
        />
      </div>
      <p className="small soft">{foundHere.costNote}</p>
      <div className="row">
        <button type="submit" className="button main" disabled={!isSound}>
          {foundHere.put}
        </button>
        <button type="button" className="button" onClick={onDone}>
          {further.cancel}
        </button>
      </div>
    </form>
  );
}
