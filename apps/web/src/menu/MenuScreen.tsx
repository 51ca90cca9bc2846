import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function MenuScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.menu}</h1>;
}
