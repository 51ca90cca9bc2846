import type { EditedKitchen } from "halfloaf/kitchen/record";
import type { Knob } from "./Told.ts";

/** The kitchen with the figures of some limits set anew, each in the kitchen's own unit. */
export function turnKnobs(
  kitchen: EditedKitchen,
  settings: readonly { readonly knob: Knob; readonly value: number }[],
): EditedKitchen {
  return settings.reduce(turn, kitchen);
}

function turn(kitchen: EditedKitchen, { knob, value }: { knob: Knob; value: number }): EditedKitchen {
  const limits = (set: Partial<EditedKitchen["limits"]>): EditedKitchen => ({
    ...kitchen,
    limits: { ...kitchen.limits, ...set },
  });
  const kit = (set: Partial<EditedKitchen["kit"]>): EditedKitchen => ({ ...kitchen, kit: { ...kitchen.kit, ...set } });
  switch (knob.limit) {
    case "budget":
      return limits({ budgetMinor: value });
    case "hands-on": {
      const { handsOnMinutes: now } = kitchen.limits;
      const each = Array.isArray(now) ? now : Array.from({ length: 7 }, () => now);
      return limits({ handsOnMinutes: each.map((minutes, at) => (at + 1 === knob.weekday ? value : minutes)) });
    }
    case "elapsed":
      return {
        ...kitchen,
        sittings: kitchen.sittings.map((sitting, at) =>
          at === knob.sitting ? { ...sitting, minutes: value } : sitting,
        ),
      };
    case "energy":
      return limits({ energyTolerancePct: value });
    case "uses":
      return limits({ usesPerDish: value });
    case "main":
      return limits({ mainMax: value });
    case "distinct":
      return limits({ distinctEvenings: value });
    case "trips":
      return limits({ tripsPerWeek: value });
    case "pot":
      return kit({ potPortions: value });
    case "fridge":
      return kit({ fridgeLitres: value });
    case "freezer":
      return kit({ freezerLitres: value });
    case "carry":
      return {
        ...kitchen,
        shops: kitchen.shops.map((shop) =>
          shop.id === knob.shop ? { ...shop, trip: { ...shop.trip, carryKg: value } } : shop,
        ),
      };
    case "bound":
    case "wish":
    case "must-use":
      return kitchen;
  }
}
