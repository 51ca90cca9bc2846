import { loadSurely } from "../loading/loadSurely.ts";
import { FURTHER_LOADERS, type FurtherPart } from "./further/Further.ts";
import type { Language } from "./languages.ts";

const loading = new Map<string, Promise<object>>();
const loaded = new Map<string, object>();
const asked = new Set<FurtherPart>();

/** The texts of a part where they are there; undefined while they are not. */
export function furtherOf(part: FurtherPart, language: Language): object | undefined {
  return loaded.get(keyOf(part, language));
}

/** Loads the texts of a part once, and surely: it never fails. */
export function loadFurther(part: FurtherPart, language: Language): Promise<object> {
  asked.add(part);
  const key = keyOf(part, language);
  const known = loading.get(key);
  if (known !== undefined) return known;
  const fresh = loadSurely<object>(FURTHER_LOADERS[part][language]);
  loading.set(key, fresh);
  void fresh.then((texts) => loaded.set(key, texts));
  return fresh;
}

/** Loads in another language all that was asked for so far, so that what is open can change its language at once. */
export async function loadAllAsked(language: Language): Promise<void> {
  await Promise.all([...asked].map((part) => loadFurther(part, language)));
}

function keyOf(part: FurtherPart, language: Language): string {
  return `${language} ${part}`;
}
