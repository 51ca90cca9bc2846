import { type Eater, type ReferReason, reasonToRefer } from "./eater.ts";
import {
  ENERGY_KJ_PER_G,
  isHeldAgainstFood,
  type ReferenceComponent,
  type ReferenceRow,
  type ReferenceTable,
  type ReferenceTables,
} from "./referenceTable.ts";

/** One reference intake of one person: so much of a component a day, at least or at most. */
export interface ReferenceIntake {
  readonly component: ReferenceComponent;
  readonly kind: "at-least" | "at-most";
  /** In the unit the component's name ends with. */
  readonly amountPerDay: number;
  readonly basis: ReferenceRow["basis"];
  readonly authority: ReferenceTable["authority"];
  readonly source: string;
  /** What must be said with the figure: how it is counted, and what was assumed. Absent = nothing. */
  readonly note?: string;
}

/** The references of a person; or none and the reason why care decides. */
export type References =
  | {
      readonly kind: "references";
      readonly references: readonly ReferenceIntake[];
      /** Upper limits of supplements and added forms; what food itself brings is never held against them. */
      readonly supplementLimits: readonly ReferenceIntake[];
    }
  | { readonly kind: "refer"; readonly reason: ReferReason };

/** What was taken for granted about a person, and how to say it. */
interface Assumed {
  readonly menopause: "before" | "after";
  readonly phytateMg: number;
  readonly notes: { readonly menopause?: string; readonly phytateMg?: string };
}

/** Year of age from which women are taken to be past the menopause. **Source**: IOM 2001, iron, bands of age. */
const AFTER_MENOPAUSE_FROM_YEARS = 51;

/**
 * The reference intakes of an adult by the authority chosen, with the limits of WHO beside them, in the order of the
 * tables. Figures by energy or body mass are reckoned out for this person; energy in kJ a day.
 *
 * Where the person has not said, the menopause is taken from age and the phytate as the highest level, for which most
 * zinc is asked; the note says so. Pregnancy, lactation and ages under 19 give no figures.
 * **Source**: each figure carries its own.
 */
export function referencesFor(
  eater: Eater,
  authority: "nasem" | "efsa",
  tables: ReferenceTables,
  energyNeedKj: number,
): References {
  const reason = reasonToRefer(eater);
  if (reason !== undefined) return { kind: "refer", reason };
  const references: ReferenceIntake[] = [];
  const supplementLimits: ReferenceIntake[] = [];
  const assumed = assume(eater);
  for (const table of [tables[authority], tables.who]) {
    for (const row of table.rows) {
      const reference = applyRow(row, table, eater, assumed, energyNeedKj);
      if (reference !== undefined) (isHeldAgainstFood(row) ? references : supplementLimits).push(reference);
    }
  }
  return { kind: "references", references, supplementLimits };
}

function assume({ menopause, phytateMg, ageYears }: Eater): Assumed {
  return {
    menopause: menopause ?? (ageYears < AFTER_MENOPAUSE_FROM_YEARS ? "before" : "after"),
    phytateMg: phytateMg ?? 1200,
    notes: {
      ...(menopause === undefined && { menopause: "Menopause not stated: taken from age, after it from 51 years on." }),
      ...(phytateMg === undefined && { phytateMg: "Phytate not stated: taken as the highest level, 1200 mg a day." }),
    },
  };
}

function applyRow(
  row: ReferenceRow,
  table: ReferenceTable,
  eater: Eater,
  assumed: Assumed,
  energyNeedKj: number,
): ReferenceIntake | undefined {
  const { menopause, phytateMg } = row.when;
  if (menopause !== undefined && menopause !== assumed.menopause) return undefined;
  if (phytateMg !== undefined && phytateMg !== assumed.phytateMg) return undefined;
  const amount = pickBand(row, table, eater);
  if (amount === undefined) return undefined;
  const isVegetarian = eater.diet === "vegan" || eater.diet === "vegetarian";
  const factor = isVegetarian ? (row.vegetarianFactor ?? 1) : 1;
  const notes = [
    row.note,
    menopause === undefined ? undefined : assumed.notes.menopause,
    phytateMg === undefined ? undefined : assumed.notes.phytateMg,
    factor === 1 ? undefined : `Multiplied by ${factor} for a diet without meat and fish.`,
  ].filter((note) => note !== undefined);
  return {
    component: row.component,
    kind: row.kind,
    amountPerDay: perDay(row, amount * factor, eater.massKg, energyNeedKj),
    basis: row.basis,
    authority: table.authority,
    source: row.source,
    ...(notes.length > 0 && { note: notes.join(" ") }),
  };
}

/** The amount of the band the eater's age falls into; undefined below the first band and for a sex without figures. */
function pickBand(row: ReferenceRow, table: ReferenceTable, { sex, ageYears }: Eater): number | undefined {
  const at = (row.fromAges ?? table.fromAges).findLastIndex((from) => ageYears >= from);
  return at < 0 ? undefined : row[sex]?.[at];
}

function perDay(row: ReferenceRow, amount: number, massKg: number, energyNeedKj: number): number {
  switch (row.per) {
    case "day":
      return amount;
    case "kg-body-mass":
      return amount * massKg;
    case "MJ":
      return (amount * energyNeedKj) / 1000;
    case "percent-energy":
      return ((amount / 100) * energyNeedKj) / (ENERGY_KJ_PER_G[row.component] as number);
  }
}
