/** A text that ends as a sentence does; what ends in a full stop already, like "2. Dez.", has no second one. */
export function toSentence(text: string): string {
  return text.endsWith(".") ? text : `${text}.`;
}
