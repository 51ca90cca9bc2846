export { type Applied, applyMovement, type Doubt } from "./applyMovement.ts";
export { firstExpiredFirstOut } from "./firstExpiredFirstOut.ts";
export { isGoneOff, type KeepingLimit, type KeepsUntil, keepsUntil, THAWED_DAYS } from "./keepsUntil.ts";
export { Lot, StockedPortions } from "./lot.ts";
export {
  type CookedPortions,
  isAtLeast,
  keepingOf,
  type LotState,
  MASS_TOLERANCE_G,
  type Outflow,
} from "./lotState.ts";
export { type CookedUse, MOVEMENT_ENTRIES, Movement, type MovementOf } from "./movement.ts";
export { accountOf, costsByUse, type StoresAccount } from "./storesAccount.ts";
export { deriveStores, type StoresState } from "./storesState.ts";
export { type Taken, take } from "./take.ts";
export { wasteOn } from "./wasteOn.ts";
export { WASTE_REASONS, type WasteReason } from "./wasteReasons.ts";
