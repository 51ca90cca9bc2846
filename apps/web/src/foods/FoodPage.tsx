import { type Food, NUTRIENT_NAMES, type OwnFood, PLACES } from "halfloaf/food";
import { type ReactNode, useState } from "react";
import { Link, useLocation } from "wouter";
import { Issues } from "../kitchen/Issues.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useSaving } from "../kitchen/useSaving.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { OwnMark } from "./OwnMark.tsx";
import { upper, useFigures } from "./useFigures.ts";
import { type FoodUse, usesOf } from "./usesOf.ts";

/** One food: its figures with where each comes from, allergens, keeping, and what can be undone of it. */
export function FoodPage({ id }: { readonly id: string }): ReactNode {
  const { further } = useFurther("foods");
  const { view } = useKitchen();
  const names = useNames();
  const food = view.tables.foods.get(id);
  const own = view.edited.foods.find((each) => each.id === id);
  const { foods: texts } = further;
  return (
    <article className="stack broad-page">
      <div className="row spread">
        <Link href="/dishes/foods" className="way-back">
          {texts.all}
        </Link>
        <Undo />
      </div>
      <h1 className="long-title">{food === undefined ? texts.title : upper(names.food(id))}</h1>
      {food === undefined ? (
        <p>{texts.lost}</p>
      ) : (
        <>
          <div className="row">
            <OwnMark food={id} />
            {own !== undefined && (
              <Allowed to="edited">
                <Link href={`/dishes/foods/${id}/change`} className="button way">
                  {further.edit}
                </Link>
              </Allowed>
            )}
            {view.kitchen.packs.some((pack) => pack.food === id) && (
              <Link href={`/prices/${id}`} className="button way">
                {texts.prices}
              </Link>
            )}
          </div>
          <TakenFigures food={id} />
          <Composition food={food} />
          <Care food={food} />
          {own !== undefined && <Removing food={own} />}
        </>
      )}
    </article>
  );
}

/** Where figures were taken from, and what gives them back. */
function TakenFigures({ food }: { readonly food: string }): ReactNode {
  const { further, formats } = useFurther("foods");
  const { session, view } = useKitchen();
  const [wasGiven, setGiven] = useState(false);
  const override = view.edited.overrides.find((each) => each.food === food);
  const giveBack = (): void => {
    void session.edit((edited) => ({ ...edited, overrides: edited.overrides.filter((each) => each.food !== food) }));
    setGiven(true);
  };
  const { foods: texts } = further;
  return (
    <>
      {override !== undefined && (
        <div className="sheet stack tight">
          <p>{texts.takenFrom(override.from, override.chosenOn && formats.day(override.chosenOn))}</p>
          <Allowed to="edited" otherwise={<RoleNote />}>
            <div>
              <button type="button" className="button" onClick={giveBack}>
                {texts.giveBack}
              </button>
            </div>
          </Allowed>
        </div>
      )}
      <p role="status">{wasGiven && override === undefined && texts.givenBack}</p>
    </>
  );
}

function Composition({ food }: { readonly food: Food }): ReactNode {
  const { further } = useFurther("foods");
  const figures = useFigures();
  const known = NUTRIENT_NAMES.filter((name) => food.composition[name] !== undefined);
  const { foods: texts } = further;
  return (
    <section className="stack tight">
      <h2>{texts.per100}</h2>
      <p className="small soft">{texts.source(food.source)}</p>
      <table className="table flows">
        <tbody>
          {known.map((name) => (
            <tr key={name}>
              <th scope="row">
                {upper(figures.name(name))}
                {food.figureSources[name] !== undefined && food.figureSources[name] !== food.source && (
                  <div className="small soft">{food.figureSources[name]}</div>
                )}
              </th>
              <td className="figure">{figures.figure(name, food.composition[name] as number)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {known.length < NUTRIENT_NAMES.length && (
        <p className="small soft">{texts.unknownRest(NUTRIENT_NAMES.length - known.length)}</p>
      )}
    </section>
  );
}

function Care({ food: { allergens, keeping } }: { readonly food: Food }): ReactNode {
  const { further, words } = useFurther("foods");
  const { view } = useKitchen();
  const { foods: texts } = further;
  const named = view.kitchen.english === "american" ? [...new Set([...allergens.us, ...allergens.eu])] : allergens.eu;
  const days = (kept: Food["keeping"]["unopened"]): string => {
    const told = PLACES.flatMap((place) =>
      kept[place] === undefined ? [] : [texts.days(words.stores.places[place], kept[place])],
    );
    return told.length === 0 ? texts.keepsNowhere : told.join("; ");
  };
  return (
    <section className="stack tight">
      <h2>{texts.allergens}</h2>
      <p>{named.length === 0 ? texts.noAllergens : <b>{named.map((each) => further.allergens[each]).join(", ")}</b>}</p>
      <h2>{texts.keeps}</h2>
      <p>
        {texts.unopened}: {days(keeping.unopened)}
        <br />
        {texts.opened}: {days(keeping.opened)}
      </p>
      <p className="small soft">{keeping.authority}</p>
      <p className="small soft">{texts.labelFirst}</p>
    </section>
  );
}

/** What removes an own food, or all that must go before. */
function Removing({ food }: { readonly food: OwnFood }): ReactNode {
  const { further, formats } = useFurther("foods");
  const { view } = useKitchen();
  const names = useNames();
  const [, go] = useLocation();
  const { issues, save } = useSaving();
  const uses = usesOf(food.id, view.edited, view.state);
  const { foods: texts } = further;
  const tell = (use: FoodUse): string => {
    if (use.kind === "lot") return texts.usesOf.lot(formats.mass(use.massG));
    if (use.kind === "dish") return texts.usesOf.dish(names.dish(use.id));
    if (use.kind === "avoided") return texts.usesOf.avoided(names.eater(use.id));
    return texts.usesOf.pack(view.edited.packs.find(({ id }) => id === use.id)?.label ?? use.id);
  };
  const remove = (): void => {
    const isRemoved = save((edited) => ({
      ...edited,
      foods: edited.foods.filter(({ id }) => id !== food.id),
      overrides: edited.overrides.filter((override) => override.food !== food.id),
    }));
    if (isRemoved) go("/dishes/foods");
  };
  return (
    <Allowed to="edited" otherwise={<RoleNote />}>
      <section className="stack tight">
        {uses.length > 0 && (
          <>
            <p>{texts.usedBy}</p>
            <ul className="close">
              {uses.map((use) => (
                <li key={tell(use)}>{tell(use)}</li>
              ))}
            </ul>
          </>
        )}
        <Issues issues={issues} />
        <div>
          <button type="button" className="button" disabled={uses.length > 0} onClick={remove}>
            {texts.remove}
          </button>
        </div>
      </section>
    </Allowed>
  );
}
