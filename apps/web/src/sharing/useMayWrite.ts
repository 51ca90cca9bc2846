import type { LedgerRow } from "@halfloaf/keep";
import { mayWrite, type Role } from "@halfloaf/keep/sync";
import { useDevice } from "../kitchen/KitchenProvider.tsx";
import { useShared } from "./shared.ts";

/** What this device may do in the open kitchen; undefined where that is not shared, and all may be done. */
export function useRole(): Role | undefined {
  const { device } = useDevice();
  return useShared(device.open)?.role;
}

/** True where this device may write rows of that kind into the open kitchen, by the rules that its server goes by. */
export function useMayWrite(kind: LedgerRow["kind"]): boolean {
  const role = useRole();
  return role === undefined || mayWrite(role, { kind });
}
