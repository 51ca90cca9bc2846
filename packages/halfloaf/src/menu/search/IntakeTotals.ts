import type { MenuProblem } from "../problem.ts";
import { copyInto } from "./copyInto.ts";
import { charge, type Penalties } from "./Penalties.ts";

/** Share by which a bound of 0 counts as missed, since no share of nothing can be told. */
const FAR = 1000;

/** A bound with what it takes to judge it. */
interface Row {
  readonly at: number;
  readonly sign: number;
  readonly amount: number;
  readonly eaters: number;
}

/** What each profile eats: energy by day and components over the plan, per standard portion. */
export class IntakeTotals {
  private readonly problem: MenuProblem;
  private readonly profilesAt: readonly (readonly number[])[];
  private readonly energy: Float64Array;
  private readonly savedEnergy: Float64Array;
  private readonly components: Float64Array;
  private readonly savedComponents: Float64Array;
  /** Energy wanted by profile and day, 0 where none is; and the least and most that keep the limits. */
  private readonly wanted: Float64Array;
  private readonly least: Float64Array;
  private readonly most: Float64Array;
  private readonly hard: readonly Row[];
  private readonly soft: readonly Row[];
  private readonly days: number;
  private readonly J: number;

  constructor(problem: MenuProblem) {
    const { profiles, sittings, days } = problem;
    this.problem = problem;
    this.days = days;
    this.J = problem.components.length;
    this.profilesAt = sittings.map((_, k) =>
      profiles.flatMap((profile, p) => (profile.sittings.includes(k) ? [p] : [])),
    );
    this.energy = new Float64Array(profiles.length * days);
    this.savedEnergy = new Float64Array(profiles.length * days);
    this.components = new Float64Array(profiles.length * this.J);
    this.savedComponents = new Float64Array(profiles.length * this.J);
    this.wanted = Float64Array.from(profiles.flatMap(({ energyKj }) => energyKj.slice(0, days)));
    const { energyTolerance } = problem.limits;
    const floors = profiles.flatMap(({ leastEnergyKj }) =>
      Array.from({ length: days }, (_, day) => leastEnergyKj?.[day] ?? 0),
    );
    this.least = this.wanted.map((want, e) => Math.max(want * (1 - energyTolerance), floors[e] as number));
    this.most = this.wanted.map((want) => want * (1 + energyTolerance));
    this.hard = this.listRows(true);
    this.soft = this.listRows(false);
  }

  private listRows(hard: boolean): Row[] {
    return this.problem.profiles.flatMap(({ bounds, eaters }, p) =>
      bounds
        .filter((bound) => bound.hard === hard)
        .map(({ component, kind, amount }) => {
          return { at: p * this.J + component, sign: kind === "at-least" ? 1 : -1, amount, eaters };
        }),
    );
  }

  begin(): void {
    copyInto(this.savedEnergy, this.energy);
    copyInto(this.savedComponents, this.components);
  }

  undo(): void {
    copyInto(this.energy, this.savedEnergy);
    copyInto(this.components, this.savedComponents);
  }

  /** Adds a serving of a dish at a sitting, or takes it away. */
  count(dish: number, sitting: number, sign: number): void {
    const { energyKj, components } = this.problem.dishes[dish] as MenuProblem["dishes"][number];
    const { day } = this.problem.sittings[sitting] as MenuProblem["sittings"][number];
    for (const p of this.profilesAt[sitting] as readonly number[]) {
      const e = p * this.days + day;
      this.energy[e] = (this.energy[e] as number) + sign * energyKj;
      const base = p * this.J;
      for (let j = 0; j < this.J; j++) {
        this.components[base + j] = (this.components[base + j] as number) + sign * (components[j] as number);
      }
    }
  }

  /** Days with too little or too much energy, and hard bounds that do not hold. */
  violation(penalties: Penalties): number {
    let v = 0;
    for (let e = 0; e < this.wanted.length; e++) {
      const want = this.wanted[e] as number;
      if (want <= 0) continue;
      const eaten = this.energy[e] as number;
      const off = Math.max((this.least[e] as number) - eaten, eaten - (this.most[e] as number)) / want;
      if (off > 1e-9) v += charge(penalties.energy, off);
    }
    for (const row of this.hard) {
      const missing = this.missShare(row);
      if (missing > 1e-9) v += charge(penalties.bound, missing);
    }
    return v;
  }

  /** Price of what misses the soft bounds, for all eaters. */
  shortfallMinor(): number {
    let minor = 0;
    for (const row of this.soft) {
      const missing = this.missShare(row);
      if (missing > 1e-9) minor += row.eaters * priceShortfall(missing, this.problem.worth);
    }
    return minor;
  }

  private missShare({ at, sign, amount }: Row): number {
    const missing = sign * (amount - (this.components[at] as number));
    if (amount > 0) return missing / amount;
    return missing > 0 ? FAR : 0;
  }
}

/** Price of missing a soft bound by the share `missing` (0..): cheap up to the knee, dear beyond it. */
function priceShortfall(missing: number, worth: MenuProblem["worth"]): number {
  const { shortfallFirstMinor, shortfallRestMinor, shortfallKnee } = worth;
  if (missing <= shortfallKnee) return shortfallFirstMinor * missing;
  return shortfallFirstMinor * shortfallKnee + shortfallRestMinor * (missing - shortfallKnee);
}
