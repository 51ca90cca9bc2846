/** What tells cautions in English: the texts of the library as they stand; other languages tell them by code and figures. */
export const cautionsEn = {
  tellCaution: (_code: string, text: string) => text,
  tellAuthority: (authority: string) => authority,
};
