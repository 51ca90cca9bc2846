import { STEERING, spellOut } from "@halfloaf/words/harmless";

export { harmless } from "@halfloaf/words/harmless";

const STEERING_BUT_BREAKS = new RegExp(`(?!\\n)[${STEERING}]`, "g");

/** As `harmless`, but breaks between lines stay. */
export function harmlessLines(text: string): string {
  return text.replace(STEERING_BUT_BREAKS, spellOut);
}

/** A value as JSON text over several lines; what could steer a terminal is escaped, which leaves the data the same. */
export function toJsonText(value: unknown): string {
  const text = JSON.stringify(value, undefined, 2);
  return text.replace(
    STEERING_BUT_BREAKS,
    (char) => `\\u${(char.codePointAt(0) as number).toString(16).padStart(4, "0")}`,
  );
}
