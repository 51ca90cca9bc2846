import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function DishesScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.dishes}</h1>;
}
