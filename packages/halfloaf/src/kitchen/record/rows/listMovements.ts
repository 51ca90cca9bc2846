import type { CivilDate } from "../../../quantity/index.ts";
import type { LotState, Outflow } from "../../../stores/index.ts";
import type { RecordState } from "../recordState.ts";

/**
 * One thing that came into a lot or left it; masses in g, as purchased or of cooked portions as cooked, money in whole minor
 * units at lot cost, both below 0 for what left. The rows of a lot add up to what is left of it.
 */
export interface MovementRow {
  /** Absent for what counting found, which is known for the lot as a whole alone. */
  readonly on?: CivilDate;
  readonly lot: string;
  /** One of the two: what is as purchased, or cooked portions. */
  readonly food?: string;
  readonly dish?: string;
  /** How it came in ("split" off another lot, "cooked" from others, "found" in a count), or how it left. */
  readonly kind: "stocked" | "bought" | "split" | "cooked" | "found" | `${Outflow["kind"]}-out`;
  readonly massG: number;
  readonly costMinor: number;
}

/** All that moved in the stores, as plain rows in order of days; what is not known of its day comes last. */
export function listMovements({ lots }: Pick<RecordState, "lots">): MovementRow[] {
  const rows = [...lots.values()].flatMap(rowsOf);
  return rows.sort((a, b) => compareDays(a.on ?? "~", b.on ?? "~"));
}

function rowsOf({
  id,
  food,
  cooked,
  origin,
  since,
  broughtG,
  broughtMinor,
  foundG,
  outflows,
}: LotState): MovementRow[] {
  const what = { lot: id, ...(food !== undefined && { food }), ...(cooked !== undefined && { dish: cooked.dish }) };
  const kind = origin === "opening" ? "stocked" : origin;
  return [
    { on: since, ...what, kind, massG: broughtG, costMinor: broughtMinor },
    ...outflows.map((out): MovementRow => {
      return { on: out.on, ...what, kind: `${out.kind}-out`, massG: -out.massG, costMinor: 0 - out.costMinor };
    }),
    ...(foundG > 0 ? [{ ...what, kind: "found" as const, massG: foundG, costMinor: 0 }] : []),
  ];
}

function compareDays(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
