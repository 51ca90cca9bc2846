import type { Issue } from "halfloaf/quantity";

/** Most faults that are kept in full; a table of another format could else fault every one of its cells. */
const KEPT = 500;

/** Gathers the faults of a long reading: the first ones in full, all of them by number. */
export class IssueLog {
  readonly issues: Issue[] = [];
  /** All faults told, those that were not kept included. */
  count = 0;

  readonly tell = (issue: Issue): void => {
    this.count++;
    if (this.issues.length < KEPT) this.issues.push(issue);
  };
}

const SHOWN = 60;

/** What stands in a file, for an issue: cut where it is long, without characters that would not show or would turn others round. */
export function plain(text: string): string {
  const visible = text.slice(0, SHOWN * 4).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, " ");
  const characters = [...visible];
  const isCut = characters.length > SHOWN || text.length > SHOWN * 4;
  return `${characters.slice(0, SHOWN).join("")}${isCut ? "..." : ""}`;
}

/** The same in quotation marks. */
export function quote(text: string): string {
  return `"${plain(text)}"`;
}
