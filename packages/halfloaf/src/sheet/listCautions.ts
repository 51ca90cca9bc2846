import type { SheetCaution } from "./day/DaySheet.ts";
import { type Html, html } from "./html/html.ts";
import type { SheetWords } from "./words/SheetWords.ts";

/** Cautions as items of a list, each with who says so. */
export function listCautions(
  cautions: readonly SheetCaution[],
  { cautions: tell }: Pick<SheetWords, "cautions">,
): Html[] {
  return cautions.map(
    ({ code, text, authority }) =>
      html`<li>${tell.tellCaution(code, text)} <span class="note">[${tell.tellAuthority(authority)}]</span></li>`,
  );
}
