/** Whose guidance a figure is: US federal, or of the United Kingdom. */
export const JURISDICTIONS = ["us", "uk"] as const;
export type Jurisdiction = (typeof JURISDICTIONS)[number];

/** The kitchen's choice: one authority, or the strictest of all, which is taken where nothing was chosen. */
export type AuthorityChoice = Jurisdiction | "strictest";

/**
 * The rows of the authority chosen. Where it has none, or the strictest is wanted, all rows: a rule is never dropped
 * because the authority chosen is silent.
 */
export function rowsOfChoice<Row extends { readonly jurisdiction: Jurisdiction }>(
  rows: readonly Row[],
  choice: AuthorityChoice,
): readonly Row[] {
  const chosen = rows.filter(({ jurisdiction }) => jurisdiction === choice);
  return chosen.length > 0 ? chosen : rows;
}
