import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function PricesScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.prices}</h1>;
}
