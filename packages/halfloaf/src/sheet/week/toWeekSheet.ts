import { addDays } from "../../quantity/index.ts";
import type { DayFlow, DayIntake, DaySheet, PriceSource } from "../day/DaySheet.ts";
import { toDaySheet } from "../day/toDaySheet.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { WeekSheet } from "./WeekSheet.ts";

/** The sheet of a whole week with the sheets of its days. */
export function toWeekSheet(source: WeekSource): WeekSheet {
  const { week } = source;
  const days = Array.from({ length: week.days }, (_, day) => toDaySheet(source, addDays(week.from, day)));
  const { budgetMinor, faresMinor } = week.accounts;
  const flow = flowOf(days);
  return {
    kitchen: week.kitchen,
    currency: week.currency,
    from: week.from,
    to: addDays(week.from, week.days - 1),
    days,
    platesMinor: add(days.map(({ platesMinor }) => platesMinor)),
    handsOnMinutes: add(days.map(({ handsOnMinutes }) => handsOnMinutes)),
    flow,
    ...(budgetMinor !== undefined && { budget: { budgetMinor, paidMinor: flow.tillMinor + faresMinor } }),
    intake: intakeOf(source),
    sources: gatherSources(days),
  };
}

function flowOf(days: readonly DaySheet[]): DayFlow {
  const flows = days.map(({ flow }) => flow);
  const sum = (key: keyof DayFlow) => add(flows.map((flow) => flow[key]));
  return {
    openingMinor: flows[0]?.openingMinor ?? 0,
    tillMinor: sum("tillMinor"),
    platesMinor: sum("platesMinor"),
    wasteMinor: sum("wasteMinor"),
    leftMinor: flows.at(-1)?.leftMinor ?? 0,
  };
}

/**
 * As the week was planned, an average of the days' sheets: amounts and references are those of what is eaten here, as energy and
 * its need are, where the week tells them for a whole day.
 */
function intakeOf({ week, names }: WeekSource): DayIntake[] {
  return week.intake.map(({ eater, energyKj, energyNeedKj, hereShare, lines, referred }) => ({
    eater: { id: eater, name: names.eater(eater) },
    energyKj,
    ...(energyNeedKj !== undefined && { energyNeedKj }),
    hereShare,
    lines: lines.map(({ component, kind, referencePerDay, knownPerDay, knownShare, verdict, source }) => ({
      component,
      kind,
      reference: referencePerDay * hereShare,
      ...(knownPerDay !== undefined && { amount: knownPerDay * hereShare }),
      knownShare,
      verdict,
      source,
    })),
    ...(referred !== undefined && { referred }),
  }));
}

/** Sources of all days, those of one place and day together. */
function gatherSources(days: readonly DaySheet[]): PriceSource[] {
  const found = new Map<string, PriceSource>();
  for (const source of days.flatMap(({ sources }) => sources)) {
    const key = `${source.kind} ${source.at} ${source.on}`;
    const same = found.get(key);
    const foods = [...new Set([...(same?.foods ?? []), ...source.foods])].sort();
    found.set(key, { ...source, foods, costMinor: source.costMinor + (same?.costMinor ?? 0) });
  }
  return [...found.values()];
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
