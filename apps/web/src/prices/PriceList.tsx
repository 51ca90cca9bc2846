import { isFound, namesOf, toSearchText } from "halfloaf/food";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNamedFoods } from "../kitchen/useNamedFoods.ts";
import { useNames } from "../kitchen/useNames.ts";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { useFurther } from "../words/useFurther.ts";
import { foodPrices } from "./foodPrices.ts";
import { PackPrices } from "./PackPrices.tsx";

const TableButtons = lazily(() => import("../sheets/TableButtons.tsx"));

/** So many foods are shown before somebody asks for all. */
const SHOWN = 30;

/** Every food that is bought, with what its packs cost where. */
export function PriceList(): ReactNode {
  const { further, words, formats } = useFurther("prices");
  const { view } = useKitchen();
  const named = useNamedFoods();
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
    }));
    return prices.sort((a, b) => formats.compare(a.name, b.name));
  }, [kitchen, tables.foods, day, names, formats]);
  const wordsOf = useMemo(() => {
    const each = foods.map(({ food, name, packs }) => {
      const facts = named.get(food);
      const all = [...(facts === undefined ? [name] : namesOf(facts)), ...packs.map(({ pack }) => pack.label)];
      return [food, toSearchText(all.join(" "))] as const;
    });
    return new Map(each);
  }, [foods, named]);
  const found = foods
    .map((each) => ({ ...each, packs: each.packs.filter(({ pack }) => shop === "" || pack.shop === shop) }))
    .filter(({ food, packs }) => packs.length > 0 && isFound(wordsOf.get(food) ?? "", text.trim()));
  const shown = isAll ? found : found.slice(0, SHOWN);
  return (
    <div className="stack broad-page">
      <h1>{words.screens.prices}</h1>
      <Allowed to="price-seen">
        <div className="row">
          <Link href="/prices/write" className="button way">
            {further.prices.writePack}
          </Link>
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
