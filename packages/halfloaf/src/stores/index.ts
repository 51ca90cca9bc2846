export { firstExpiredFirstOut, type LotInOrder } from "./firstExpiredFirstOut.ts";
export { isGoneOff, type KeepingLimit, type KeepsUntil, keepsUntil } from "./keepsUntil.ts";
export { Lot } from "./lot.ts";
export { type LotState, lotOfBought, lotOfStock, MASS_TOLERANCE_G, type Outflow } from "./lotState.ts";
export { Movement, type MovementOf } from "./movement.ts";
export { accountOf, costsByUse, type StoresAccount } from "./storesAccount.ts";
export { deriveStores, type StoresState } from "./storesState.ts";
export { type Taken, take } from "./take.ts";
export { wasteOn } from "./wasteOn.ts";
