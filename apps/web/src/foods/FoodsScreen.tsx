import type { ReactNode } from "react";
import { Route, Switch } from "wouter";
import { lazily } from "../loading/lazily.ts";
import { FoodList } from "./FoodList.tsx";
import { FoodPage } from "./FoodPage.tsx";
import "./foods.css";

const FoodForm = lazily(() => import("./FoodForm.tsx"));
const ReadFoods = lazily(() => import("./reading/ReadFoods.tsx"));

/** What dishes are reckoned from: the table's foods, one's own, and figures taken from elsewhere. */
export default function FoodsScreen(): ReactNode {
  return (
    <Switch>
      <Route path="/dishes/foods">
        <FoodList />
      </Route>
      <Route path="/dishes/foods/write">
        <FoodForm />
      </Route>
      <Route path="/dishes/foods/read-in">
        <ReadFoods />
      </Route>
      <Route path="/dishes/foods/:id/change">{({ id }) => <FoodForm key={id} id={id} />}</Route>
      <Route path="/dishes/foods/:id">{({ id }) => <FoodPage key={id} id={id} />}</Route>
    </Switch>
  );
}
