import { escapeXml } from "../escapeXml.ts";

/** What every picture says of itself to who can't see it. */
export interface PictureWords {
  readonly title: string;
  /** The picture in a sentence or two. */
  readonly description: string;
}

interface FrameParts extends PictureWords {
  /** Word that makes the ids of this kind of picture its own on a page with several. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly string[];
}

/** Ink of letters and outlines, of light lines, and paper. */
export const INK = "#1f2933";
export const LINE = "#d5dce2";
export const PAPER = "#ffffff";

/**
 * A picture as the text of an SVG that loads nothing and holds no script, with its title and description. **Source**: W3C,
 * SVG 2; WCAG 2.2, 1.1.1.
 */
export function svgFrame({ id, title, description, width, height, marks }: FrameParts): string {
  const [titleId, descId] = [`hl-${id}-title`, `hl-${id}-desc`];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${round(width)} ${round(height)}" width="${round(width)}" height="${round(height)}" role="img" aria-labelledby="${titleId} ${descId}" font-family="system-ui, sans-serif" font-size="12">`,
    `<title id="${titleId}">${escapeXml(title)}</title>`,
    `<desc id="${descId}">${escapeXml(description)}</desc>`,
    patterns(id),
    `<rect width="${round(width)}" height="${round(height)}" fill="${PAPER}"/>`,
    ...marks,
    "</svg>",
    "",
  ].join("\n");
}

/** Looks of areas that are told apart without colour. */
export type Look = "solid" | "strokes" | "dots" | "cross" | "back" | "empty";

/** The paint of a look in the picture of an id. */
export function fillOf(id: string, look: Look): string {
  return look === "solid" ? INK : look === "empty" ? PAPER : `url(#hl-${id}-${look})`;
}

function patterns(id: string): string {
  const marks: Readonly<Record<Exclude<Look, "solid" | "empty">, string>> = {
    strokes: `<path d="M-1 1L1 -1M0 6L6 0M5 7L7 5" stroke="${INK}"/>`,
    back: `<path d="M-1 5L1 7M0 0L6 6M5 -1L7 1" stroke="${INK}" stroke-width=".7"/>`,
    dots: `<circle cx="3" cy="3" r="1.3" fill="${INK}"/>`,
    cross: `<path d="M0 0L6 6M0 6L6 0" stroke="${INK}" stroke-width=".8"/>`,
  };
  const each = Object.entries(marks).map(
    ([look, mark]) =>
      `<pattern id="hl-${id}-${look}" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="${PAPER}"/>${mark}</pattern>`,
  );
  return `<defs>${each.join("")}</defs>`;
}

/** A text of a picture; it starts, ends or is centred at `x`. Its direction is that of its own letters. */
export function svgText(x: number, y: number, text: string, anchor: "start" | "middle" | "end" = "start"): string {
  return `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" fill="${INK}">${escapeXml(text)}</text>`;
}

/** A text cut to so many letters, with a mark where something is missing. */
export function cut(text: string, letters: number): string {
  const all = [...text];
  return all.length <= letters ? text : `${all.slice(0, Math.max(1, letters - 1)).join("")}…`;
}

/** Two decimals, which is finer than any screen. */
export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
