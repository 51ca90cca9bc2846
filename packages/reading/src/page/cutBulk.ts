/** Where something begins that can be cut out, and where it ends; a tag longer than this is let stand. */
const OPENINGS = /<!--|<script\b[^>]{0,200}>|<style\b[^>]{0,200}>/gi;
const ENDS: Readonly<Record<string, string>> = { "<!--": "-->", "<scr": "</script", "<sty": "</style" };
/** Pictures and fonts that stand in the page itself. */
const INLINE_DATA = /data:[\w/+.;=-]{0,80};base64,[A-Za-z0-9+/=]{100,}/g;

/**
 * A page without what takes most of its room and is never read: comments, styles, scripts that hold no JSON-LD, pictures within
 * it. Where the end of one is missing, the page is left as it is from there on.
 */
export function cutBulk(html: string): string {
  const parts: string[] = [];
  const lower = html.toLowerCase();
  let from = 0;
  OPENINGS.lastIndex = 0;
  for (let match = OPENINGS.exec(html); match !== null; match = OPENINGS.exec(html)) {
    const [opening] = match;
    const start = match.index + opening.length;
    const end = lower.indexOf(
      ENDS[opening.slice(0, 4).toLowerCase()] as string,
      opening === "<!--" ? match.index + 2 : start,
    );
    if (end < 0) break;
    OPENINGS.lastIndex = end;
    if (/ld\+json/i.test(opening)) continue;
    parts.push(html.slice(from, opening === "<!--" ? match.index : start));
    from = opening === "<!--" ? Math.max(end + 3, start) : end;
  }
  parts.push(html.slice(from));
  return parts.join("").replace(INLINE_DATA, "data:,");
}
