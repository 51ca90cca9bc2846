import type { HostedRow, Push } from "./HostStore.ts";

/** What of a push is to be written, given what stands there already. */
export interface SettledActs {
  readonly fresh: readonly HostedRow[];
  readonly bytes: number;
  readonly taken: readonly string[];
  readonly over: readonly string[];
}

/** Numbers the rows of a push that are new. `standing` gives the text of those of its ids that are there already. */
export function settleActs(
  push: Push,
  log: { readonly upTo: number; readonly bytes: number },
  standing: ReadonlyMap<string, string>,
): SettledActs {
  const fresh = new Map<string, HostedRow>();
  const taken: string[] = [];
  const over: string[] = [];
  let bytes = 0;
  for (const act of push.acts) {
    const textOf = (id: string) => standing.get(id) ?? fresh.get(id)?.text;
    const others = act.filter(({ id, text }) => (textOf(id) ?? text) !== text);
    if (others.length > 0) {
      taken.push(...others.map(({ id }) => id));
      continue;
    }
    const rows = act.filter(({ id }) => textOf(id) === undefined);
    const more = rows.reduce((sum, { text }) => sum + text.length, 0);
    const isOver = log.upTo + fresh.size + rows.length > push.mostRows || log.bytes + bytes + more > push.mostBytes;
    if (rows.length > 0 && isOver) {
      over.push(...rows.map(({ id }) => id));
      continue;
    }
    bytes += more;
    for (const { id, text } of rows) fresh.set(id, { seq: log.upTo + fresh.size + 1, id, device: push.device, text });
  }
  return { fresh: [...fresh.values()], bytes, taken, over };
}
