import type { MenuProblem } from "../problem.ts";
import { copyInto } from "./copyInto.ts";
import { charge, type Penalties } from "./Penalties.ts";

/** Share by which a bound of 0 counts as missed, since no share of nothing can be told. */
const FAR = 1000;

/** Bounds with what it takes to judge them, in columns. */
interface Rows {
  readonly at: Int32Array;
  readonly sign: Float64Array;
  readonly amount: Float64Array;
  /** One over the amount; for an amount of 0 so much that any miss counts as FAR. */
  readonly inverse: Float64Array;
  readonly eaters: Float64Array;
}

/** What each profile eats: energy by day and components over the plan, per standard portion. */
export class IntakeTotals {
  private readonly problem: MenuProblem;
  private readonly profilesAt: readonly (readonly number[])[];
  private energy: Float64Array;
  private savedEnergy: Float64Array;
  private components: Float64Array;
  private savedComponents: Float64Array;
  /** Energy wanted by profile and day, 0 where none is; and the least and most that keep the limits. */
  private readonly wanted: Float64Array;
  private readonly least: Float64Array;
  private readonly most: Float64Array;
  private readonly hard: Rows;
  private readonly soft: Rows;
  private readonly days: number;
  private readonly J: number;
  private readonly dayOf: Int32Array;
  /** Components and energy of a portion of each dish, and of none after the last: from `dish * (J + 1)` on. */
  private readonly portions: Float64Array;

  constructor(problem: MenuProblem) {
    const { profiles, sittings, dishes, days } = problem;
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
    this.dayOf = Int32Array.from(sittings, ({ day }) => day);
    this.portions = new Float64Array((dishes.length + 1) * (this.J + 1));
    dishes.forEach(({ energyKj, components }, dish) => {
      this.portions.set(components.slice(0, this.J), dish * (this.J + 1));
      this.portions[dish * (this.J + 1) + this.J] = energyKj;
    });
    this.hard = this.listRows(true);
    this.soft = this.listRows(false);
  }

  private listRows(hard: boolean): Rows {
    const rows = this.problem.profiles.flatMap(({ bounds, eaters }, p) =>
      bounds
        .filter((bound) => bound.hard === hard)
        .map(({ component, kind, amount }) => {
          return { at: p * this.J + component, sign: kind === "at-least" ? 1 : -1, amount, eaters };
        }),
    );
    return {
      at: Int32Array.from(rows, ({ at }) => at),
      sign: Float64Array.from(rows, ({ sign }) => sign),
      amount: Float64Array.from(rows, ({ amount }) => amount),
      inverse: Float64Array.from(rows, ({ amount }) => (amount > 0 ? 1 / amount : Number.MAX_VALUE)),
      eaters: Float64Array.from(rows, ({ eaters }) => eaters),
    };
  }

  begin(): void {
    copyInto(this.savedEnergy, this.energy);
    copyInto(this.savedComponents, this.components);
  }

  /** Goes back to what `begin` kept. */
  undo(): void {
    const { energy, components } = this;
    this.energy = this.savedEnergy;
    this.savedEnergy = energy;
    this.components = this.savedComponents;
    this.savedComponents = components;
  }

  /** A sitting gets a dish in place of another; -1 = none. */
  exchange(old: number, dish: number, sitting: number): void {
    const { J, portions, energy, components } = this;
    const from = this.portionAt(old);
    const to = this.portionAt(dish);
    const profiles = this.profilesAt[sitting] as readonly number[];
    for (let i = 0; i < profiles.length; i++) {
      const p = profiles[i] as number;
      const e = p * this.days + (this.dayOf[sitting] as number);
      energy[e] = (energy[e] as number) - (portions[from + J] as number) + (portions[to + J] as number);
      for (let j = 0; j < J; j++) {
        const less = (components[p * J + j] as number) - (portions[from + j] as number);
        components[p * J + j] = less + (portions[to + j] as number);
      }
    }
  }

  private portionAt(dish: number): number {
    return (dish < 0 ? this.problem.dishes.length : dish) * (this.J + 1);
  }

  /** Days with too little or too much energy, and hard bounds that do not hold. */
  violation(penalties: Penalties): number {
    const { energy, wanted, least, most, hard } = this;
    let v = 0;
    for (let e = 0; e < wanted.length; e++) {
      const eaten = energy[e] as number;
      const off = Math.max((least[e] as number) - eaten, eaten - (most[e] as number));
      const want = wanted[e] as number;
      if (off > 0 && want > 0 && off / want > 1e-9) v += charge(penalties.energy, off / want);
    }
    for (let i = 0; i < hard.at.length; i++) {
      const missing = this.missShare(hard, i);
      if (missing > 1e-9) v += charge(penalties.bound, missing);
    }
    return v;
  }

  /** Price of what misses the soft bounds, for all eaters. */
  shortfallMinor(): number {
    const { soft } = this;
    let minor = 0;
    for (let i = 0; i < soft.at.length; i++) {
      const missing = this.missShare(soft, i);
      if (missing > 1e-9) minor += (soft.eaters[i] as number) * priceShortfall(missing, this.problem.worth);
    }
    return minor;
  }

  /** The share of the `i`-th bound that is missing; 0 or less = it is kept. */
  private missShare({ at, sign, amount, inverse }: Rows, i: number): number {
    const bound = amount[i] as number;
    const missing = (sign[i] as number) * (bound - (this.components[at[i] as number] as number));
    if (missing <= 0) return missing;
    return Math.min(FAR, missing * (inverse[i] as number));
  }
}

/** Price of missing a soft bound by the share `missing` (0..): cheap up to the knee, dear beyond it. */
function priceShortfall(missing: number, worth: MenuProblem["worth"]): number {
  const { shortfallFirstMinor, shortfallRestMinor, shortfallKnee } = worth;
  if (missing <= shortfallKnee) return shortfallFirstMinor * missing;
  return shortfallFirstMinor * shortfallKnee + shortfallRestMinor * (missing - shortfallKnee);
}
