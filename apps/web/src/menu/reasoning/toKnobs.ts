import type { Kitchen, KitchenProblem } from "halfloaf/kitchen";
import type { LimitKind, LimitReading } from "halfloaf/menu";
import { addDays, weekday } from "halfloaf/quantity";
import type { Knob, WayOut } from "./Told.ts";

const SLACK = 1e-6;

/** What of a kitchen limits hang on. */
export type KnobKitchen = Pick<Kitchen, "limits" | "kit" | "sittings" | "shops">;

/** The figures of a kitchen that must give way for these excesses, each as far as the one that asks most. */
export function toWayOut(
  excesses: readonly LimitReading[],
  kitchen: KnobKitchen,
  stated: KitchenProblem,
): Pick<WayOut, "knobs" | "otherwise"> {
  const knobs = new Map<string, Knob>();
  const otherwise = new Set<LimitKind>();
  for (const reading of excesses) {
    const knob = toKnob(reading, kitchen, stated);
    if (knob === undefined) {
      otherwise.add(reading.limit.kind);
      continue;
    }
    const key = nameKnob(knob);
    const known = knobs.get(key);
    const isMore = known === undefined || Math.abs(knob.enough - knob.now) > Math.abs(known.enough - known.now);
    if (isMore) knobs.set(key, knob);
  }
  return { knobs: [...knobs.values()], otherwise: [...otherwise] };
}

/** What tells one figure of the kitchen from another. */
export function nameKnob({ limit, weekday: day, sitting, shop }: Knob): string {
  return [limit, day, sitting, shop].join();
}

/** The ways without those that turn the same figures as another, and further. */
export function keepShort<Way extends Pick<WayOut, "knobs" | "otherwise">>(ways: readonly Way[]): Way[] {
  return ways.filter(
    (way, at) =>
      !ways.some((other, before) => other !== way && isWithin(other, way) && (before < at || !isWithin(way, other))),
  );
}

/** True where the first way asks for nothing that the second does not ask for as well. */
function isWithin(one: Pick<WayOut, "knobs" | "otherwise">, other: Pick<WayOut, "knobs" | "otherwise">): boolean {
  const further = new Map(other.knobs.map((knob) => [nameKnob(knob), Math.abs(knob.enough - knob.now)]));
  return (
    one.knobs.every((knob) => Math.abs(knob.enough - knob.now) <= (further.get(nameKnob(knob)) ?? -1)) &&
    one.otherwise.every((limit) => other.otherwise.includes(limit))
  );
}

function toKnob({ limit, excess }: LimitReading, kitchen: KnobKitchen, stated: KitchenProblem): Knob | undefined {
  const { limits, kit } = kitchen;
  const up = (now: number, by: number): Knob => ({ limit: limit.kind, now, enough: Math.ceil(now + by - SLACK) });
  switch (limit.kind) {
    case "budget":
      return limits.budgetMinor === undefined ? undefined : up(limits.budgetMinor, excess);
    case "hands-on": {
      const day = weekday(addDays(stated.from, limit.day));
      const { handsOnMinutes: minutes } = limits;
      return { ...up(Array.isArray(minutes) ? (minutes[day - 1] ?? 0) : minutes, excess), weekday: day };
    }
    case "elapsed": {
      const { date, kind, eaters } = stated.sittings[limit.sitting] ?? {};
      if (date === undefined || eaters === undefined) return undefined;
      const day = weekday(date);
      const sitting = kitchen.sittings.findIndex(
        (each) => each.kind === kind && each.on.includes(day) && each.eaters.some((id) => eaters.includes(id)),
      );
      const weekly = kitchen.sittings[sitting];
      return weekly && { ...up(weekly.minutes, excess), sitting };
    }
    case "energy":
      return up(limits.energyTolerancePct, 100 * excess);
    case "uses":
      return up(limits.usesPerDish, excess);
    case "main":
      return up(limits.mainMax, excess);
    case "distinct":
      return { limit: limit.kind, now: limits.distinctEvenings, enough: Math.max(0, limits.distinctEvenings - excess) };
    case "trips":
      return up(limits.tripsPerWeek, excess);
    case "pot":
      return up(kit.potPortions, excess);
    case "fridge":
      return up(kit.fridgeLitres, excess);
    case "freezer":
      return up(kit.freezerLitres, excess);
    case "carry": {
      const shop = kitchen.shops.find(({ id }) => id === stated.trips[limit.trip]?.shop);
      return shop?.trip.carryKg === undefined ? undefined : { ...up(shop.trip.carryKg, excess / 1000), shop: shop.id };
    }
    case "bound":
    case "wish":
    case "must-use":
      return undefined;
  }
}
