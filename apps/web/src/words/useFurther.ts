import { use } from "react";
import type { Words } from "./en.ts";
import type { Formats } from "./Formats.ts";
import { FURTHER_LOADERS, type Further, type FurtherPart } from "./further/Further.ts";
import { type Language, useWords } from "./WordsContext.tsx";

const loading = new Map<string, Promise<object>>();
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
  const spoken = useWords();
  // All of them are on their way before the first is waited for.
  const asked = ["common" as const, ...parts].map((part) => load(part, spoken.language));
  const loaded: object[] = [];
  for (const each of asked) loaded.push(use(each));
  const key = [spoken.language, ...parts].join();
  const further = together.get(key) ?? Object.assign({}, ...loaded);
  together.set(key, further);
  return { ...spoken, further };
}

function load(part: FurtherPart, language: Language): Promise<object> {
  const key = `${language} ${part}`;
  const known = loading.get(key);
  if (known !== undefined) return known;
  const fresh = FURTHER_LOADERS[part][language]();
  loading.set(key, fresh);
  return fresh;
}
