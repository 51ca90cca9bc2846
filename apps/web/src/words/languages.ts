/** The languages there are, by their code of BCP 47. */
export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

const KEY = "halfloaf-language";

/** The language that was chosen, or the first of the browser's that is one of ours. */
export function findLanguage(): Language {
  const wanted = [readChosen(), ...navigator.languages].map((each) => each?.slice(0, 2));
  return LANGUAGES.find((language) => language === wanted.find((each) => isLanguage(each))) ?? "en";
}

/** Remembers the language that was chosen; where storage is refused, for as long as the page is open. */
export function rememberLanguage(language: Language): void {
  try {
    localStorage.setItem(KEY, language);
  } catch {
    // The browser's own language is next best.
  }
}

function readChosen(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function isLanguage(text: string | undefined): text is Language {
  return LANGUAGES.some((language) => language === text);
}

/** The region of the browser goes with the language, so that dates and numbers look as at home. */
export function findLocale(language: Language): string {
  return navigator.languages.find((each) => each.startsWith(language)) ?? language;
}
