import type { ReactNode } from "react";
import { Route, Switch } from "wouter";
import "../kitchen/fields/fields.css";
import "./dishes.css";
import { DishList } from "./DishList.tsx";
import { DishPage } from "./DishPage.tsx";
import { ReadIn } from "./ReadIn.tsx";

/** What can be cooked, what a portion costs, takes and gives. */
export default function DishesScreen(): ReactNode {
  return (
    <Switch>
      <Route path="/dishes">
        <DishList />
      </Route>
      <Route path="/dishes/read-in">
        <ReadIn />
      </Route>
      <Route path="/dishes/:id">{({ id }) => <DishPage key={id} id={id} />}</Route>
    </Switch>
  );
}
