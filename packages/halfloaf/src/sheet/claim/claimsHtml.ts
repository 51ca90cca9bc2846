import type { DaySheet } from "../day/DaySheet.ts";
import { type Html, html } from "../html/html.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import { type Claim, MONEY_CLAIMS } from "./Claim.ts";

/** The claims of a sheet, all of them checked, with what they do not hold and what they rest on. */
export function claimsHtml(claims: readonly Claim[], days: readonly DaySheet[], words: SheetWords): Html | false {
  const [first] = days;
  if (claims.length === 0 || first === undefined) return false;
  const { day, figures } = words;
  const told = claims.map(({ kind, below }) =>
    day.claim(kind, MONEY_CLAIMS.includes(kind) ? figures.money(below, first.currency) : figures.minutes(below)),
  );
  const ahead = new Set(days.flatMap(({ sittings }) => sittings.flatMap((one) => (one.ahead ? [one.dish.name] : []))));
  const isTimed = claims.some(({ kind }) => !MONEY_CLAIMS.includes(kind));
  const sources = days.flatMap((one) => one.sources);
  const sum = (list: readonly { readonly costMinor: number }[]) =>
    list.reduce((all, { costMinor }) => all + costMinor, 0);
  const estimated = sum(sources.filter(({ kind }) => kind === "estimate"));
  const isMoney = claims.some(({ kind }) => MONEY_CLAIMS.includes(kind));
  const notes = [
    ...(isTimed && ahead.size > 0 ? [day.claimAhead([...ahead].join("; "))] : []),
    ...(isMoney && estimated > 0
      ? [day.claimEstimate(figures.money(estimated, first.currency), figures.money(sum(sources), first.currency))]
      : []),
  ];
  return html`<section class="claims" aria-label="${day.claims}"><ul>${told.map((text) => html`<li>${text}</li>`)}</ul>${notes.map((text) => html`<p class="note">${text}</p>`)}</section>`;
}
