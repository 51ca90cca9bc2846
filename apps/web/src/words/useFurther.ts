import { use } from "react";
import type { Words } from "./en.ts";
import type { Formats } from "./Formats.ts";
import type { Further, FurtherPart } from "./further/Further.ts";
import { furtherOf, loadFurther } from "./furtherParts.ts";
import type { Language } from "./languages.ts";
import { useWords } from "./WordsContext.tsx";

const together = new Map<string, object>();

/**
 * Texts that are not there at the first load, by the parts that are named besides the common ones; whoever asks waits until
 * they are. The same parts are the same object each time.
 */
export function useFurther<Part extends FurtherPart = "common">(
  ...parts: readonly Part[]
): {
  readonly further: Further<Part>;
  readonly words: Words;
  readonly formats: Formats;
  readonly language: Language;
} {
  const { words, formats, language } = useWords();
  const asked = ["common" as const, ...parts];
  // All of them are on their way before the first is waited for.
  for (const part of asked) void loadFurther(part, language);
  const loaded = asked.map((part) => furtherOf(part, language) ?? use(loadFurther(part, language)));
  const key = [language, ...parts].join();
  const further = together.get(key) ?? Object.assign({}, ...loaded);
  together.set(key, further);
  return { words, formats, language, further };
}
