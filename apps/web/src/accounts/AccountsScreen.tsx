import type { ReactNode } from "react";
import { useWords } from "../words/WordsContext.tsx";

export default function AccountsScreen(): ReactNode {
  const { words } = useWords();
  return <h1>{words.screens.accounts}</h1>;
}
