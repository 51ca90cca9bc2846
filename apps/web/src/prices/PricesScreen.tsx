import type { ReactNode } from "react";
import { Route, Switch } from "wouter";
import { lazily } from "../loading/lazily.ts";
import "../kitchen/fields/fields.css";
import "./prices.css";
import { FoodPrices } from "./FoodPrices.tsx";
import { PriceList } from "./PriceList.tsx";

const ReadReceipt = lazily(() => import("./reading/ReadReceipt.tsx"));
const ReadPriceList = lazily(() => import("./reading/ReadPriceList.tsx"));
const WritePack = lazily(() => import("./WritePack.tsx"));

/** What things cost where, how sure that is, and how it has moved. */
export default function PricesScreen(): ReactNode {
  return (
    <Switch>
      <Route path="/prices">
        <PriceList />
      </Route>
      <Route path="/prices/read-in">
        <ReadReceipt />
      </Route>
      <Route path="/prices/read-list">
        <ReadPriceList />
      </Route>
      <Route path="/prices/write">
        <WritePack />
      </Route>
      <Route path="/prices/:food">{({ food }) => <FoodPrices key={food} food={food} />}</Route>
    </Switch>
  );
}
