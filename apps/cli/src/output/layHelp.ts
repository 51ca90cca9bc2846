import { Help } from "commander";
import { wrap } from "./layout.ts";
import { textWidth } from "./textWidth.ts";

/** Columns in which what an option does still reads well beside its name. */
const LEAST_BESIDE = 40;

/** An option or a command with what it does: beside it, or below it where the page is too narrow for that. */
export function layHelpItem(term: string, termWidth: number, description: string, helper: Help): string {
  const width = helper.helpWidth ?? LEAST_BESIDE;
  if (width - termWidth - 4 >= LEAST_BESIDE)
    return Help.prototype.formatItem.call(helper, term, termWidth, description, helper);
  return [`  ${term}`, ...wrap(description, width - 6).map((line) => `      ${line}`)].join("\n");
}

/** A help text with its paragraphs wrapped anew where they are wider than the page; lines that are set in stay as they are. */
export function layHelp(text: string, width: number): string {
  return text
    .split("\n\n")
    .map((paragraph) => {
      const lines = paragraph.split("\n");
      const isProse = lines.every((line) => !line.startsWith(" "));
      const isWide = lines.some((line) => textWidth(line) > width);
      return isProse && isWide ? wrap(lines.join(" ").trim(), width).join("\n") : paragraph;
    })
    .join("\n\n");
}
