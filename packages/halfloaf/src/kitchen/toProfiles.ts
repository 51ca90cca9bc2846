import { type ReferenceIntake, referencesFor } from "../intake/index.ts";
import type { MenuBound, MenuProfile } from "../menu/index.ts";
import { type EaterShare, STANDARD_DAY_KJ } from "./eaterShares.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";
import { PLANNED_COMPONENTS } from "./toMenuDish.ts";

/** Eaters who attend the same sittings form one profile; of their references, per standard portion, the strictest counts. */
export function toProfiles(
  kitchen: Kitchen,
  tables: Tables,
  shares: readonly EaterShare[],
  days: number,
): MenuProfile[] {
  const groups = new Map<string, EaterShare[]>();
  for (const share of shares) {
    if (share.needKj === undefined || share.sittings.length === 0) continue;
    const key = share.sittings.join(" ");
    groups.set(key, [...(groups.get(key) ?? []), share]);
  }
  return [...groups.values()].map((group) => {
    const { sittings, dayShare } = group[0] as EaterShare;
    const wholeDays = dayShare.reduce((sum, part) => sum + part, 0);
    const bounds = new Map<string, MenuBound>();
    for (const share of group)
      for (const bound of boundsOf(kitchen, tables, share, wholeDays)) keepStricter(bounds, bound);
    const energyKj = Array.from({ length: days }, (_, day) => STANDARD_DAY_KJ * (dayShare[day] ?? 0));
    const floorShare = Math.max(...group.map((share) => share.floorShare ?? 0));
    return {
      eaters: group.length,
      sittings,
      energyKj,
      leastEnergyKj: energyKj.map((wanted) => wanted * floorShare),
      bounds: [...bounds.values()],
    };
  });
}

function boundsOf(kitchen: Kitchen, tables: Tables, share: EaterShare, wholeDays: number): MenuBound[] {
  const found = referencesFor(share.eater, kitchen.authorities.intake, tables.references, share.needKj as number);
  if (found.kind !== "references") return [];
  return found.references.flatMap((reference: ReferenceIntake): MenuBound[] => {
    const component = (PLANNED_COMPONENTS as readonly string[]).indexOf(reference.component);
    if (component < 0 || reference.amountPerDay <= 0) return [];
    return [
      { component, kind: reference.kind, amount: (reference.amountPerDay * wholeDays) / share.portions, hard: false },
    ];
  });
}

function keepStricter(bounds: Map<string, MenuBound>, bound: MenuBound): void {
  const key = `${bound.kind} ${bound.component}`;
  const known = bounds.get(key);
  const stricter = !known || (bound.kind === "at-least" ? bound.amount > known.amount : bound.amount < known.amount);
  if (stricter) bounds.set(key, bound);
}
