import type { SheetWords } from "../words/SheetWords.ts";
import { asMarkup, type Html, html } from "./html.ts";
import { type Paper, sheetCss } from "./sheetCss.ts";

/** What a page is made of besides its words. */
interface PageParts {
  readonly title: string;
  readonly paper: Paper;
  readonly body: Html;
}

/**
 * A whole HTML page that needs nothing besides itself. Its policy forbids scripts and every request, so that it can be
 * opened, sent and published as it is. **Source**: W3C, Content Security Policy Level 3; WHATWG, HTML.
 */
export function toPage({ title, paper, body }: PageParts, words: Pick<SheetWords, "language" | "direction">): string {
  const page = html`<html lang="${words.language}" dir="${words.direction}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Halfloaf">
<title>${title}</title>
<style>${asMarkup(sheetCss(paper))}</style>
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;
  return `<!doctype html>\n${page.html}`;
}
