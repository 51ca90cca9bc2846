import { type Dish, minutesOf, scaleVolumes } from "halfloaf/dish";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { workPath } from "../work/workPath.ts";
import { Costing } from "./Costing.tsx";
import { DishCare } from "./DishCare.tsx";
import { DishIntake } from "./DishIntake.tsx";
import { DishWishes } from "./DishWishes.tsx";
import { tellAmount } from "./tellAmount.ts";

const DishesAgainst = lazily(() => import("../thinking/DishesAgainst.tsx"));
const DishSheets = lazily(() => import("../sheets/DishSheets.tsx"));

/** Everything about one dish, for as many portions as are wanted. */
export function DishPage({ id }: { readonly id: string }): ReactNode {
  const { further, words } = useFurther("dishes");
  const { view } = useKitchen();
  const dish = view.tables.dishes.find((each) => each.id === id);
  const [portions, setPortions] = useState(view.kitchen.eaters.length);
  if (dish === undefined)
    return (
      <div className="stack">
        <h1>{words.screens.dishes}</h1>
        <p>{further.dishes.lost}</p>
        <Link href="/dishes">{further.dishes.all}</Link>
      </div>
    );
  return (
    <article className="stack broad-page">
      <div className="row spread">
        <Link href="/dishes" className="way-back">
          {further.dishes.all}
        </Link>
        <Undo />
      </div>
      <h1 className="long-title">{dish.title}</h1>
      <Minutes dish={dish} portions={portions} />
      <Awaited isQuiet>
        <DishesAgainst dishes={[dish.id]} />
      </Awaited>
      <div className="row portions-row">
        <Portions portions={portions} onPortions={setPortions} />
        <Link href={workPath([{ dish: dish.id, portions }])} className="button main way">
          {further.dishes.toWork}
        </Link>
        <Allowed to="edited">
          <Link href={`/dishes/${dish.id}/change`} className="button way">
            {further.edit}
          </Link>
        </Allowed>
      </div>
      <div className="stack beside">
        <Makings dish={dish} portions={portions} />
        <Method dish={dish} portions={portions} />
      </div>
      <Costing dish={dish} portions={portions} />
      <DishIntake dish={dish} />
      <DishCare dish={dish} />
      <DishWishes dish={dish} />
      <PrintOrSave>
        <DishSheets dish={dish} portions={portions} />
      </PrintOrSave>
    </article>
  );
}

function Minutes({ dish, portions }: { readonly dish: Dish; readonly portions: number }): ReactNode {
  const { further, formats, words } = useFurther("dishes");
  const { view } = useKitchen();
  const rings = Math.max(1, view.kitchen.kit.rings);
  const { elapsed, handsOn, ahead } = useMemo(
    () => minutesOf(dish, portions, { rings, cooks: 1 }),
    [dish, portions, rings],
  );
  return (
    <p className="soft">
      {further.dishes.elapsed(formats.minutes(elapsed))}, {further.dishes.handsOn(formats.minutes(handsOn))}
      {ahead > 0 && `, ${further.dishes.ahead(formats.minutes(ahead))}`}.{" "}
      {further.dishes.portionMass(formats.mass(dish.portionMassG))}.{" "}
      {further.dishes.fits(dish.fits.map((kind) => words.sittings[kind]).join(", "))}.
    </p>
  );
}

const MOST_PORTIONS = 24;

interface PortionsProps {
  readonly portions: number;
  readonly onPortions: (portions: number) => void;
}

function Portions({ portions, onPortions }: PortionsProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const set = (wanted: number): void => onPortions(Math.min(MOST_PORTIONS, Math.max(1, wanted)));
  return (
    <fieldset className="row choice">
      <legend className="unseen">{further.dishes.portions}</legend>
      <button
        type="button"
        className="button"
        aria-label={further.dishes.fewer}
        disabled={portions <= 1}
        onClick={() => set(portions - 1)}
      >
        −
      </button>
      <output className="figure">{further.dishes.portionCount(portions, formats.number(portions))}</output>
      <button type="button" className="button" aria-label={further.dishes.more} onClick={() => set(portions + 1)}>
        +
      </button>
    </fieldset>
  );
}

function Makings({ dish, portions }: { readonly dish: Dish; readonly portions: number }): ReactNode {
  const { further, formats } = useFurther("dishes");
  const names = useNames();
  const times = portions / dish.portions;
  return (
    <section className="stack tight">
      <h2>{further.dishes.makings}</h2>
      <ul className="lines close">
        {dish.makings.map((making) => (
          <li key={`${making.food} ${making.cut}`}>
            <b className="figure">{tellAmount(making.amount, times, further, formats)}</b> {names.food(making.food)}
            {making.cut !== undefined && `, ${making.cut}`}
            {making.as !== undefined && `, ${further.dishes.asBought}`}
            {making.optional && <span className="soft"> ({further.dishes.optional})</span>}
            {making.alternatives.map(({ food, amount }) => (
              <div key={food} className="small soft">
                {further.dishes.or} {tellAmount(amount, times, further, formats)} {names.food(food)}
              </div>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Method({ dish, portions }: { readonly dish: Dish; readonly portions: number }): ReactNode {
  const { further, formats, words } = useFurther("dishes");
  const handsOf = { full: "", eye: `, ${further.dishes.keepEye}`, none: `, ${further.dishes.goesAlone}` };
  return (
    <section className="stack tight">
      <h2>{further.dishes.method}</h2>
      <ol className="step-list">
        {dish.method.map(({ id, text, minutes, hands, tempC, kit, ahead }) => (
          <li key={id}>
            {scaleVolumes(text, portions / dish.portions, (value) => formats.number(value, 2))}
            <div className="small soft">
              {formats.minutes(minutes.fixed + minutes.perPortion * portions)}
              {handsOf[hands]}
              {tempC !== undefined && kit.includes("oven") && `, ${words.work.oven(tempC)}`}
              {ahead && `, ${further.dishes.aheadStep}`}
            </div>
          </li>
        ))}
      </ol>
    </section>
  );
}
