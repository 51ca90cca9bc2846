import type { CautionWords } from "halfloaf/sheet";

/** What tells cautions in English: the texts of the library as they stand; other languages tell them by code and figures. */
export const CAUTION_WORDS: CautionWords = {
  tellCaution: (_code, text) => text,
  tellAuthority: (authority) => authority,
};
