import { lazy, type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { useFurther } from "../words/useFurther.ts";
import { foodPrices } from "./foodPrices.ts";
import { PackPrices } from "./PackPrices.tsx";

const TableButtons = lazy(() => import("../sheets/TableButtons.tsx"));

/** So many foods are shown before somebody asks for all. */
const SHOWN = 30;

/** Every food that is bought, with what its packs cost where. */
export function PriceList(): ReactNode {
  const { further, words } = useFurther("prices");
  const { view } = useKitchen();
  const names = useNames();
  const { kitchen, tables, day } = view;
  const [text, setText] = useState("");
  const [shop, setShop] = useState("");
  const [isAll, setAll] = useState(false);
  const foods = useMemo(() => {
    const prices = [...foodPrices(kitchen, tables.foods, day)].map(([food, packs]) => ({
      food,
      name: names.food(food),
      packs,
      words: [names.food(food), ...packs.map(({ pack }) => pack.label)].join(" ").toLowerCase(),
    }));
    return prices.sort((a, b) => a.name.localeCompare(b.name));
  }, [kitchen, tables.foods, day, names]);
  const found = foods
    .map((each) => ({ ...each, packs: each.packs.filter(({ pack }) => shop === "" || pack.shop === shop) }))
    .filter(({ words: each, packs }) => packs.length > 0 && each.includes(text.toLowerCase()));
  const shown = isAll ? found : found.slice(0, SHOWN);
  return (
    <div className="stack broad-page">
      <h1>{words.screens.prices}</h1>
      <Allowed to="price-seen">
        <div className="row">
          <Link href="/prices/read-in" className="button way">
            {further.prices.readReceipt}
          </Link>
          <Link href="/prices/read-list" className="button way">
            {further.prices.readList}
          </Link>
        </div>
      </Allowed>
      {foods.length === 0 && <p className="sheet">{further.prices.noneYet}</p>}
      <search className="fields">
        <TextField label={further.prices.find} type="search" value={text} onChange={setText} />
        <ChoiceField
          label={further.prices.shop}
          value={shop}
          choices={[["", further.prices.allShops], ...kitchen.shops.map(({ id, name }) => [id, name] as const)]}
          onChange={setShop}
        />
      </search>
      {found.length === 0 && foods.length > 0 && <p className="soft">{further.prices.none}</p>}
      <ul className="lines broad-lines">
        {shown.map(({ food, name, packs }) => (
          <li key={food} className="stack tight">
            <Link href={`/prices/${food}`} className="food-way">
              {name}
            </Link>
            <PackPrices packs={packs} />
          </li>
        ))}
      </ul>
      {shown.length < found.length && (
        <div className="stack tight">
          <p className="soft">{further.prices.shown(shown.length, found.length)}</p>
          <div>
            <button type="button" className="button" onClick={() => setAll(true)}>
              {further.prices.more}
            </button>
          </div>
        </div>
      )}
      <PrintOrSave>
        <TableButtons tables={["prices"]} />
      </PrintOrSave>
    </div>
  );
}
