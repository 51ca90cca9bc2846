import { createContext, type ReactNode, use, useEffect, useMemo, useState } from "react";
import { en, type Words } from "./en.ts";
import { Formats } from "./Formats.ts";

/** The languages there are, by their code of BCP 47. */
export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

interface Spoken {
  readonly words: Words;
  readonly formats: Formats;
  readonly language: Language;
}

const WordsContext = createContext<Spoken | undefined>(undefined);
const KEY = "halfloaf-language";

/** Texts and formats of the language that was chosen, or of the browser's where it is one of ours. */
export function WordsProvider({ children }: { readonly children: ReactNode }): ReactNode {
  const [language] = useState(findLanguage);
  const [words, setWords] = useState<Words | undefined>(language === "en" ? en : undefined);
  useEffect(() => {
    document.documentElement.lang = language;
    if (language === "de") void import("./de.ts").then((loaded) => setWords(loaded.de));
  }, [language]);
  const spoken = useMemo(
    () => words && { words, language, formats: new Formats(findLocale(language)) },
    [words, language],
  );
  return spoken && <WordsContext value={spoken}>{children}</WordsContext>;
}

/** The texts and formats in use. */
export function useWords(): Spoken {
  const spoken = use(WordsContext);
  if (spoken === undefined) throw new Error("there are no words outside of a WordsProvider");
  return spoken;
}

/** Speaks another language from now on. */
export function chooseLanguage(language: Language): void {
  localStorage.setItem(KEY, language);
  location.reload();
}

function findLanguage(): Language {
  const chosen = localStorage.getItem(KEY);
  const wanted = [chosen, ...navigator.languages].map((each) => each?.slice(0, 2));
  return LANGUAGES.find((language) => language === wanted.find((each) => isLanguage(each))) ?? "en";
}

function isLanguage(text: string | undefined): text is Language {
  return LANGUAGES.some((language) => language === text);
}

/** The region of the browser goes with the language, so that dates and numbers look as at home. */
function findLocale(language: Language): string {
  return navigator.languages.find((each) => each.startsWith(language)) ?? language;
}
