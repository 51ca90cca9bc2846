/** A text in each form that numbers take in a language; where a form is not given the last one stands. */
type CountedForms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> & { readonly other: string };

/**
 * Chooses the text that goes with a number in a language, of BCP 47: "1 dish", "2 dishes". Numbers are taken as they are
 * shown, with so many decimals at most.
 * **Source**: the plural rules of Unicode CLDR, by Intl.
 */
export function toCounted(language: string, decimals = 1): (count: number, forms: CountedForms) => string {
  const rules = new Intl.PluralRules(language, { maximumFractionDigits: decimals });
  return (count, forms) => forms[rules.select(count)] ?? forms.other;
}
