import { type Dish, KIT_PARTS, type KitPart, type Step } from "../../../dish/index.ts";

/** What a part of the kit draws, in W from the mains, and the share of a step's minutes in which it draws. */
export interface KitPower {
  readonly watts: number;
  readonly share: number;
  /** Steps of these kinds keep it drawing all the time. */
  readonly fullIn: readonly Step["kind"][];
}

/**
 * Parts of the kit that draw power. Figures are from memory and common practice, no source: a plate of an electric hob,
 * which a simmer needs half of the time at most; an oven whose thermostat is on for half of the time; a kettle while
 * it heats. The rating plate of the kitchen's own kit comes first.
 */
export const KIT_POWER: Readonly<Partial<Record<KitPart, KitPower>>> = {
  ring: { watts: 1500, share: 0.5, fullIn: ["boil", "fry", "heat-water"] },
  oven: { watts: 2200, share: 0.5, fullIn: ["grill"] },
  microwave: { watts: 1200, share: 1, fullIn: [] },
  kettle: { watts: 2200, share: 1, fullIn: [] },
  blender: { watts: 500, share: 1, fullIn: [] },
};

/** What one cooking draws. */
export interface CookingEnergy {
  readonly kwh: number;
  readonly byKit: readonly { readonly kit: KitPart; readonly minutes: number; readonly kwh: number }[];
  /** In whole minor units, rounded once; absent where no price was given. */
  readonly costMinor?: number;
}

/**
 * Energy of one cooking of a dish by the minutes that its steps hold each part of the kit, and what it costs at a price
 * in minor units per kWh. It is an estimate and apart from the sums at lot cost. Throws where portions are not positive.
 */
export function cookingEnergy(
  dish: Pick<Dish, "method">,
  portions: number,
  pricePerKwhMinor?: number,
  power: Readonly<Partial<Record<KitPart, KitPower>>> = KIT_POWER,
): CookingEnergy {
  if (!(portions > 0)) throw new RangeError(`${portions} is no number of portions`);
  const byKit = KIT_PARTS.flatMap((kit): CookingEnergy["byKit"][number][] => {
    const draws = power[kit];
    const steps = draws === undefined ? [] : dish.method.filter((step) => step.kit.includes(kit));
    if (draws === undefined || steps.length === 0) return [];
    let [minutes, kwh] = [0, 0];
    for (const { kind, minutes: stated } of steps) {
      const held = stated.fixed + stated.perPortion * portions;
      const share = draws.fullIn.includes(kind) ? 1 : draws.share;
      minutes += held;
      kwh += (held / 60) * share * (draws.watts / 1000);
    }
    return [{ kit, minutes, kwh }];
  });
  const kwh = byKit.reduce((sum, part) => sum + part.kwh, 0);
  const energy = { kwh, byKit };
  return pricePerKwhMinor === undefined ? energy : { ...energy, costMinor: Math.round(kwh * pricePerKwhMinor) };
}
