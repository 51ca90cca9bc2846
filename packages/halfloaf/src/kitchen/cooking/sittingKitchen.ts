import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { SittingKitchen } from "./Cooking.ts";

/** What the sittings of a kitchen are cooked with: its kit, one cook, and the pace that is known of that cook. */
export function sittingKitchen({ kit, authorities, pace }: Kitchen, tables: Tables): SittingKitchen {
  return { kit, cooks: 1, tables, authority: authorities.safety, ...(pace !== undefined && { pace }) };
}
