import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function KitchenScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.kitchen}</h1>;
}
