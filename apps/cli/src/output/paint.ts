/** Ways to set a text apart on a screen. Colour only ever repeats what the words say. */
export interface Paint {
  readonly heading: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly good: (text: string) => string;
  readonly warning: (text: string) => string;
}

const asIs = (text: string): string => text;

/** Leaves every text as it is. */
export const PLAIN: Paint = { heading: asIs, strong: asIs, quiet: asIs, good: asIs, warning: asIs };

const sgr =
  (on: number, off: number) =>
  (text: string): string =>
    text === "" ? text : `\u001b[${on}m${text}\u001b[${off}m`;

/** Bold, dim and two colours of the terminal's own. **Source**: ECMA-48, 8.3.117 SGR. */
export const COLOURED: Paint = {
  heading: (text) => sgr(1, 22)(sgr(36, 39)(text)),
  strong: sgr(1, 22),
  quiet: sgr(2, 22),
  good: sgr(32, 39),
  warning: sgr(33, 39),
};

/** Colours only where a person looks on and has not asked for none: a terminal, no NO_COLOR, no dumb terminal. */
export function choosePaint(isTerminal: boolean, env: Readonly<Record<string, string | undefined>>): Paint {
  const refused = (env.NO_COLOR ?? "") !== "" || env.TERM === "dumb";
  return isTerminal && !refused ? COLOURED : PLAIN;
}
