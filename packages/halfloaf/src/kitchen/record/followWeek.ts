import type { Parsed } from "../../quantity/index.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";

/** Changes that were made, and what they made of the week. */
export interface FollowedWeek<Changed> {
  readonly changes: readonly WeekChange[];
  readonly changed: Changed;
}

/**
 * A week with what was asked for and with what the record knows (`weekChanges`), made by `change`. Of a pack that was asked about
 * the record is not heard. What it knows and the week can't follow any more, since it is cooked or bought already, is left out;
 * what was asked for is not, and its issues have the path `changes`, position among what was asked.
 */
export function followWeek<Changed>(
  change: (changes: readonly WeekChange[]) => Parsed<Changed>,
  asked: readonly WeekChange[],
  known: readonly WeekChange[],
): Parsed<FollowedWeek<Changed>> {
  const about = new Set(asked.flatMap((each) => ("pack" in each ? [each.pack] : [])));
  const heard = known.filter((each) => !("pack" in each && about.has(each.pack)));
  const changes = [...asked, ...heard];
  const changed = change(changes);
  if (changed.ok) return { ok: true, value: { changes, changed: changed.value } };
  const late = new Set(changed.issues.flatMap(({ path: [list, at] }) => (list === "changes" ? [Number(at)] : [])));
  const left = heard.filter((_, at) => !late.has(asked.length + at));
  return left.length === heard.length ? changed : followWeek(change, asked, left);
}
