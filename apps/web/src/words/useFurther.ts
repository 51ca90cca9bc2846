import { use } from "react";
import type { Words } from "./en.ts";
import type { Formats } from "./Formats.ts";
import type { Further } from "./further/en.ts";
import { type Language, useWords } from "./WordsContext.tsx";

const loading = new Map<Language, Promise<Further>>();

/** Texts of the screens that are not there at the first load; whoever asks waits until they are. */
export function useFurther(): {
  readonly further: Further;
  readonly words: Words;
  readonly formats: Formats;
  readonly language: Language;
} {
  const spoken = useWords();
  return { ...spoken, further: use(load(spoken.language)) };
}

function load(language: Language): Promise<Further> {
  const known = loading.get(language);
  if (known !== undefined) return known;
  const fresh =
    language === "de"
      ? import("./further/de.ts").then(({ furtherDe }) => furtherDe)
      : import("./further/en.ts").then(({ furtherEn }) => furtherEn);
  loading.set(language, fresh);
  return fresh;
}
