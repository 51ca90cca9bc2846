/** How cautions are told, whose texts the library holds in English, with their figures. */
export interface CautionWords {
  /** A caution by its code; a text of an unknown form, and what the author of a dish wrote, stays as it is. */
  readonly tellCaution: (code: string, text: string) => string;
  /** Who says so, by the name that the library has for it. */
  readonly tellAuthority: (authority: string) => string;
}
