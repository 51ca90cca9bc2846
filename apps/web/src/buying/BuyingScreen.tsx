import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function BuyingScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.buying}</h1>;
}
