import { type Diet, type Dish, suitsDiet } from "halfloaf/dish";
import { DIETS, isFound } from "halfloaf/food";
import { type ReactNode, useDeferredValue, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LongList } from "../kitchen/LongList.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { useFurther } from "../words/useFurther.ts";
import { type DishFacts, dishFacts } from "./dishFacts.ts";
import { tellCost } from "./tellCost.ts";

/** Most minutes that can be asked for. */
const MINUTES = ["15", "20", "30", "45", "60"] as const;

interface Sieve {
  readonly text: string;
  readonly minutes: (typeof MINUTES)[number] | "any";
  readonly diet: Diet | "any";
  readonly noHeat: boolean;
  readonly freezes: boolean;
  readonly own: boolean;
}

const OPEN: Sieve = { text: "", minutes: "any", diet: "any", noHeat: false, freezes: false, own: false };

/** All dishes, to be searched and sifted. */
export function DishList(): ReactNode {
  const { further, words, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const { kitchen, tables, day } = view;
  const [sieve, setSieve] = useState(OPEN);
  const factsOf = useMemo(() => dishFacts(kitchen, tables.foods, day), [tables.foods, kitchen, day]);
  const dishes = useMemo(
    () => tables.dishes.toSorted((a, b) => formats.compare(a.title, b.title)),
    [tables.dishes, formats],
  );
  // What is typed shows at once; the list follows as soon as there is time.
  const asked = useDeferredValue(sieve);
  const found = useMemo(
    () => (asked === OPEN ? dishes : dishes.filter((dish) => passes(factsOf(dish), asked))),
    [dishes, factsOf, asked],
  );
  const list = useMemo(
    () =>
      found.map((dish) => (
        <li key={dish.id}>
          <DishLine dish={dish} factsOf={factsOf} />
        </li>
      )),
    [found, factsOf],
  );
  return (
    <div className="stack broad-page">
      <div className="row spread">
        <h1>{words.screens.dishes}</h1>
        <Link href="/dishes/foods" className="way-back">
          {further.dishes.foods}
        </Link>
      </div>
      <Allowed to="edited">
        <div className="row">
          <Link href="/dishes/read-in" className="button main way">
            {further.dishes.readIn}
          </Link>
          <Link href="/dishes/write" className="button way">
            {further.dishes.write}
          </Link>
        </div>
      </Allowed>
      <Sifting sieve={sieve} onSieve={setSieve} hasOwn={kitchen.dishes.length > 0} />
      <p className="soft" role="status">
        {found.length === 0 ? further.dishes.noneFound : further.dishes.count(found.length)}
      </p>
      <LongList className="lines broad-lines">{list}</LongList>
    </div>
  );
}

function passes({ words, minutes, diet, hasHeat, freezes, isOwn }: DishFacts, sieve: Sieve): boolean {
  return (
    isFound(words, sieve.text.trim()) &&
    (sieve.minutes === "any" || minutes <= Number(sieve.minutes)) &&
    (sieve.diet === "any" || (diet !== undefined && suitsDiet(diet, sieve.diet))) &&
    !(sieve.noHeat && hasHeat) &&
    !(sieve.freezes && !freezes) &&
    !(sieve.own && !isOwn)
  );
}

interface SiftingProps {
  readonly sieve: Sieve;
  readonly onSieve: (sieve: Sieve) => void;
  readonly hasOwn: boolean;
}

function Sifting({ sieve, onSieve, hasOwn }: SiftingProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { dishes, diets } = further;
  return (
    <search className="stack tight">
      <TextField
        label={dishes.find}
        type="search"
        value={sieve.text}
        onChange={(text) => onSieve({ ...sieve, text })}
      />
      <div className="fields two">
        <ChoiceField
          label={dishes.most}
          value={sieve.minutes}
          choices={[["any", dishes.anyTime], ...MINUTES.map((each) => [each, formats.minutes(Number(each))] as const)]}
          onChange={(minutes) => onSieve({ ...sieve, minutes })}
        />
        <ChoiceField
          label={dishes.diet}
          value={sieve.diet}
          choices={[["any", dishes.anyDiet], ...DIETS.slice(0, -1).map((each) => [each, diets[each]] as const)]}
          onChange={(diet) => onSieve({ ...sieve, diet })}
        />
      </div>
      <div className="row">
        <TickField label={dishes.noHeat} isTicked={sieve.noHeat} onChange={(noHeat) => onSieve({ ...sieve, noHeat })} />
        <TickField
          label={dishes.freezes}
          isTicked={sieve.freezes}
          onChange={(freezes) => onSieve({ ...sieve, freezes })}
        />
        {hasOwn && <TickField label={dishes.own} isTicked={sieve.own} onChange={(own) => onSieve({ ...sieve, own })} />}
      </div>
    </search>
  );
}

interface DishLineProps {
  readonly dish: Dish;
  /** Asked only once the line is shown. */
  readonly factsOf: (dish: Dish) => DishFacts;
}

function DishLine({ dish, factsOf }: DishLineProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const { minutes, cost } = factsOf(dish);
  const points = view.kitchen.ratings.find((rating) => rating.dish === dish.id)?.points;
  return (
    <Link href={`/dishes/${dish.id}`} className="dish-line">
      <span className="dish-title">{dish.title}</span>
      <span className="small soft">
        {formats.minutes(minutes)}, {tellCost(cost, further, formats, view.kitchen.currency)}
        {points !== undefined && `, ${further.dishes.rated(formats.number(points))}`}
      </span>
    </Link>
  );
}
