import type { EventBody } from "halfloaf/kitchen/record";
import type { RandomSource } from "halfloaf/quantity";

/** Foods of the made-up life, with the pack each is bought in, in g. */
const FOODS = [
  ["oats-rolled", 500],
  ["rice-white-long", 1000],
  ["carrot", 1000],
  ["onion", 1000],
  ["milk-whole", 1000],
  ["egg", 360],
  ["lentils-red", 500],
  ["potato", 2500],
] as const;

/** A lot of the life that is not empty yet. */
interface Held {
  readonly lot: string;
  leftG: number;
}

/**
 * So many events of a kitchen that is lived in: packs bought, opened, used, counted and wasted, prices seen, days apart as
 * in a home of three. `prefix` keeps the lots of two devices apart.
 */
export function makeLife(count: number, random: RandomSource, prefix: string): EventBody[] {
  const bodies: EventBody[] = [];
  const held: Held[] = [];
  for (let lots = 0; bodies.length < count; ) {
    const on = dayAfter(Math.floor(bodies.length / 18));
    const [food, massG] = FOODS[Math.floor(random() * FOODS.length)] ?? FOODS[0];
    const found = held[Math.floor(random() * held.length)];
    const draw = random();
    if (found === undefined || draw < 0.22) {
      const lot = `${prefix}-${++lots}`;
      held.push({ lot, leftG: massG });
      bodies.push({
        kind: "bought",
        on,
        lot,
        food,
        place: "dry-store",
        massG,
        costMinor: 60 + Math.floor(random() * 300),
      });
    } else if (draw < 0.27) bodies.push({ kind: "opened", on, lot: found.lot });
    else if (draw < 0.3)
      bodies.push({ kind: "price-seen", on, pack: `${food}-pack`, priceMinor: 99, at: "Market Hall" });
    else if (draw < 0.33) {
      bodies.push({ kind: "wasted", on, lot: found.lot, massG: found.leftG });
      held.splice(held.indexOf(found), 1);
    } else {
      const usedG = Math.min(found.leftG, 20 + Math.floor(random() * 200));
      bodies.push({ kind: "used", on, lot: found.lot, massG: usedG });
      found.leftG -= usedG;
      if (found.leftG <= 0) held.splice(held.indexOf(found), 1);
    }
  }
  return bodies;
}

const MONTH_DAYS = 28;

/** A day so many days after the first of 2024, in a calendar of months of 28 days, which is all that matters here. */
function dayAfter(days: number): string {
  const month = Math.floor(days / MONTH_DAYS);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${2024 + Math.floor(month / 12)}-${two((month % 12) + 1)}-${two((days % MONTH_DAYS) + 1)}`;
}
