const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
/** Control characters, most of which XML 1.0 has no way to hold, and lone halves of a pair. */
const NOT_XML = /(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/gu;

/** A text as it may stand in XML, between tags or in an attribute. What XML cannot hold becomes U+FFFD. */
export function escapeXml(text: string): string {
  return text.replace(NOT_XML, "\ufffd").replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);
}
