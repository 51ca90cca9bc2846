import type { ChangedKitchenWeek, PlateAgainst, WeekChange, WeekPlan } from "halfloaf/kitchen";
import type { KeepingPrice, ReplanOutcome, SittingChange } from "halfloaf/menu";
import type { CivilDate } from "halfloaf/quantity";
import { listOtherWays } from "./listOtherWays.ts";
import type { MendReport } from "./MendReport.ts";

type Planned = Extract<ReplanOutcome, { kind: "planned" }>;
type Mended = MendReport["sittings"][number];

/** What was changed and what became of it. */
export interface Mending {
  readonly old: WeekPlan;
  readonly changed: ChangedKitchenWeek;
  readonly changes: readonly WeekChange[];
  readonly today: CivilDate;
  readonly outcome: Planned;
  readonly keeping: KeepingPrice;
  /** What the old week has on plates for eaters who do not take it. */
  readonly against: readonly PlateAgainst[];
  readonly week: WeekPlan;
}

/** The report of a mended week. */
export function toMendReport(mending: Mending): MendReport {
  const { old, week, today, outcome, keeping } = mending;
  const otherWays = listOtherWays(old, week);
  return {
    format: "halfloaf-mend",
    version: 1,
    currency: week.currency,
    today,
    kept: outcome.kept,
    sittings: [...listDishes(mending), ...listSeats(mending)].sort(byTime),
    ...(otherWays.length > 0 && { otherWays }),
    buying: compareBuying(old, week),
    before: sumUp(old),
    after: sumUp(week),
    keeping: { priceMinor: Math.round(keeping.priceMinor), moves: keeping.moves },
    week,
  };
}

function byTime(a: Mended, b: Mended): number {
  return a.date === b.date ? 0 : a.date < b.date ? -1 : 1;
}

function sumUp({ accounts }: WeekPlan): MendReport["before"] {
  const { tillMinor, faresMinor, wasteMinor, carryOverMinor, handsOnMinutes } = accounts;
  return { paidMinor: tillMinor + faresMinor, wasteMinor, carryOverMinor, handsOnMinutes };
}

function listDishes({ changed: { stated, week }, changes, against, outcome }: Mending): Mended[] {
  return outcome.changes.map((change): Mended => {
    const { date, kind, eaters } = stated.sittings[change.sitting] as (typeof stated.sittings)[number];
    const [before, after] = [change.from, change.to].map((dish) => week.problem.dishes[dish]?.id);
    const why = toReason(change, before, { date, kind, eaters }, changes, against);
    return { date, kind, eaters: [...eaters], ...(before && { before }), ...(after && { after }), why };
  });
}

function toReason(
  { why }: SittingChange,
  before: string | undefined,
  sitting: Pick<Mended, "date" | "kind"> & { readonly eaters: readonly string[] },
  changes: readonly WeekChange[],
  against: readonly PlateAgainst[],
): Mended["why"] {
  const isShort = changes.some(
    (change) =>
      change.kind === "short" &&
      change.dish === before &&
      change.at.date === sitting.date &&
      change.at.kind === sitting.kind &&
      (change.at.eater === undefined || sitting.eaters.includes(change.at.eater)),
  );
  if (isShort) return { kind: "not-there" };
  if (why.kind === "breaks") return { kind: "breaks", limits: [...new Set(why.faults.map(({ code }) => code))] };
  if (why.kind === "dearer") return { kind: "dearer", byMinor: Math.round(why.byMinor) };
  const isRefused = changes.some((change) => change.kind === "refuse" && change.dish === before);
  if (isRefused) return { kind: "refused" };
  const isAgainst = against.some(
    ({ date, kind, eater }) => date === sitting.date && kind === sitting.kind && sitting.eaters.includes(eater),
  );
  if (isAgainst) return { kind: "not-for-eaters" };
  const isWanted = changes.some(
    ({ kind, ...change }) =>
      kind === "want" &&
      "at" in change &&
      change.at.date === sitting.date &&
      change.at.kind === sitting.kind &&
      (change.at.eater === undefined || sitting.eaters.includes(change.at.eater)),
  );
  return { kind: isWanted ? "wanted" : "not-to-be-had" };
}

/** Who does not eat any more at a sitting, and who came to it. */
function listSeats({ changed: { before, stated, week }, outcome }: Mending): Mended[] {
  const now = new Map(week.sittingBefore.map((old, k) => [old, k]));
  const dishAt = ({ batches }: Planned["plan"], { dishes }: typeof week.problem, k: number): string | undefined =>
    dishes[batches.find(({ sittings }) => sittings.includes(k))?.dish ?? -1]?.id;
  return before.stated.sittings.flatMap(({ date, kind, eaters }, old): Mended[] => {
    const k = now.get(old) ?? -1;
    const after = stated.sittings[k]?.eaters ?? [];
    const came = after.filter((id) => !eaters.includes(id));
    const left = eaters.filter((id) => !after.includes(id));
    const had = dishAt(before.plan, before.stated.problem, old);
    const has = dishAt(outcome.plan, week.problem, k);
    return [
      ...(left.length > 0 ? [{ date, kind, eaters: left, ...(had && { before: had }), why: SKIPPED }] : []),
      ...(came.length > 0 ? [{ date, kind, eaters: came, ...(has && { after: has }), why: GUESTS }] : []),
    ];
  });
}

const SKIPPED = { kind: "skipped" } as const;
const GUESTS = { kind: "guests" } as const;

function compareBuying(old: WeekPlan, week: WeekPlan): MendReport["buying"] {
  const lines = new Map<string, MendReport["buying"][number]>();
  const count = (plan: WeekPlan, side: "before" | "after"): void => {
    for (const { shop, date, lines: own } of plan.trips)
      for (const { pack, label, count: packs } of own) {
        const key = `${date} ${shop} ${pack}`;
        const known = lines.get(key) ?? { shop, date, pack, label, before: 0, after: 0 };
        lines.set(key, { ...known, [side]: known[side] + packs });
      }
  };
  count(old, "before");
  count(week, "after");
  return [...lines.values()].filter(({ before, after }) => before !== after).sort((a, b) => (a.date < b.date ? -1 : 1));
}
