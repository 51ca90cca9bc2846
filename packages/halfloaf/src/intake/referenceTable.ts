import * as v from "valibot";
import { NUTRIENT_NAMES, type Nutrient } from "../food/nutrient.ts";
import { type Issue, type Parsed, parseWith } from "../quantity/issue.ts";
import { PHYTATE_LEVELS_MG, SEXES } from "./eater.ts";

/** What a reference intake can be about: a component of the food table, or the mass of vegetables and fruit. */
export type ReferenceComponent = Nutrient | "vegetablesFruitG";

export const AUTHORITIES = ["nasem", "efsa", "who"] as const;

/**
 * The standing of a figure. RDA, PRI: covers nearly everybody; AI: adequate as observed; AMDR, RI: a range by shares
 * of energy; UL: tolerable upper intake level; CDRR: above it, less lowers the risk of chronic disease.
 */
const BASES = [
  "RDA",
  "AI",
  "AMDR",
  "CDRR",
  "UL",
  "PRI",
  "RI",
  "safe-and-adequate",
  "safe-level",
  "WHO",
  "WHO-conditional",
] as const;

/** What an upper limit counts where it does not count all that food brings. */
const LIMITED_FORMS = [
  "supplements",
  "added-forms",
  "nicotinamide",
  "nicotinic-acid",
  "folic-acid",
  "retinol",
] as const;

/** Components whose column holds exactly one limited form, so that food is held against the limit of that form. */
const FORM_OF_COMPONENT: Readonly<Partial<Record<ReferenceComponent, (typeof LIMITED_FORMS)[number]>>> = {
  retinolUg: "retinol",
  folicAcidUg: "folic-acid",
};

/** kJ in a gram, for figures given as a share of energy. **Source**: Regulation (EU) 1169/2011, Annex XIV. */
export const ENERGY_KJ_PER_G: Readonly<Partial<Record<ReferenceComponent, number>>> = {
  proteinG: 17,
  carbohydrateAvailableG: 17,
  sugarsG: 17,
  freeSugarsG: 17,
  fatG: 37,
  saturatesG: 37,
  monounsaturatesG: 37,
  polyunsaturatesG: 37,
  alaG: 37,
};

const text = v.pipe(v.string(), v.nonEmpty());
const amounts = v.pipe(v.array(v.pipe(v.number(), v.gtValue(0))), v.minLength(1));
const ages = v.pipe(v.array(v.pipe(v.number(), v.minValue(0))), v.minLength(1));
const COMPONENTS: readonly ReferenceComponent[] = [...NUTRIENT_NAMES, "vegetablesFruitG"];

const Row = v.strictObject({
  component: v.picklist(COMPONENTS),
  kind: v.picklist(["at-least", "at-most"]),
  basis: v.picklist(BASES),
  /** What the amount is for: a day, a kg of body mass, a MJ of energy, or (a percentage) the energy of the day. */
  per: v.optional(v.picklist(["day", "kg-body-mass", "MJ", "percent-energy"]), "day"),
  /** First year of age of each band, where they differ from those of the table. */
  fromAges: v.optional(ages),
  /** Amounts by band of age, in the unit of the component (percent where per says so); a sex left out has none. */
  male: v.optional(amounts),
  female: v.optional(amounts),
  /** The row holds only for these; what an eater has not stated is assumed, and the reference says so. */
  when: v.optional(
    v.strictObject({
      menopause: v.optional(v.picklist(["before", "after"])),
      phytateMg: v.optional(v.picklist(PHYTATE_LEVELS_MG)),
    }),
    {},
  ),
  /** The amount is multiplied by this for those who eat neither meat nor fish. */
  vegetarianFactor: v.optional(v.pipe(v.number(), v.gtValue(0))),
  ulAppliesTo: v.optional(v.picklist(LIMITED_FORMS)),
  source: text,
  note: v.optional(text),
});
export type ReferenceRow = v.InferOutput<typeof Row>;

const Table = v.strictObject({
  authority: v.picklist(AUTHORITIES),
  title: text,
  fromAges: ages,
  rows: v.pipe(v.array(Row), v.minLength(1)),
  /** What the authority says of things the food table has no component for. */
  leftOut: v.optional(v.array(v.strictObject({ item: text, reason: text })), []),
});

/** The reference intakes of one authority for adults. */
export type ReferenceTable = v.InferOutput<typeof Table>;

/** The tables by authority: the two that an eater chooses between, and the limits of WHO that hold with both. */
export type ReferenceTables = Readonly<Record<(typeof AUTHORITIES)[number], ReferenceTable>>;

/**
 * Reads the reference tables as they come from JSON. Every fault of all tables is given at once, its path starting
 * with the authority.
 */
export function parseReferenceTables(input: Readonly<Record<keyof ReferenceTables, unknown>>): Parsed<ReferenceTables> {
  const issues: Issue[] = [];
  const tables: Partial<Record<keyof ReferenceTables, ReferenceTable>> = {};
  for (const authority of AUTHORITIES) {
    const parsed = parseWith(Table, input[authority]);
    const found = parsed.ok ? findTableFaults(parsed.value, authority) : parsed.issues;
    issues.push(...found.map((issue) => ({ ...issue, path: [authority, ...issue.path] })));
    if (parsed.ok) tables[authority] = parsed.value;
  }
  return issues.length === 0 ? { ok: true, value: tables as ReferenceTables } : { ok: false, issues };
}

/** True where the amount in food is what the limit counts; false for limits of supplements and added forms. */
export function isHeldAgainstFood({ component, ulAppliesTo }: ReferenceRow): boolean {
  return ulAppliesTo === undefined || FORM_OF_COMPONENT[component] === ulAppliesTo;
}

function findTableFaults(table: ReferenceTable, authority: string): Issue[] {
  const issues: Issue[] = [];
  const fault = (code: string, path: Issue["path"], expected: string, received: string) =>
    issues.push({ code, path, expected, received });
  if (table.authority !== authority) fault("authority", ["authority"], authority, table.authority);
  const seen = new Set<string>();
  for (const [at, row] of table.rows.entries()) {
    const bands = (row.fromAges ?? table.fromAges).length;
    for (const sex of SEXES) {
      const received = row[sex]?.length ?? bands;
      if (received !== bands) fault("bands", ["rows", at, sex], `${bands} amounts, one a band`, `${received} amounts`);
    }
    const sexes = SEXES.filter((sex) => row[sex] !== undefined);
    if (sexes.length === 0) fault("amounts", ["rows", at], "amounts for one sex or both", "none");
    if (row.per === "percent-energy" && ENERGY_KJ_PER_G[row.component] === undefined) {
      fault("energy", ["rows", at, "per"], "a component with a known energy in a gram", row.component);
    }
    for (const sex of sexes) {
      const key = JSON.stringify([sex, row.component, row.kind, row.basis, row.ulAppliesTo, row.when]);
      if (seen.has(key)) fault("unique", ["rows", at, sex], "a row not given before", key);
      seen.add(key);
    }
  }
  return issues;
}
