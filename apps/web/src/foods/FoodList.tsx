import { formatOwnFoods, isFound, NO_OWN_FOODS, namesOf, toSearchText } from "halfloaf/food";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNamedFoods } from "../kitchen/useNamedFoods.ts";
import { useNames } from "../kitchen/useNames.ts";
import { choicesOf } from "../mapping/CsvFields.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { saveFile } from "../sheets/saveFile.ts";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { OwnMark } from "./OwnMark.tsx";
import { upper } from "./useFigures.ts";

/** So many foods are shown before somebody asks for more. */
const STEP = 40;

type Which = "all" | "ours";

/** All foods, this kitchen's own and changed ones first. */
export function FoodList(): ReactNode {
  const { further, words, formats } = useFurther("foods", "dishes");
  const { view } = useKitchen();
  const named = useNamedFoods();
  const names = useNames();
  const [text, setText] = useState("");
  const [which, setWhich] = useState<Which>("all");
  const [most, setMost] = useState(STEP);
  const { foods, overrides } = view.edited;
  const { foods: texts } = further;
  const all = useMemo(() => {
    const ours = new Set([...foods.map(({ id }) => id), ...overrides.map(({ food }) => food)]);
    return [...named.values()]
      .map((food) => ({
        id: food.id,
        name: names.food(food.id),
        isOurs: ours.has(food.id),
        words: toSearchText(namesOf(food).join(" ")),
      }))
      .sort((a, b) => Number(b.isOurs) - Number(a.isOurs) || formats.compare(a.name, b.name));
  }, [named, foods, overrides, names, formats]);
  const found = all.filter((food) => (which === "all" || food.isOurs) && isFound(food.words, text.trim()));
  const hasOurs = foods.length + overrides.length > 0;
  const save = (): void =>
    saveFile("halfloaf-foods.json", formatOwnFoods({ ...NO_OWN_FOODS, foods, overrides }), "application/json");
  return (
    <div className="stack broad-page">
      <div className="row spread">
        <Link href="/dishes" className="way-back">
          {words.screens.dishes}
        </Link>
        <Undo />
      </div>
      <h1>{texts.title}</h1>
      <p className="soft">{texts.about}</p>
      <Allowed to="edited">
        <div className="row">
          <Link href="/dishes/foods/write" className="button main way">
            {texts.write}
          </Link>
          <Link href="/dishes/foods/read-in" className="button way">
            {texts.readIn}
          </Link>
        </div>
      </Allowed>
      <search className="fields">
        <TextField label={texts.find} type="search" value={text} onChange={setText} />
        <ChoiceField label={texts.which} value={which} choices={choicesOf(texts.shown)} onChange={setWhich} />
      </search>
      <p className="soft" role="status">
        {found.length > 0 ? texts.count(found.length) : which === "ours" && !hasOurs ? texts.noneOurs : texts.noneFound}
      </p>
      <ul className="lines broad-lines">
        {found.slice(0, most).map(({ id, name }) => (
          <li key={id}>
            <Link href={`/dishes/foods/${id}`} className="food-line">
              <span>{upper(name)}</span>
              <span className="small">
                <OwnMark food={id} />
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {found.length > most && (
        <div>
          <button type="button" className="button" onClick={() => setMost(most + STEP)}>
            {texts.more(Math.min(STEP, found.length - most))}
          </button>
        </div>
      )}
      {hasOurs && (
        <div className="row">
          <button type="button" className="button" onClick={save}>
            {texts.save}
          </button>
          <span className="small soft">{texts.saveNote}</span>
        </div>
      )}
    </div>
  );
}
