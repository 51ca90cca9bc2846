import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function StoresScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.stores}</h1>;
}
