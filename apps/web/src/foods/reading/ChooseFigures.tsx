import type { OfficialFood } from "@halfloaf/reading";
import type { Remote } from "comlink";
import { type ReactNode, useEffect, useId, useMemo, useState } from "react";
import { TextField } from "../../kitchen/fields/TextField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import { FiguresBeside } from "./FiguresBeside.tsx";
import type { OfficialOffer, TableDesk, TableRead } from "./TableDesk.ts";

interface ChooseFiguresProps {
  readonly read: Extract<TableRead, { outcome: "read" }>;
  readonly desk: Remote<TableDesk>;
}

/** Whose figures are taken for which food of ours. */
export function ChooseFigures({ read, desk }: ChooseFiguresProps): ReactNode {
  const { further } = useFurther("foods");
  const { view } = useKitchen();
  const [ours, setOurs] = useState("");
  const [theirs, setTheirs] = useState<OfficialFood>();
  const [text, setText] = useState("");
  const offers = useOffers(desk, ours, text);
  const food = view.tables.foods.get(ours);
  const { foodRead: words } = further;
  const choose = async (id: string): Promise<void> => setTheirs(await desk.food(id));
  return (
    <>
      <OurFood
        food={ours}
        numbered={read.numbered}
        onFood={(id) => {
          setOurs(id);
          setText("");
          setTheirs(undefined);
          const number = read.numbered.find(([each]) => each === id)?.[1];
          if (number !== undefined) void choose(number);
        }}
      />
      {food !== undefined && (
        <fieldset className="group">
          <legend>{words.theirs}</legend>
          <TextField label={words.findTheirs} type="search" value={text} onChange={setText} />
          <p className="small soft" role="status">
            {text.trim() === ""
              ? offers?.length === 0
                ? words.noneNear
                : words.nearest
              : offers?.length === 0 && words.noneTheirs}
          </p>
          <ul className="lines close">
            {offers?.map(({ id, name }) => (
              <li key={id}>
                <button
                  type="button"
                  className="button wide-choice"
                  aria-pressed={theirs?.id === id}
                  onClick={() => void choose(id)}
                >
                  {name} <span className="small">({id})</span>
                </button>
              </li>
            ))}
          </ul>
        </fieldset>
      )}
      {food !== undefined && theirs !== undefined && (
        <FiguresBeside key={`${food.id} ${theirs.id}`} food={food} official={theirs} />
      )}
    </>
  );
}

/** Foods of the table that may be meant: the nearest, or those that were searched for; undefined until they are known. */
function useOffers(desk: Remote<TableDesk>, ours: string, text: string): readonly OfficialOffer[] | undefined {
  const { view } = useKitchen();
  const [offers, setOffers] = useState<readonly OfficialOffer[]>();
  const food = view.tables.foods.get(ours);
  useEffect(() => {
    let isWanted = true;
    if (food === undefined) return undefined;
    const asked = text.trim() === "" ? desk.near(food) : desk.search(text.trim());
    void asked.then((found) => isWanted && setOffers(found));
    return () => {
      isWanted = false;
    };
  }, [desk, food, text]);
  return offers;
}

interface OurFoodProps {
  readonly food: string;
  readonly numbered: ChooseFiguresProps["read"]["numbered"];
  readonly onFood: (id: string) => void;
}

function OurFood({ food, numbered, onFood }: OurFoodProps): ReactNode {
  const { further, formats } = useFurther("foods");
  const { view } = useKitchen();
  const names = useNames();
  const field = useId();
  const { foods } = view.tables;
  const all = useMemo(
    () => [...foods.keys()].map((id) => [id, names.food(id)] as const).sort((a, b) => formats.compare(a[1], b[1])),
    [foods, names, formats],
  );
  const byNumber = new Set(numbered.map(([ours]) => ours));
  const options = (list: readonly (readonly [string, string])[]): ReactNode =>
    list.map(([id, name]) => (
      <option key={id} value={id}>
        {name}
      </option>
    ));
  const { foodRead: words } = further;
  return (
    <label className="field" htmlFor={field}>
      {words.ourFood}
      <select id={field} value={food} onChange={(event) => onFood(event.target.value)}>
        <option value="">{words.chooseFood}</option>
        {byNumber.size > 0 && (
          <optgroup label={words.byNumber}>{options(all.filter(([id]) => byNumber.has(id)))}</optgroup>
        )}
        <optgroup label={words.allFoods}>{options(all.filter(([id]) => !byNumber.has(id)))}</optgroup>
      </select>
    </label>
  );
}
