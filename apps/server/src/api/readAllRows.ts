import type { StoreFault } from "@halfloaf/keep";
import { type HostStore, isFault } from "../host/HostStore.ts";

/** Bytes of a log that are read at once. */
const PAGE_BYTES = 1_000_000;

/** The texts of all rows of a kitchen's log, in its order. */
export async function readAllRows(store: HostStore, kitchen: string): Promise<readonly string[] | StoreFault> {
  const rows: string[] = [];
  for (let after = 0, end = 1; after < end; ) {
    const page = await store.readLog(kitchen, after, PAGE_BYTES);
    if (isFault(page)) return page;
    rows.push(...page.rows.map(({ text }) => text));
    after = page.rows.at(-1)?.seq ?? page.upTo;
    end = page.upTo;
  }
  return rows;
}
