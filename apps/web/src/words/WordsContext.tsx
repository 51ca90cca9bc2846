import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from "react";
import { loadSurely } from "../loading/loadSurely.ts";
import { en, type Words } from "./en.ts";
import { Formats } from "./Formats.ts";
import { loadAllAsked } from "./furtherParts.ts";
import { findLanguage, findLocale, type Language, rememberLanguage } from "./languages.ts";

interface Speech {
  readonly words: Words;
  readonly formats: Formats;
  readonly language: Language;
}

interface Spoken extends Speech {
  /** Speaks another language from now on, once all its texts that are shown are there. */
  readonly choose: (language: Language) => void;
}

const WordsContext = createContext<Spoken | undefined>(undefined);

interface WordsProviderProps {
  /** Shown, in the words that are there, while those of the language are on their way. */
  readonly waiting: ReactNode;
  readonly children: ReactNode;
}

/** Texts and formats of the language that was chosen, or of the browser's where it is one of ours. */
export function WordsProvider({ waiting, children }: WordsProviderProps): ReactNode {
  const [speech, setSpeech] = useState<Speech | undefined>(() =>
    findLanguage() === "en" ? toSpeech("en", en) : undefined,
  );
  useEffect(() => {
    if (speech === undefined) void loadSpeech(findLanguage()).then(setSpeech);
    else document.documentElement.lang = speech.language;
  }, [speech]);
  const spoken = useMemo(() => {
    const choose = (language: Language): void => {
      rememberLanguage(language);
      void Promise.all([loadSpeech(language), loadAllAsked(language)]).then(([next]) => setSpeech(next));
    };
    return speech && { ...speech, choose };
  }, [speech]);
  if (spoken !== undefined) return <WordsContext value={spoken}>{children}</WordsContext>;
  return <WordsContext value={{ ...toSpeech("en", en), choose: () => {} }}>{waiting}</WordsContext>;
}

/** The texts and formats in use. */
export function useWords(): Spoken {
  const spoken = useContext(WordsContext);
  if (spoken === undefined) throw new Error("there are no words outside of a WordsProvider");
  return spoken;
}

/** What hands the same words on to a page that is drawn elsewhere. */
export function usePassWords(): (page: ReactNode) => ReactNode {
  const spoken = useWords();
  return useCallback((page) => <WordsContext value={spoken}>{page}</WordsContext>, [spoken]);
}

async function loadSpeech(language: Language): Promise<Speech> {
  return toSpeech(language, language === "de" ? (await loadSurely(() => import("./de.ts"))).de : en);
}

function toSpeech(language: Language, words: Words): Speech {
  return { words, language, formats: new Formats(findLocale(language)) };
}
