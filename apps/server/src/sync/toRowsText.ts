import type { HostedRow } from "../host/HostStore.ts";

/** The message that hands rows on; their texts are put in as they stand. */
export function toRowsText(rows: readonly HostedRow[], upTo: number): string {
  return `{"say":"rows","upTo":${upTo},"rows":[${rows.map(({ text }) => text).join(",")}]}`;
}
