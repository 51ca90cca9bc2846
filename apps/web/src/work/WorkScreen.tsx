import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function WorkScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.work}</h1>;
}
