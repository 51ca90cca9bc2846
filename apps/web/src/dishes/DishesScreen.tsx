import type { ReactNode } from "react";
import { Route, Switch, useSearchParams } from "wouter";
import { lazily } from "../loading/lazily.ts";
import "../kitchen/fields/fields.css";
import "./dishes.css";
import { DishList } from "./DishList.tsx";
import { DishPage } from "./DishPage.tsx";

const ChangeDish = lazily(() => import("./ChangeDish.tsx"));
const ReadIn = lazily(() => import("./ReadIn.tsx"));
const WriteDish = lazily(() => import("./WriteDish.tsx"));
const FoodsScreen = lazily(() => import("../foods/FoodsScreen.tsx"));

/** What can be cooked, what a portion costs, takes and gives. */
export default function DishesScreen(): ReactNode {
  const [search] = useSearchParams();
  const shared = toSharedText(search);
  return (
    <Switch>
      <Route path="/dishes">{shared === undefined ? <DishList /> : <ReadIn key={shared} shared={shared} />}</Route>
      <Route path="/dishes/read-in">
        <ReadIn />
      </Route>
      <Route path="/dishes/write">
        <WriteDish />
      </Route>
      <Route path="/dishes/foods/*?">
        <FoodsScreen />
      </Route>
      <Route path="/dishes/:id/change">{({ id }) => <ChangeDish key={id} id={id} />}</Route>
      <Route path="/dishes/:id">{({ id }) => <DishPage key={id} id={id} />}</Route>
    </Switch>
  );
}

/** What another app shared with this one, by the names that the manifest gives its parts; undefined where nothing was. */
function toSharedText(search: URLSearchParams): string | undefined {
  const [title, text, from] = ["title", "shared", "from"].map((part) => search.get(part)?.trim() ?? "");
  const parts = [text?.startsWith(title ?? "") ? "" : title, text, from].filter((part) => part !== "");
  return text === "" && from === "" ? undefined : parts.join("\n\n");
}
